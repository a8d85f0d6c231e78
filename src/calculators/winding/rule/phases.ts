import { type Phase, phases } from '../../../kernel/electrics/phases.ts';
import type { Interval } from '../../../kernel/reading/interval.ts';
import { corners } from '../../../kernel/reading/spread.ts';
import { type WindingPair, windingPairs } from './pairs.ts';

export type Pairs<T> = Record<WindingPair, T>;

export function mapPairs<A, B>(from: Pairs<A>, map: (value: A, pair: WindingPair) => B): Pairs<B> {
  return { UV: map(from.UV, 'UV'), VW: map(from.VW, 'VW'), WU: map(from.WU, 'WU') };
}

/** The pair that does not contain a phase of a star. */
const opposite: Record<Phase, WindingPair> = { U: 'VW', V: 'WU', W: 'UV' };

/**
 * Windings of a star in Ω, from its line-to-line resistances: UV = U + V and so on. One is zero if a reading equals the
 * other two together: that winding is shorted. One is negative if a reading is more than that, which no motor has.
 */
export function starPhases(lines: Pairs<number>): Record<Phase, number> {
  const half = (lines.UV + lines.VW + lines.WU) / 2;
  return { U: half - lines.VW, V: half - lines.WU, W: half - lines.UV };
}

/**
 * Windings of a delta in Ω, each between the terminals of its name: from the star that reads the same, by the
 * star–delta transformation. Infinite if a reading equals the other two together: that winding is open.
 */
export function deltaPhases(lines: Pairs<number>): Pairs<number> {
  const star = starPhases(lines);
  const products = star.U * star.V + star.V * star.W + star.W * star.U;
  return { UV: products / star.W, VW: products / star.U, WU: products / star.V };
}

export interface SumOfOthers {
  pair: WindingPair;
  /** The terminal that the pair does not have. */
  leftOut: Phase;
  /** More than the other two together, whatever the errors: no motor has it. */
  more: boolean;
}

/**
 * A reading that may be the sum of the other two or more. As much as the other two is, in a star, the winding of the
 * terminal left out without resistance, and in a delta the winding of the pair open.
 */
export function sumOfOthers(lines: Pairs<Interval>): SumOfOthers | undefined {
  for (const leftOut of phases) {
    const pair = opposite[leftOut];
    const others = windingPairs.filter((other) => other !== pair);
    const sum = (end: 'lo' | 'hi') => others.reduce((total, other) => total + lines[other][end], 0);
    if (lines[pair].hi >= sum('lo')) return { pair, leftOut, more: lines[pair].lo > sum('hi') };
  }
  return undefined;
}

/** The outlier of three, and on which side of the other two it is. */
export interface OddOne<Name extends string> {
  name: Name;
  side: 'low' | 'high';
}

/**
 * The winding that differs from the other two for all values within the intervals: more than twice as far from the
 * middle one as the third.
 */
export function oddPhase(lines: Pairs<Interval>): OddOne<Phase> | undefined {
  return oddAtAll(lines, (corner) => Object.entries(starPhases(corner)) as [Phase, number][]);
}

export function oddDeltaWinding(lines: Pairs<Interval>): OddOne<WindingPair> | undefined {
  return oddAtAll(lines, (corner) => Object.entries(deltaPhases(corner)) as [WindingPair, number][]);
}

function oddAtAll<Name extends string>(
  lines: Pairs<Interval>,
  solve: (corner: Pairs<number>) => [Name, number][],
): OddOne<Name> | undefined {
  const found = corners(windingPairs.map((pair) => lines[pair])).map(([UV = 0, VW = 0, WU = 0]) =>
    odd(solve({ UV, VW, WU })),
  );
  const [first] = found;
  return found.every((one) => one?.name === first?.name && one?.side === first?.side) ? first : undefined;
}

function odd<Name extends string>(values: [Name, number][]): OddOne<Name> | undefined {
  const [low, middle, high] = [...values].sort(([, a], [, b]) => a - b);
  if (low === undefined || middle === undefined || high === undefined || low[1] < 0) return undefined;
  const [below, above] = [middle[1] - low[1], high[1] - middle[1]];
  if (below > 2 * above) return { name: low[0], side: 'low' };
  return above > 2 * below ? { name: high[0], side: 'high' } : undefined;
}

/** The terminal that two pairs share: the open phase of a star. */
export function sharedTerminal(pairs: readonly WindingPair[]): Phase | undefined {
  const [only] = windingPairs.filter((pair) => !pairs.includes(pair));
  return pairs.length === 2 ? phases.find((phase) => opposite[phase] === only) : undefined;
}
