import type { AxisInMotion } from './axis-in-motion.ts';

export const third = (2 * Math.PI) / 3;

type Three = readonly [number, number, number];

/** A symmetrical 3 × 3 matrix over the phases, in H: by rows UU, UV, UW, VV, VW, WW. */
export type Mutual = readonly [number, number, number, number, number, number];

const at = (m: Mutual, k: number, j: number): number => m[k === 0 || j === 0 ? k + j : k + j + 1] ?? 0;

/**
 * Inductances between the phases of a star, and their change with the electrical angle. In the frame of the rotor they are Ld
 * and Lq: M(k, j) = 2/3 · (L0 · cos((k − j) · 120°) + L2 · cos(2θ − (k + j) · 120°)), L0 their mean and L2 half of Ld − Lq
 * (Krause, Analysis of Electric Machinery; recalled). Iron that saturates leaves a share of it; shorted turns are lacking.
 */
export function windingOf(axis: AxisInMotion, electrical: number, i: Three, turns: Three) {
  const load = Math.min(1, Math.max(Math.abs(i[0]), Math.abs(i[1]), Math.abs(i[2])) / axis.tripCurrent) ** 2;
  const mean = axis.inductance * (1 - (1 - axis.unsaturated) * load);
  const half = -axis.saliency * mean;
  const [tu, tv, tw] = turns;
  const over = (own: number, other: number, make: (angle: number) => number): Mutual => {
    const [a, b, c] = [make(2 * electrical), make(2 * electrical - third), make(2 * electrical - 2 * third)];
    const of = (first: number, second: number, value: number) => (2 / 3) * first * second * value;
    return [
      of(tu, tu, own + a),
      of(tu, tv, other + b),
      of(tu, tw, other + c),
      of(tv, tv, own + c),
      of(tv, tw, other + a),
      of(tw, tw, own + b),
    ];
  };
  return {
    mutual: over(mean, -mean / 2, (angle) => (half === 0 ? 0 : half * Math.cos(angle))),
    slope: half === 0 ? undefined : over(0, 0, (angle) => -2 * half * Math.sin(angle)),
  };
}

/** One row of the matrix times the currents. */
export const rowTimes = (m: Mutual, k: number, i: Three): number =>
  at(m, k, 0) * i[0] + at(m, k, 1) * i[1] + at(m, k, 2) * i[2];

/**
 * How fast the currents change, in A/s: the star point is free, so that they add up to zero, and only what conducts carries
 * any. `drive` is what drives each phase beyond its resistance and its induced voltage, in V.
 */
export function currentSlopes(m: Mutual, drive: Three, conducting: readonly number[]): [number, number, number] {
  const slopes: [number, number, number] = [0, 0, 0];
  const [a = 0, b = 0, c] = conducting;
  if (conducting.length < 2) return slopes;
  const u = (k: number) => drive[k] ?? 0;
  if (c === undefined) {
    const one = (u(a) - u(b)) / (at(m, a, a) + at(m, b, b) - 2 * at(m, a, b));
    slopes[a] = one;
    slopes[b] = -one;
    return slopes;
  }
  const across = (k: number, j: number) => at(m, k, j) - at(m, k, c) - at(m, c, j) + at(m, c, c);
  const [aa, ab, bb] = [across(a, a), across(a, b), across(b, b)];
  const [ua, ub] = [u(a) - u(c), u(b) - u(c)];
  const determinant = aa * bb - ab * ab;
  const [first, second] = [(bb * ua - ab * ub) / determinant, (aa * ub - ab * ua) / determinant];
  slopes[a] = first;
  slopes[b] = second;
  slopes[c] = -first - second;
  return slopes;
}
