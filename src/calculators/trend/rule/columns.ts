import { parseDate } from '../../../kernel/reading/calendar-date.ts';
import { parseReading } from '../../../kernel/reading/parse-reading.ts';
import type { TableProblem } from './input.ts';

/** The positions of the three columns, and the units in their heads. */
export interface Columns {
  date: number;
  reading: number;
  temperature: number;
  bareOhms?: string;
  bareTemperature?: string;
  /** How many cells a row has; more are a mistake. */
  width: number;
  unused: string[];
}

/** The order of columns if there are no heads. */
export const usualColumns: Columns = { date: 0, reading: 1, temperature: 2, width: 3, unused: [] };

/** Names of heads, the clearest first: the first pattern that matches any head decides. */
const temperatureHeads = [/winding.*temp|temp.*winding/i, /temp/i, /°|celsius|fahrenheit/i];
const readingHeads = [/resist|insul|riso/i, /Ω|\u2126|ohm/i, /reading|value|^i?r\b/i];
const dateHeads = [/date/i, /day|when|time/i];

/** Whether a first row names columns, its cells without spaces around them: no cell is a date, and some cell has the name of one of the three. */
export function isHead(cells: readonly string[]): boolean {
  const date = cells.some((cell) => {
    const result = parseDate(cell);
    return result.ok || !['date-missing', 'date-unreadable'].includes(result.code);
  });
  const all = [...temperatureHeads, ...readingHeads, ...dateHeads];
  return !date && cells.some((cell) => /^[^\d>]/.test(cell) && all.some((pattern) => pattern.test(cell)));
}

export function columnsOf(head: readonly string[]): Columns | { problem: TableProblem } {
  const temperatures = matching(head, temperatureHeads, []);
  const readings = matching(head, readingHeads, temperatures);
  const dates = matching(head, dateHeads, [...temperatures, ...readings]);
  const found = [dates, readings, temperatures];
  if (found.some((columns) => columns.length === 0)) return { problem: 'column-missing' };
  if (found.some((columns) => columns.length > 1)) return { problem: 'column-twice' };
  const [date = 0, reading = 0, temperature = 0] = found.flat();
  const bareOhms = unitIn(head[reading] ?? '', 'resistance');
  const bareTemperature = unitIn(head[temperature] ?? '', 'temperature');
  const unused = head.filter((name, column) => name !== '' && ![date, reading, temperature].includes(column));
  return {
    ...{ date, reading, temperature, width: head.length, unused },
    ...(bareOhms && { bareOhms }),
    ...(bareTemperature && { bareTemperature }),
  };
}

function matching(head: readonly string[], patterns: readonly RegExp[], taken: readonly number[]): number[] {
  for (const pattern of patterns) {
    const found = head.flatMap((name, column) => (pattern.test(name) && !taken.includes(column) ? [column] : []));
    if (found.length > 0) return found;
  }
  return [];
}

/** The unit in a head such as `Insulation (MΩ)`, `R [GOhm]`, `Temperature, °F`. */
function unitIn(name: string, quantity: 'resistance' | 'temperature'): string | undefined {
  const candidates = [/[([]([^)\]]+)[)\]]/.exec(name)?.[1], /(?:,|\/| in | )\s*([^\s,/]+)\s*$/.exec(name)?.[1]];
  return candidates.find((unit) => unit !== undefined && parseReading(`1 ${unit}`, quantity).ok)?.trim();
}
