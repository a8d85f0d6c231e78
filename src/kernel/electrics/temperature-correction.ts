import { type LimitId, limitConstant, limitPoints, limitValue } from '../limits.ts';
import { everything, type Interval } from '../reading/interval.ts';
import { type CorrectionMethod, validityOf } from './correction-validity.ts';

/** The limits that a method uses. */
export const limitsOfMethod: Record<CorrectionMethod, LimitId[]> = {
  halving: ['halving-rule', 'halving-validity'],
  thermosetting: ['thermosetting-cool', 'thermosetting-hot'],
  table: ['solid-insulation-to-20'],
};

/**
 * The factor that converts a resistance read at `fromCelsius` to `toCelsius`. Undefined outside the method's validity:
 * never extrapolated.
 */
export function correctionFactor(method: CorrectionMethod, fromCelsius: number, toCelsius: number): number | undefined {
  const { from, to } = validityOf(method);
  const valid = (celsius: number) => celsius >= from && celsius <= to;
  if (!valid(fromCelsius) || !valid(toCelsius)) return undefined;
  return relative(method, fromCelsius) / relative(method, toCelsius);
}

/**
 * The possible factors for an unknown temperature within `range` (°C). If the range exceeds the method's validity, any
 * factor is possible: nothing is extrapolated, and leaving out the temperature must not be better than stating it.
 */
export function factorIfUnknown(
  method: CorrectionMethod,
  range: { from: number; to: number },
  toCelsius: number,
): Interval {
  const validity = validityOf(method);
  const factor = (celsius: number) => relative(method, celsius) / relative(method, toCelsius);
  if (range.from < validity.from || range.to > validity.to) return everything;
  return { lo: factor(range.from), hi: factor(range.to) };
}

/** Grows with temperature; only its ratios have a meaning. */
function relative(method: CorrectionMethod, celsius: number): number {
  switch (method) {
    case 'halving':
      return 2 ** (celsius / limitValue('halving-rule'));
    case 'thermosetting':
      return thermosetting(celsius);
    case 'table':
      return interpolate(limitPoints('solid-insulation-to-20'), celsius) ?? Number.NaN;
  }
}

/** The formulas of IEEE 43-2013 round the absolute zero to −273 °C; −273.15 would not reproduce their own figures. */
const kelvinInFormula = 273;

function thermosetting(celsius: number): number {
  const reference = limitValue('reference-temperature-routine');
  const id = celsius < reference ? 'thermosetting-cool' : 'thermosetting-hot';
  const difference = 1 / (celsius + kelvinInFormula) - 1 / (reference + kelvinInFormula);
  return Math.exp(-limitConstant(id, 'k') * difference);
}

/**
 * A published table of factors between its rows: the logarithm is interpolated, since resistance falls
 * exponentially with temperature. Undefined outside the table.
 */
export function interpolate(points: readonly (readonly [number, number])[], input: number): number | undefined {
  const upper = points.findIndex(([x]) => x >= input);
  const above = points[upper];
  if (above === undefined) return undefined;
  if (above[0] === input) return above[1];
  const below = points[upper - 1];
  if (below === undefined) return undefined;
  const share = (input - below[0]) / (above[0] - below[0]);
  return below[1] * (above[1] / below[1]) ** share;
}
