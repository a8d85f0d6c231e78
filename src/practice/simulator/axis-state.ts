import type { Phase } from '../../kernel/electrics/phases.ts';

/** Conductors of the motor cable. */
export type Core = 'U' | 'V' | 'W' | 'PE' | 'screen';

export const cores: readonly Core[] = ['U', 'V', 'W', 'PE', 'screen'];

/** What a person has done to the axis: which ends are connected, which wires are added, whether it has power. */
export interface AxisState {
  driveEnd: Record<Core, boolean>;
  motorEnd: Record<Core, boolean>;
  feedbackAtDrive: boolean;
  feedbackAtDevice: boolean;
  /** Wires that the person has added, from node to node; `['cable.drive.PE', 'ground']` is part of a bonded row. */
  jumpers: [string, string][];
  supply: boolean;
  enabled: boolean;
  axisSupported: boolean;
  /** Voltage of the bus. It falls only when time passes: see discharge.ts. */
  busVolts: number;
  /** Temperature of the winding, and of everything else, in °C. */
  windingCelsius: number;
  airCelsius: number;
}

const all = (on: boolean): Record<Core, boolean> => ({ U: on, V: on, W: on, PE: on, screen: on });

/** Everything connected, supply off, bus discharged. */
export function asFound(windingCelsius: number, airCelsius: number): AxisState {
  return {
    driveEnd: all(true),
    motorEnd: all(true),
    feedbackAtDrive: true,
    feedbackAtDevice: true,
    jumpers: [],
    supply: false,
    enabled: false,
    axisSupported: false,
    busVolts: 0,
    windingCelsius,
    airCelsius,
  };
}

/** U, V, W and the PE core off the drive; the screen stays in its clamp. */
export function leadsOff(state: AxisState): AxisState {
  return { ...state, driveEnd: { ...all(false), screen: true } };
}

/** The cable alone, free at both ends, screen too. */
export function cableFree(state: AxisState): AxisState {
  return { ...state, driveEnd: all(false), motorEnd: all(false), jumpers: [] };
}

/** Wires from ground to every conductor at the drive end except this phase: the hook-up of a bonded row. */
export function bondedExcept(phase: Phase): [string, string][] {
  return cores.filter((core) => core !== phase).map((core) => [`cable.drive.${core}`, 'ground']);
}
