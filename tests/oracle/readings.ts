import type { Instrument } from '../../src/kernel/reading/interval.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';
import type { Dice } from './dice.ts';

type Unit = Extract<Reading, { kind: 'value' }>['unit'];

/** What no instrument shows. */
export const absurd: readonly number[] = [
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
  -1,
  -1e-9,
  -1e9,
];
/** What an instrument hardly shows, and a rule must stand all the same. */
const extreme: readonly number[] = [0, -0, 5e-324, 1e-300, 1e-12, 1e15, 1e300, Number.MAX_VALUE];

/** A figure as a display of some digits shows it, mostly with the step of the last one. */
export function shown(dice: Dice, value: number, unit: Unit, digits = 4): Reading {
  if (!(value > 0)) return { kind: 'value', value: 0, unit, resolution: 0.01 };
  const place = Math.floor(Math.log10(value)) - digits + 1;
  const rounded = Number(`${Math.round(value / 10 ** place)}e${place}`);
  return dice.chance(0.9)
    ? { kind: 'value', value: rounded, unit, resolution: Number(`1e${place}`) }
    : { kind: 'value', value: rounded, unit };
}

/** Mostly `usual`; else a bound, nothing, an extreme or an absurd figure, in proportion to `oddity`. */
export function reading(dice: Dice, usual: () => number, unit: Unit, oddity = 0.02, digits = 4): Reading {
  if (!dice.chance(oddity)) return shown(dice, usual(), unit, digits);
  const figure = dice.chance(0.6) ? usual() : dice.pick([...extreme, ...absurd]);
  switch (dice.below(7)) {
    case 0:
      return { kind: 'missing' };
    case 1:
      return { kind: 'over', unit };
    case 2:
      return { kind: 'over', unit, atLeast: figure };
    case 3:
      return { kind: 'under', unit };
    case 4:
      return { kind: 'under', unit, atMost: figure };
    case 5:
      return { kind: 'value', value: figure, unit, resolution: dice.pick([...extreme, ...absurd]) };
    default:
      return { kind: 'value', value: figure, unit };
  }
}

export function instrument(dice: Dice, limits: readonly number[], oddity = 0.01): Instrument {
  if (dice.chance(0.5)) return {};
  const odd = (usual: number) => (dice.chance(oddity) ? dice.pick([...extreme, ...absurd]) : usual);
  return {
    ...(dice.chance(0.7) && { percent: odd(dice.pick([0, 0.5, 1, 2, 5, 10, 30])) }),
    ...(dice.chance(0.5) && { counts: odd(dice.pick([0, 1, 2, 5])) }),
    ...(dice.chance(0.3) && { upperLimit: odd(dice.pick(limits)) }),
  };
}

export interface Span {
  lo: number;
  hi: number;
}

const zeroUp = (figure: number) => Number.isFinite(figure) && figure >= 0;

/**
 * The values that a reading leaves open, in few words; nothing where it is missing or can't have been shown. Where the
 * step of a display isn't known its counts are left out, so that the oracle asks for less than it might.
 */
export function span(one: Reading, { percent = 0, counts = 0, upperLimit }: Instrument = {}): Span | undefined {
  if (!zeroUp(percent) || percent > 100 || !zeroUp(counts) || (upperLimit !== undefined && !zeroUp(upperLimit)))
    return undefined;
  const less = 1 - percent / 100;
  const top = upperLimit ?? Number.POSITIVE_INFINITY;
  if (one.kind === 'over') {
    const bound = one.atLeast ?? upperLimit ?? 0;
    return zeroUp(bound) ? { lo: Math.min(bound, top) * less, hi: Number.POSITIVE_INFINITY } : undefined;
  }
  if (one.kind === 'under') {
    const most = one.atMost ?? Number.POSITIVE_INFINITY;
    return most >= 0 && (one.atMost === undefined || zeroUp(most)) ? { lo: 0, hi: most * (2 - less) } : undefined;
  }
  if (one.kind !== 'value' || !zeroUp(one.value) || !zeroUp(one.resolution ?? 0)) return undefined;
  const error = one.value * (1 - less) + counts * (one.resolution ?? 0);
  const lo = Math.max(0, one.value - error);
  return one.value > top
    ? { lo: Math.min(lo, top * less), hi: Number.POSITIVE_INFINITY }
    : { lo, hi: one.value + error };
}

/**
 * A figure that is lower by `factor`, on the steps of its display; the same where the step isn't known, since a figure of
 * other digits would then be a reading of another accuracy.
 */
export function lowered(one: Reading, factor: number): Reading {
  if (one.kind !== 'value' || one.resolution === undefined || !(one.resolution > one.value * 1e-12)) return one;
  return { ...one, value: Math.floor(one.value / factor / one.resolution) * one.resolution };
}

/** A figure that is higher by `factor`, on the steps of its display; the same where `lowered` leaves it. */
export function raised(one: Reading, factor: number): Reading {
  if (one.kind !== 'value' || one.resolution === undefined || !(one.resolution > one.value * 1e-12)) return one;
  const value = Math.ceil((one.value * factor) / one.resolution) * one.resolution;
  // The largest figures that a computer knows can’t be raised: infinity is no reading.
  return Number.isFinite(value + one.resolution) ? { ...one, value } : one;
}

/** Further from `wanted`, on whichever side it is. */
export function further(one: Reading, wanted: number, factor: number): Reading {
  return figure(one) > wanted ? raised(one, factor) : lowered(one, factor);
}

/** A hair for sums of binary fractions. */
export const hair = 1 + 1e-6;

/** Least value, or -1 where nothing is known. */
export const least = (one: Reading, by?: Instrument) => span(one, by)?.lo ?? -1;

/** A plain figure of a reading; NaN where there is none. */
export const figure = (one: Reading | undefined) => (one?.kind === 'value' ? one.value : Number.NaN);

/** Ω/km of flexible copper cores, IEC 60228, by mm². Typed once more on purpose. */
const perKilometre: Record<number, number> = {
  ...{ 0.75: 26, 1: 19.5, 1.5: 13.3, 2.5: 7.98, 4: 4.95, 6: 3.3, 10: 1.91, 16: 1.21, 25: 0.78, 35: 0.554 },
};

/**
 * A PE that is a short: an ohm or less, or where its length and cross-section are known, a quarter more than the
 * core has and 0.15 Ω. Limits typed once more on purpose.
 */
export function deadShort(one: Reading, core: { metres?: number; squareMillimetres?: number } = {}): boolean {
  const own = ((perKilometre[core.squareMillimetres ?? 0] ?? Number.NaN) * (core.metres ?? Number.NaN)) / 1000;
  const most = own > 0 ? (own * 1.25 + 0.15) * hair : 1;
  if (one.kind === 'under') return (one.atMost ?? Number.POSITIVE_INFINITY) <= most && (one.atMost ?? -1) >= 0;
  return (
    one.kind === 'value' &&
    one.value >= 0 &&
    one.value <= most &&
    (one.resolution ?? 0) >= 0 &&
    (one.value > 0 || (one.resolution ?? 0) <= most)
  );
}

/** A bus that was read at a tenth of a volt at most, whichever way round. Limit typed once more on purpose. */
export function busIsDead(one: Reading): boolean {
  if (one.kind === 'value') return Math.abs(one.value) <= 0.1;
  return one.kind === 'under' && (one.atMost ?? Number.POSITIVE_INFINITY) <= 0.1 && (one.atMost ?? -1) >= 0;
}
