import { copperOhms } from '../../simulator/copper.ts';
import { middleAxis } from '../middle-axis.ts';
import {
  type Demand,
  demandedAmperes,
  demandSecondsTo,
  type Loop,
  loopAmperes,
  loopSecondsTo,
} from './current-rise.ts';

/** Where the current goes: a short at the drive’s terminals, at the motor end of the cable, within the winding, or a load. */
export type Cause = 'terminals' | 'motor-end' | 'winding' | 'load';

export interface TripCurrent {
  cause: Cause;
  /** Pairs of s and A. */
  course: readonly (readonly [number, number])[];
  /** Seconds until the trip level is reached, and the current in A at the moment when the drive has switched off. */
  toTrip: number;
  peak: number;
}

/**
 * The invented drive: its trip level in A, how long it takes to switch off, in s, and the current that its transistors let
 * through at most before they are off: a multiple of the rated one (short-circuit behaviour of power transistors, any
 * textbook of power electronics).
 */
export const drive = { tripAmperes: 60, offSeconds: 4e-6, mostAmperes: 400 };

/** Typical, project judgement: leads inside the drive, a cable’s loop per metre, the winding from line to line, in H and Ω. */
const inside = { henries: 1.5e-6, ohms: 0.02 };
const loopHenriesPerMetre = 0.6e-6;
const windingHenries = 16e-3;
/** What is left of a winding that is shorted halfway: a quarter of its inductance, half of its resistance. */
const halfway = { henries: 1 / 4, ohms: 1 / 2 };

/** A stuck slide: the control asks for a little more than the trip level within some tenths of a second. */
export const stuck: Demand = { most: 66, seconds: 0.12 };

/** Voltage, inductance and resistance of a short, with cores and winding of the practice’s axis at 20 °C. */
export function shortOf(cause: Exclude<Cause, 'load'>, metres: number): Loop {
  const { parameters } = middleAxis();
  const cable = {
    henries: loopHenriesPerMetre * metres,
    ohms: 2 * copperOhms(parameters.coreOhmsPerMetre * metres, 20),
  };
  const winding = {
    henries: windingHenries * halfway.henries,
    ohms: (parameters.windingOhms.U + parameters.windingOhms.V) * halfway.ohms,
  };
  const parts = { terminals: [inside], 'motor-end': [inside, cable], winding: [inside, cable, winding] }[cause];
  return {
    volts: parameters.supplyVolts,
    henries: parts.reduce((sum, { henries }) => sum + henries, 0),
    ohms: parts.reduce((sum, { ohms }) => sum + ohms, 0),
  };
}

/** Ten points a decade, from a tenth of a microsecond to a second. */
const times = Array.from({ length: 71 }, (_, place) => 10 ** (-7 + place / 10));

/** The current after it begins to flow, up to the trip and the drive’s switching off. */
export function tripCurrent(cause: Cause, metres: number): TripCurrent {
  const loop = cause === 'load' ? undefined : shortOf(cause, metres);
  const at = (seconds: number) =>
    loop ? Math.min(drive.mostAmperes, loopAmperes(loop, seconds)) : demandedAmperes(stuck, seconds);
  const toTrip = loop ? loopSecondsTo(loop, drive.tripAmperes) : demandSecondsTo(stuck, drive.tripAmperes);
  const end = toTrip + drive.offSeconds;
  const course = [...times.filter((seconds) => seconds < end), end].map((seconds) => [seconds, at(seconds)] as const);
  return { cause, course, toTrip, peak: at(end) };
}
