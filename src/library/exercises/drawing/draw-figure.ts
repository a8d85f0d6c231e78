import { between, betweenDecades, oneOf, type Random } from '../../../kernel/random.ts';
import { formatQuantity } from '../../../kernel/reading/format-reading.ts';
import type { ValueReading } from '../../../kernel/reading/reading.ts';
import type { FigureDraw } from '../exercise-schema.ts';
import { type ExerciseValue, givenValue } from '../exercise-value.ts';
import { computed } from '../fill.ts';

/** A drawn reading, as a person would note it. `named` gives the value of a number that is defined earlier. */
export function drawFigure(draw: FigureDraw, named: (name: string) => ExerciseValue, random: Random): string {
  if ('oneOf' in draw) return oneOf(random, draw.oneOf);
  if ('times' in draw) {
    const { value, unit } = readingOf(named(draw.times), draw.times);
    return withDigits(value * between(random, draw.from, draw.to), unit, draw.digits);
  }
  if ('compute' in draw) {
    const { value, unit } = readingOf(computed(draw.compute, draw.with.map(named)), draw.compute);
    const off = draw.offPercent / 100;
    return withDigits(value * between(random, 1 - off, 1 + off), unit, draw.digits);
  }
  const [from, to] = [readingIn(draw.from), readingIn(draw.to)];
  if ('step' in draw) return inSteps(from, to, readingIn(draw.step).value, random);
  return withDigits(betweenDecades(random, from.value, to.value), from.unit, draw.digits, symbolOf(draw.from));
}

/** One of the figures from `from` to `to`, each as likely as the others. */
function inSteps(from: ValueReading, to: ValueReading, step: number, random: Random): string {
  const steps = Math.round((to.value - from.value) / step);
  const taken = Math.floor(between(random, 0, steps + 1));
  return formatQuantity(from.value + taken * step, from.unit, 10 ** placeOf(step));
}

/**
 * A positive figure with so many significant digits, in the unit `symbol` if its numeral is below a thousand there. Zeros
 * before the point are digits of the numeral, not of the step: 180 MΩ with two digits has a step of 10 MΩ and is not
 * 0.18 GΩ.
 */
function withDigits(value: number, unit: ValueReading['unit'], digits: number, symbol?: string): string {
  const rounded = Number(value.toPrecision(digits));
  const last = placeOf(rounded) - digits + 1;
  const size = symbol === undefined ? 0 : readingIn(`1.0 ${symbol}`).value;
  if (size > 0 && rounded < 1000 * size) {
    return `${(rounded / size).toFixed(Math.max(0, placeOf(size) - last))} ${symbol}`;
  }
  const prefix = Math.floor(placeOf(rounded) / 3) * 3;
  return formatQuantity(rounded, unit, 10 ** (rounded < 1 ? last : Math.min(last, prefix)));
}

/** The power of ten of the first digit: 2 for 180. */
const placeOf = (value: number) => Math.floor(Math.log10(value) + 1e-9);

/** `MΩ` in `2.2 MΩ`. */
const symbolOf = (text: string) => text.replace(/^[\d.]+ /, '');

const readingIn = (text: string): ValueReading => readingOf(givenValue(text), text);

function readingOf({ reading }: ExerciseValue, name: string): ValueReading {
  if (reading.kind !== 'value') throw new Error(`“${name}” is no plain figure, so nothing is drawn from it`);
  return reading;
}
