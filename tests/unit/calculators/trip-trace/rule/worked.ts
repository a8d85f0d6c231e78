import { describe, expect, it } from 'vitest';
import { measureTrace } from '../../../../../src/calculators/trip-trace/measure/measure-trace.ts';
import { assessTripTrace } from '../../../../../src/calculators/trip-trace/rule/assess.ts';
import type {
  Branch,
  TripTraceAssessment,
  TripTraceFinding,
  TripTraceInput,
} from '../../../../../src/calculators/trip-trace/rule/input.ts';
import { type Computed, computedTrace, turning } from '../figures.ts';

// Worked by hand from textbook laws, recalled from memory: i = U/R · (1 − e^(−t·R/L)) and di/dt = U/L at its beginning,
// Kirchhoff's current law, f = p · n / 60 of a synchronous machine, W = ½ · C · U² (any textbook of electrical machines, such
// as Fitzgerald, Electric Machinery). The limits are those of content/limits/trace.json.

type Code = TripTraceFinding['code'];

/** 560 V, 12 mH from terminal to terminal, trips at 30 A, 4 pole pairs, each sample as measured. */
export const drive: Partial<TripTraceInput> = {
  inductance: 0.012,
  busVolts: 560,
  tripAmps: 30,
  stored: 'raw',
  sensors: 'three',
};

export function judged(computed: Computed, data: Partial<TripTraceInput> = drive): TripTraceAssessment {
  const figures = measureTrace(computedTrace(computed));
  return assessTripTrace({
    ...data,
    figures,
    ...(computed.polePairs !== undefined && { polePairs: computed.polePairs }),
  });
}

/** `amplitude` until the trip at 0.3 s, then this rise in phase U that comes back through V, cut off 1 ms later. */
export const rising =
  (rise: (t: number) => number) =>
  (t: number): [number, number, number] => {
    const more = t > 0.3 ? rise(t - 0.3) : 0;
    return [4 + more, -2 - more, -2];
  };

/** U and W with a little noise of their own, as sensors of their own have it. */
export const noisy =
  (of: (t: number) => readonly [number, number, number]) =>
  (t: number): readonly [number, number, number] => {
    const [u, v, w] = of(t);
    return [u + 0.05 * Math.sin(t * 7e5), v, w + 0.05 * Math.sin(t * 1e6)];
  };

export const atRest = {
  speed: () => 0,
  bus: () => 560,
  tripAt: 0.3,
  seconds: 0.31,
};
export const moving = { speed: () => 1500, bus: () => 560, polePairs: 4 };

/** Currents of this amplitude after so many electrical turns. */
export const turned = (amplitude: number, turns: number) => turning(amplitude, 1)(turns);

export const add = (a: readonly number[], b: readonly number[]): [number, number, number] => [
  (a[0] ?? 0) + (b[0] ?? 0),
  (a[1] ?? 0) + (b[1] ?? 0),
  (a[2] ?? 0) + (b[2] ?? 0),
];

/** What it is, how it was worked out, the trace, findings that must be there, and what the whole points to. */
export type WorkedCase = [string, string, Computed, Code[], Branch[]];

export function workedCases(cases: WorkedCase[]): void {
  describe('worked by hand', () => {
    it.each(cases)('%s: %s', (_, __, computed, codes, points) => {
      const assessment = judged(computed);
      expect(assessment.findings.map(({ code }) => code)).toEqual(expect.arrayContaining(codes));
      expect(assessment.points).toEqual(points);
      expect(assessment.verdict).toBe('undecided');
    });
  });
}
