import type { Reading, ValueReading } from './reading.ts';

/** All values that a quantity can have, given what was read. `hi` may be Infinity. */
export interface Interval {
  lo: number;
  hi: number;
}

/**
 * What the manufacturer of the instrument states, each optional: `percent` of the reading and `counts` of the last
 * digit are the limits of error, `upperLimit` is the highest value that it can show, in the unit of the reading.
 */
export interface Instrument {
  percent?: number;
  counts?: number;
  upperLimit?: number;
}

export const everything: Interval = { lo: 0, hi: Number.POSITIVE_INFINITY };

/**
 * The interval that a reading of a non-negative quantity leaves open. Limits of error are taken as bounds at their
 * worst (guard band w = U, JCGM 106:2012), so that a wider stated uncertainty can only cancel a decision, never make
 * one. A value above the instrument's own upper limit counts as over-range at that limit. The bounds of over- and
 * under-range have the instrument's percentage of error too; counts don't apply there.
 */
export function intervalOf(reading: Reading, instrument: Instrument = {}): Interval {
  switch (reading.kind) {
    case 'missing':
      return everything;
    case 'over':
      return { lo: least(boundOfOver(reading.atLeast, instrument), instrument), hi: Number.POSITIVE_INFINITY };
    case 'under':
      return { lo: 0, hi: (reading.atMost ?? Number.POSITIVE_INFINITY) * (1 + (instrument.percent ?? 0) / 100) };
    case 'value': {
      const { upperLimit } = instrument;
      const error = limitOfError(reading.value, reading.resolution, instrument);
      const lo = Math.max(0, reading.value - error);
      if (upperLimit !== undefined && reading.value > upperLimit) {
        return { lo: Math.min(lo, least(upperLimit, instrument)), hi: Number.POSITIVE_INFINITY };
      }
      return { lo, hi: reading.value + error };
    }
  }
}

function boundOfOver(atLeast: number | undefined, { upperLimit }: Instrument): number {
  if (atLeast === undefined) return upperLimit ?? 0;
  return upperLimit === undefined ? atLeast : Math.min(atLeast, upperLimit);
}

function least(bound: number, { percent = 0 }: Instrument): number {
  return Math.max(0, bound * (1 - percent / 100));
}

/** Limit of error of a shown value, in its unit: percent of reading plus counts of the last digit. */
export function limitOfError(value: number, resolution: number | undefined, instrument: Instrument): number {
  const { percent = 0, counts = 0 } = instrument;
  const step = counts === 0 ? 0 : (resolution ?? coarsestStep(value));
  // Divided first: a figure near the largest that a computer knows must not have an infinite error.
  return (Math.abs(value) / 100) * percent + counts * step;
}

/** If the display's step is unknown: the place of the last digit that is not zero, the widest it can be. */
function coarsestStep(value: number): number {
  if (value === 0) return 0;
  const [mantissa = '', exponent = '0'] = Math.abs(value).toExponential().split('e');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return 10 ** (Number(exponent) - decimals);
}

/**
 * The interval of a non-negative figure by its last digit alone: half a step to each side, as rounding gives. `1 GΩ`
 * states one digit and means 0.5 to 1.5 GΩ, never zero. Only a zero reaches down to zero: a display shows it for
 * anything less than one step.
 */
export function byLastDigit({ value, resolution = 0 }: ValueReading): Interval {
  if (value === 0) return { lo: 0, hi: resolution };
  return { lo: Math.max(value - resolution / 2, value / 2), hi: value + resolution / 2 };
}

/**
 * `intervalOf`, and at least what rounding leaves open: `0.1 kΩ` is no proof of a part of 100 Ω, and `0 MΩ` none of a
 * closed contact.
 */
export function intervalShown(reading: Reading, instrument: Instrument = {}): Interval {
  const stated = intervalOf(reading, instrument);
  if (reading.kind !== 'value') return stated;
  const digit = byLastDigit(reading);
  return { lo: Math.min(stated.lo, digit.lo), hi: Math.max(stated.hi, digit.hi) };
}

/** The factor of a quantity that is used as read. */
export const asRead: Interval = { lo: 1, hi: 1 };

/** The interval of `factor` times a quantity, both non-negative. Zero stays zero, however wide the factor. */
export function times(a: Interval, factor: Interval): Interval {
  return { lo: product(a.lo, factor.lo), hi: product(a.hi, factor.hi) };
}

function product(a: number, b: number): number {
  return a === 0 || b === 0 ? 0 : a * b;
}
