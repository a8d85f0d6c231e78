import { type LimitId, limit, limitIds } from '../../kernel/limits.ts';
import { parseReading } from '../../kernel/reading/parse-reading.ts';
import type { Quantity } from '../../kernel/reading/quantity.ts';
import { missing, type Reading } from '../../kernel/reading/reading.ts';
import { formatFigure, formatLimit } from '../../kernel/words/format-limit.ts';
import { isExampleReading } from '../articles/example-reading.ts';
import type { Limit } from '../tables/limit-schema.ts';

/** A number of a question: as printed, as calculation input, and as a plain figure in the base unit. */
export interface ExerciseValue {
  text: string;
  reading: Reading;
  /** NaN if there is no figure: a limit that is a range or a table, an over-range reading, a verdict. */
  value: number;
}

export type Compute = (...values: ExerciseValue[]) => ExerciseValue;

const quantities: Quantity[] = ['resistance', 'voltage', 'temperature', 'percent', 'length', 'duration', 'diameter'];

/** A noted reading. Throws if it can't be read, so that a mistake stops the build. */
export function givenValue(text: string): ExerciseValue {
  if (!isExampleReading(text)) throw new Error(`“${text}” is neither a reading nor a number with its unit`);
  const printed = text.trim().replaceAll(' ', '\u00a0').replace(/^-/, '−');
  for (const quantity of quantities) {
    const result = parseReading(text, quantity);
    if (!result.ok) continue;
    const { reading } = result;
    return { text: printed, reading, value: reading.kind === 'value' ? reading.value : Number.NaN };
  }
  // A meter with exchanged leads shows a minus; no form takes it, but a question may mention it.
  if (/^[-−]\d/.test(text)) return { text: printed, reading: missing, value: -givenValue(text.slice(1)).value };
  // A range has no single figure.
  return { text: printed, reading: missing, value: / to /.test(text) ? Number.NaN : Number.parseFloat(text) };
}

export function limitFigure(id: string): ExerciseValue {
  if (!(limitIds as string[]).includes(id)) throw new Error(`no limit “${id}” in content/limits`);
  const data = limit(id as LimitId);
  return { ...numberValue(data.value ?? Number.NaN, data.unit as Limit['unit']), text: formatLimit(data) };
}

/** A result, with three significant digits. */
export function numberValue(value: number, unit: Limit['unit']): ExerciseValue {
  const isRead = unit === 'Ω' || unit === 'V' || unit === '°C' || unit === '%' || unit === 'min' || unit === 'm';
  const reading: Reading = isRead && Number.isFinite(value) ? { kind: 'value', value, unit } : missing;
  return { text: formatFigure(Number(value.toPrecision(3)), unit), reading, value };
}

/** A result in words, such as a verdict. */
export function wordValue(text: string): ExerciseValue {
  return { text, reading: missing, value: Number.NaN };
}
