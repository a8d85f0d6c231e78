import { limitValue } from '../limits.ts';
import { parseReading } from '../reading/parse-reading.ts';
import { quantityRules } from '../reading/quantity.ts';
import { figureOf } from '../reading/reading.ts';
import { typedUnit } from '../reading/typed-unit.ts';
import type { FormField, ReadingField, Typed } from './field.ts';

/** The unit that a row of readings has so far. */
export interface RowUnit {
  /** Such as `kΩ`. */
  symbol: string;
  /** The field in which it was typed. */
  from: ReadingField;
}

/**
 * The unit that a figure without one can have in the field `id`: that of the last reading before it in its row that
 * is like it, else of the last that has one. Undefined outside a row, and before a unit was typed in it.
 */
export function rowUnit(fields: readonly FormField[], id: string, typed: Typed): RowUnit | undefined {
  const before = takenFrom(fields, id, typed)?.before ?? neighboursBefore(fields, id, typed)[0];
  return before && { symbol: before.symbol, from: before.from };
}

/**
 * What is typed in the field `id`, with the unit of its row written after it: `460` after `450k` is `460 kΩ`. Undefined
 * if nothing is taken over, so that the field is read and asked about as ever. Only a missing unit is filled in, and only
 * for a figure that has one meaning with it and lies near a neighbour (`entry-row-alike`), the last one counting: a zero, a lone 1, a doubtful
 * comma or point, and a figure that may come from another range of the meter are never decided here. `rowUnitInDoubt`
 * says whether the person has to confirm it.
 */
export function withRowUnit(fields: readonly FormField[], id: string, typed: Typed): string | undefined {
  return takenFrom(fields, id, typed)?.whole;
}

function takenFrom(
  fields: readonly FormField[],
  id: string,
  typed: Typed,
): { whole: string; before: Neighbour } | undefined {
  const field = readingField(fields, id);
  if (field === undefined) return undefined;
  const text = (typed[id] ?? '').trim();
  const alone = parseReading(text, field.quantity, '', field.units);
  if (alone.ok || alone.error.code !== 'unit-missing') return undefined;
  for (const before of neighboursBefore(fields, id, typed)) {
    const whole = `${text} ${before.symbol}`;
    const figure = figureIn(whole, field);
    if (figure !== undefined && areAlike(figure, before.figure)) return { whole, before };
  }
  return undefined;
}

/**
 * What `withRowUnit` writes, if the person must say that it is meant: with another unit of the field the figure would be a
 * worse reading that the meter may show, such as 450 Ω after 450 kΩ. Undefined if a slip could only make it read worse.
 */
export function rowUnitInDoubt(fields: readonly FormField[], id: string, typed: Typed): string | undefined {
  const field = readingField(fields, id);
  const whole = withRowUnit(fields, id, typed);
  if (field === undefined || whole === undefined) return undefined;
  const figure = figureIn(whole, field) ?? 0;
  const others = (field.units ?? quantityRules[field.quantity].units).flatMap(
    (symbol) => figureIn(`${(typed[id] ?? '').trim()} ${symbol}`, field) ?? [],
  );
  const isWorse = (other: number) => (field.lowIsWorse ? other < figure : other !== figure);
  return others.some(isWorse) ? whole : undefined;
}

function figureIn(text: string, { quantity, units }: ReadingField): number | undefined {
  const result = parseReading(text, quantity, '', units);
  return result.ok ? figureOf(result.reading) : undefined;
}

interface Neighbour extends RowUnit {
  figure: number;
}

/** Those that were typed with a unit, the last one first. */
function neighboursBefore(fields: readonly FormField[], id: string, typed: Typed): Neighbour[] {
  const field = readingField(fields, id);
  if (field?.row === undefined) return [];
  const before = fields.slice(0, fields.indexOf(field)).reverse();
  return before.flatMap((from): Neighbour[] => {
    if (from.kind !== 'reading' || from.row !== field.row || from.quantity !== field.quantity) return [];
    const text = typed[from.id] ?? '';
    const result = parseReading(text, from.quantity);
    const symbol = typedUnit(text, from.quantity);
    const figure = result.ok ? figureOf(result.reading) : undefined;
    return symbol !== undefined && figure !== undefined ? [{ symbol, from, figure }] : [];
  });
}

function readingField(fields: readonly FormField[], id: string): ReadingField | undefined {
  const field = fields.find((one) => one.id === id);
  return field?.kind === 'reading' ? field : undefined;
}

function areAlike(a: number, b: number): boolean {
  const [low, high] = [Math.min(Math.abs(a), Math.abs(b)), Math.max(Math.abs(a), Math.abs(b))];
  return low > 0 && a * b > 0 && high <= low * limitValue('entry-row-alike');
}
