import { formatQuantity } from '../../kernel/reading/format-reading.ts';
import type { Reading, Unit } from '../../kernel/reading/reading.ts';
import type { MeterFunction, Range } from './instruments.ts';
import { between, type Random } from './random.ts';

/** What the display shows, and the same as a person would type it. */
export interface Shown {
  reading: Reading;
  text: string;
}

/** How much of the limit of error is the instrument's own, steady; the rest is another in each reading. */
const steadyShare = 0.7;

/** The step of the last digit of a range. */
export function resolutionOf({ fullScale }: Range, { displayCounts }: MeterFunction): number {
  return 10 ** Math.ceil(Math.log10(fullScale / displayCounts) - 1e-9);
}

/**
 * A true value with the instrument's error, rounded to the display. `error` is the steady part, −1 to 1. The sum never
 * leaves the stated limits of error, rounding apart.
 */
export function withError(value: number, range: Range, meter: MeterFunction, error: number, random: Random): number {
  const step = resolutionOf(range, meter);
  const share = steadyShare * error + (1 - steadyShare) * between(random, -1, 1);
  // Half a count is left for the rounding.
  const shown = value + share * ((Math.abs(value) * meter.percent) / 100 + (meter.counts - 0.5) * step);
  return Math.round(shown / step);
}

/** `count` steps of the display of this range. */
export function showCount(count: number, range: Range, meter: MeterFunction, unit: 'Ω' | 'V'): Shown {
  const resolution = resolutionOf(range, meter);
  const exponent = Math.round(Math.log10(resolution));
  const value = Number(`${count}e${exponent}`);
  return { reading: { kind: 'value', value, unit, resolution }, text: written(count, exponent, unit) };
}

/** Over-range, with the end of the range noted as a careful person does. */
export function showOver(fullScale: number, unit: 'Ω' | 'V'): Shown {
  return { reading: { kind: 'over', unit, atLeast: fullScale }, text: `> ${formatQuantity(fullScale, unit)}` };
}

const prefixes: [number, string][] = [
  [9, 'G'],
  [6, 'M'],
  [3, 'k'],
  [0, ''],
];

/** The digits of the display, trailing zeros and all: they tell its step. */
function written(count: number, exponent: number, unit: Unit): string {
  const size = Math.abs(count) * 10 ** exponent;
  const [power, prefix] = prefixes.find(([p]) => size >= 10 ** p && exponent <= p) ??
    [...prefixes].reverse().find(([p]) => exponent <= p) ?? [0, ''];
  const decimals = power - exponent;
  const digits = String(Math.abs(count)).padStart(decimals + 1, '0');
  const point = digits.length - decimals;
  const number = decimals === 0 ? digits : `${digits.slice(0, point)}.${digits.slice(point)}`;
  return `${count < 0 ? '-' : ''}${number} ${prefix}${unit}`;
}
