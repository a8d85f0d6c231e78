import { type Capacitor, type Element, partAround, source } from './network.ts';
import { operatingPoint, type Voltages } from './operating-point.ts';

/** Where a step of the trapezoidal rule ends and the second-order backward formula begins: 2 − √2, as usual. */
const gamma = 2 - Math.SQRT2;

/** Each step is longer than the one before by this factor, since charging slows down as it goes on … */
const growth = 1.4;
/** … up to this share of the whole time. */
const longestShare = 1 / 40;

/** Voltages across the capacitors, and the currents into their positive ends. */
interface Charge {
  volts: readonly number[];
  amperes: readonly number[];
}

/**
 * Voltages across `capacitors` after `seconds` (at least 0) in the rest of the network, each starting from its own
 * `volts`. TR-BDF2: a capacitor is a voltage behind a resistance in each half of a step, so that diodes are solved as at
 * rest. The first step is implicit Euler, over `firstShare` of the time; the method damps what is faster than its steps.
 */
export function chargesAfter(
  elements: readonly Element[],
  capacitors: readonly Capacitor[],
  seconds: number,
  firstShare = 1 / 300,
): readonly number[] {
  if (seconds <= 0 || capacitors.length === 0) return capacitors.map(({ volts }) => volts);
  const ends = capacitors.flatMap(({ a, b }) => [a, b]);
  const rest = partAround(elements, ends).filter((element) => element.kind !== 'capacitor');
  /** Solves with each capacitor as `volts[i]` behind `per` seconds over its capacitance. */
  const solve = (volts: readonly number[], per: number): Charge => {
    const at = operatingPoint([
      ...rest,
      ...capacitors.map(({ a, b, farads }, index) => source(a, b, volts[index] as number, per / farads)),
    ]);
    const across = capacitors.map((capacitor) => acrossOf(capacitor, at));
    return {
      volts: across,
      amperes: across.map(
        (now, index) => ((now - (volts[index] as number)) * (capacitors[index] as Capacitor).farads) / per,
      ),
    };
  };
  const first = seconds * firstShare;
  const longest = seconds * Math.max(firstShare, longestShare);
  let charge = solve(
    capacitors.map(({ volts }) => volts),
    first,
  );
  for (let [time, step] = [first, first]; time < seconds; time += step) {
    step = Math.min(step * growth, longest, seconds - time);
    charge = stepped(charge, step, capacitors, solve);
  }
  return charge.volts;
}

const acrossOf = ({ a, b }: Capacitor, at: Voltages): number => at(a) - at(b);

function stepped(
  { volts, amperes }: Charge,
  step: number,
  capacitors: readonly Capacitor[],
  solve: (volts: readonly number[], per: number) => Charge,
): Charge {
  const half = (gamma * step) / 2;
  const middle = solve(
    volts.map((now, index) => now + (half * (amperes[index] as number)) / (capacitors[index] as Capacitor).farads),
    half,
  );
  const [ofMiddle, ofStart] = [1 / (gamma * (2 - gamma)), (1 - gamma) ** 2 / (gamma * (2 - gamma))];
  return solve(
    volts.map((now, index) => ofMiddle * (middle.volts[index] as number) - ofStart * now),
    ((1 - gamma) / (2 - gamma)) * step,
  );
}
