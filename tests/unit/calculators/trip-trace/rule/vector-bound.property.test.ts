import fc from 'fast-check';
import { expect, it } from 'vitest';
import { seeded } from '../../../../../src/kernel/random.ts';
import { drawAxisInMotion } from '../../../../../src/practice/simulator/trip-run/axis-in-motion.ts';
import { currentSlopes, third, windingOf } from '../../../../../src/practice/simulator/trip-run/winding.ts';
import { runs } from '../../../../support/runs.ts';

// Textbook, recalled: |di/dt| ≤ |u| / Lmin for the vector of the three currents, |u| ≤ 2/3 · U of an output stage plus the motor's
// own voltage. The winding is the simulator's, which solves its equations in phase quantities.

const states = [0, 1].flatMap((a) => [0, 1].flatMap((b) => [0, 1].map((c) => [a, b, c] as const)));
const vector = (u: number, v: number, w: number) => Math.hypot((2 * u - v - w) / 3, (v - w) / Math.sqrt(3));

it('no state of the output stage lets the current vector, or a phase, change faster than the least inductance allows', () => {
  const angle = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(fc.nat(), angle, angle, share, fc.tuple(share, angle), (seed, rotor, own, emf, [load, at]) => {
      const axis = drawAxisInMotion(seeded(seed));
      const { bus, inductance, saliency, unsaturated, tripCurrent } = axis;
      const of = (size: number, from: number) => (k: number) => size * Math.cos(from - k * third);
      const current = of(load * tripCurrent, at);
      const i = [current(0), current(1), current(2)] as const;
      const peak = Math.max(...i.map(Math.abs)) / tripCurrent;
      const least = inductance * (1 - (1 - unsaturated) * peak ** 2) * (1 - saliency);
      const e = of((emf * bus) / Math.sqrt(3), own);
      const { mutual } = windingOf(axis, rotor, i, [1, 1, 1]);
      const allowed = (bus * (2 / 3 + emf / Math.sqrt(3))) / least;
      for (const [a, b, c] of states) {
        const drive = [a * bus - e(0), b * bus - e(1), c * bus - e(2)] as const;
        const slopes = currentSlopes(mutual, drive, [0, 1, 2]);
        expect(vector(...slopes)).toBeLessThanOrEqual(allowed * (1 + 1e-9));
        expect(Math.max(...slopes.map(Math.abs))).toBeLessThanOrEqual(allowed * (1 + 1e-9));
      }
    }),
    { numRuns: Math.min(runs, 500) },
  );
});

it('a rise from one phase to another reaches √3/2 of that bound at a round rotor, so that the vector tells more of it', () => {
  // U across two phases in series: di/dt = U / (2 L); its vector is 2/√3 times as long, U / (√3 · L), and 2/3 · U / L is allowed.
  const axis = { ...drawAxisInMotion(seeded(1)), saliency: 0, unsaturated: 1 };
  const { mutual } = windingOf(axis, 0, [0, 0, 0], [1, 1, 1]);
  const [u, v, w] = currentSlopes(mutual, [axis.bus, 0, axis.bus / 2], [0, 1, 2]);
  expect(u).toBeCloseTo(axis.bus / (2 * axis.inductance), 3);
  expect(w).toBeCloseTo(0, 3);
  expect(vector(u, v, w) / ((2 / 3) * (axis.bus / axis.inductance))).toBeCloseTo(Math.sqrt(3) / 2, 6);
});
