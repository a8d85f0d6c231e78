import type { AxisState, Core, IdleCore } from './axis-state.ts';
import type { AxisParameters } from './parameters.ts';
import { typical } from './typical.ts';

/** What it takes for a defect to be there: the moving cable bent, the winding hot, or a voltage above 200 V across it. */
export type Condition = 'bent' | 'hot' | 'above-200V';

/** A path that should not be there, between two nodes of the network. */
export interface LeakPath {
  a: string;
  b: string;
  ohms: number;
  condition?: Condition;
}

/**
 * Where a core has resistance of its own: at the drive's terminal; inside the cable; in the cable's half of the motor
 * connector (its crimp); between the mated pins, so only while plugged; in the motor's half (between pin and winding).
 */
export type ContactPlace = 'drive-terminal' | 'in-cable' | 'cable-half' | 'mated' | 'motor-half';

/** Resistance in series with a core, in ohms; 1 GΩ or more is an open core. It can't wait for a voltage. */
export interface SeriesOhms {
  core: Core | IdleCore | 'feedback+' | 'feedback-';
  place: ContactPlace;
  ohms: number;
  condition?: Exclude<Condition, 'above-200V'>;
}

/** How a fault changes the motor itself: shares of a winding shorted, and what water leaves of its insulation. */
export interface MotorChange {
  shortedShare: Partial<Record<string, number>>;
  insulationFactor: number;
}

/** An axis as the network needs it: parameters and everything that is bad about it. */
export interface BuiltAxis {
  parameters: AxisParameters;
  leaks: LeakPath[];
  /** Interrupted for good: `cable.` and a core, `braking.resistor`. */
  broken: string[];
  /** Absent: every contact is good. */
  contacts?: SeriesOhms[];
  motor: MotorChange;
}

/** Whether a defect with this condition is there now; one that needs a voltage always is, and waits for it. */
export function isThere(condition: Condition | undefined, { bent, windingCelsius }: AxisState): boolean {
  if (condition === 'bent') return bent;
  if (condition === 'hot') return windingCelsius >= typical.hotCelsius;
  return true;
}

/** Sum of the series resistances of a core at a place, now; 0 for a good core. */
export function seriesOhms(axis: BuiltAxis, state: AxisState, core: SeriesOhms['core'], place: ContactPlace): number {
  return (axis.contacts ?? [])
    .filter((one) => one.core === core && one.place === place && isThere(one.condition, state))
    .reduce((sum, { ohms }) => sum + ohms, 0);
}
