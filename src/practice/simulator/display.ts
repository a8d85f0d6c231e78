import { between, type Random } from '../../kernel/random.ts';
import { formatQuantity } from '../../kernel/reading/format-reading.ts';
import type { Reading, Unit } from '../../kernel/reading/reading.ts';
import type { MeterFunction, Range } from './instruments.ts';

/** A reading, and the text of the display as a person would type it. */
export interface Displayed {
  reading: Reading;
  text: string;
}

/** Share of the error that is constant for one instrument; the rest changes with each reading. */
const steadyShare = 0.7;

/** Value of the last digit of a range. */
export function resolutionOf({ fullScale }: Range, { displayCounts }: MeterFunction): number {
  return 10 ** Math.ceil(Math.log10(fullScale / displayCounts) - 1e-9);
}

/**
 * A true value with the instrument's error, rounded to the display. `error`: the constant part, −1 to 1. Apart from
 * rounding, the sum stays within the stated limits of error.
 */
export function withError(value: number, range: Range, meter: MeterFunction, error: number, random: Random): number {
  const step = resolutionOf(range, meter);
  const share = steadyShare * error + (1 - steadyShare) * between(random, -1, 1);
  // Leaves half a count for the rounding.
  const shown = value + share * ((Math.abs(value) * meter.percent) / 100 + (meter.counts - 0.5) * step);
  return Math.round(shown / step);
}

/** The display at `count` steps of this range. */
export function showCount(count: number, range: Range, meter: MeterFunction, unit: 'Ω' | 'V'): Displayed {
  const resolution = resolutionOf(range, meter);
  const exponent = Math.round(Math.log10(resolution));
  const value = Number(`${count}e${exponent}`);
  return { reading: { kind: 'value', value, unit, resolution }, text: written(count, exponent, unit) };
}

/** Over-range, with the end of the range noted, as a careful person does. */
export function showOver(fullScale: number, unit: 'Ω' | 'V'): Displayed {
  return { reading: { kind: 'over', unit, atLeast: fullScale }, text: `> ${formatQuantity(fullScale, unit)}` };
}

const prefixes: [number, string][] = [
  [9, 'G'],
  [6, 'M'],
  [3, 'k'],
  [0, ''],
];

/** The digits of the display with trailing zeros, which show its resolution. */
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
