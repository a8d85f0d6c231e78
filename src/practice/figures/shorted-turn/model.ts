import { deviationInterval } from '../../../calculators/winding/rule/balance.ts';
import { figureOf } from '../../../kernel/reading/reading.ts';
import { asFound, cableFree } from '../../simulator/axis-state.ts';
import { type Measurement, measure } from '../../simulator/measure.ts';
import { exactInstruments, middle, middleAxis } from '../middle-axis.ts';
import { ringAmperes, shownInductance, type Winding } from './inductance.ts';

export type Pair = 'U–V' | 'V–W' | 'W–U';

export interface Shorted {
  turns: number;
  ohms: Record<Pair, Measurement>;
  /** Largest deviation of a resistance from the mean of the three, in percent. */
  unbalancePercent: number;
  /** Inductance from line to line in H: with the bad winding in it, and without. */
  henries: { bad: number; sound: number };
  /** Current in the ring at `speed`, and the heat in it. */
  ring: { amperes: number; watts: number };
}

/** The invented motor: 100 turns a phase, and its voltage from phase to star point at the speed of the figure. */
export const turns = 100;
export const spinning = { perMinute: 1000, volts: 60, hertz: 67 };

/** Winding U with `shorted` of its turns in a ring. */
export function shortedMotor(shorted: number) {
  return { ...middleAxis(), motor: { shortedShare: { U: shorted / turns }, insulationFactor: 1 } };
}

export function wholeWinding(): Winding {
  return { turns, henries: 8e-3, ohms: middleAxis().parameters.windingOhms.U };
}

/** The motor alone at 20 °C: a four-lead meter on each pair, an inductance meter of `hertz`, then the motor turning. */
export function shortedWinding(shorted: number, hertz: number): Shorted {
  const axis = shortedMotor(shorted);
  const state = cableFree(asFound(20, 20));
  const reading = (red: string, black: string) =>
    measure(axis, state, exactInstruments, 'milliohms', { red: `motor.${red}`, black: `motor.${black}` }, middle);
  const ohms = { 'U–V': reading('U', 'V'), 'V–W': reading('V', 'W'), 'W–U': reading('W', 'U') };
  const whole = wholeWinding();
  const sound = shownInductance(whole, 0, hertz);
  const amperes = ringAmperes(whole, shorted, spinning.volts, spinning.hertz);
  return {
    turns: shorted,
    ohms,
    unbalancePercent: unbalance(Object.values(ohms)),
    // Rotor and the other phases take no part.
    henries: { bad: shownInductance(whole, shorted, hertz) + sound, sound: 2 * sound },
    ring: { amperes, watts: amperes ** 2 * whole.ohms * (shorted / turns) },
  };
}

function unbalance(readings: readonly Measurement[]): number {
  return deviationInterval(
    readings.map(({ reading }) => {
      const ohms = figureOf(reading) ?? 0;
      return { lo: ohms, hi: ohms };
    }),
  ).hi;
}
