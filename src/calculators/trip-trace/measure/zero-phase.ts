import type { PhasePlace, ZeroFigures } from '../rule/figures.ts';
import { lastMoments, type Trace } from './trace.ts';

/**
 * The longest stretch before the trip in which one phase carries nothing and the other two do. A phase of a sound motor
 * passes through zero; it stays there only while the motor does not turn.
 */
export function zeroPhase(trace: Trace, noise: number, peak: number): ZeroFigures | undefined {
  const nothing = Math.max(4 * noise, 0.03 * peak);
  const something = Math.max(10 * noise, 0.15 * peak);
  const stretches = ([0, 1, 2] as const).map((phase) => longestStretch(trace, phase, nothing, something));
  const found = stretches.filter((one) => one !== undefined);
  return found.length === 0 ? undefined : found.reduce((a, b) => (b.seconds > a.seconds ? b : a));
}

function longestStretch(trace: Trace, phase: PhasePlace, nothing: number, something: number): ZeroFigures | undefined {
  const own = trace.currents[phase];
  const first = trace.currents[phase === 0 ? 1 : 0];
  const second = trace.currents[phase === 2 ? 1 : 2];
  const { to } = lastMoments(trace);
  let best: { from: number; to: number } | undefined;
  let start: number | undefined;
  let quiet = 0;
  for (let i = 0; i <= to; i++) {
    const together = Math.abs((first[i] ?? 0) + (second[i] ?? 0));
    const others = Math.max(Math.abs(first[i] ?? 0), Math.abs(second[i] ?? 0));
    // What goes in through one must come back through the other, or it went to earth.
    const isZero = Math.abs(own[i] ?? 0) < nothing && together < Math.max(2 * nothing, 0.3 * others);
    quiet = others > something ? 0 : quiet + 1;
    // The other two pass through zero as well, together.
    if (!isZero || quiet > 0.02 / trace.step) start = undefined;
    else if (start !== undefined || others > something) {
      start ??= i;
      if (best === undefined || i - start > best.to - best.from) best = { from: start, to: i };
    }
  }
  if (best === undefined || best.to - best.from < 3) return undefined;
  return {
    phase,
    seconds: (best.to - best.from) * trace.step,
    upToTrip: best.to >= trace.trip - 3,
    ...meanwhile(trace, first, second, best, something),
  };
}

type Meanwhile = Pick<ZeroFigures, 'others' | 'turns'>;

function meanwhile(
  trace: Trace,
  first: Float64Array,
  second: Float64Array,
  at: { from: number; to: number },
  something: number,
): Meanwhile {
  const { speed, speedInRpm, polePairs = 1, step } = trace;
  let others = 0;
  let [turned, least, most] = [0, 0, 0];
  for (let i = at.from; i <= at.to; i++) {
    const other = Math.max(Math.abs(first[i] ?? 0), Math.abs(second[i] ?? 0));
    others = Math.max(others, other);
    // A motor without current turns without saying anything about its cores.
    if (other < something) continue;
    // With its sign: a shaft that swings to and fro does not turn.
    turned += ((speed?.[i] ?? 0) / 60) * polePairs * step;
    least = Math.min(least, turned);
    most = Math.max(most, turned);
  }
  return { others, ...(speed !== undefined && speedInRpm && { turns: most - least }) };
}
