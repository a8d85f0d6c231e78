import { formatDay } from '../calc/calendar-date.ts';
import { formatRounded } from '../calc/format-reading.ts';
import { lastIn } from '../calc/last-in.ts';
import { percentPerYear } from '../calc/trend-fit.ts';
import type { TrendAssessment } from '../calc/trend-input.ts';
import { percent } from './sentences.ts';

/** What a reader who cannot see the plot needs from it; the table below it holds the readings. */
export function trendInWords({ rows, fit, minimum }: TrendAssessment): string {
  const [first, last] = [rows[0], lastIn(rows)];
  if (first === undefined || last === undefined) return '';
  const ohms = rows.map(({ corrected }) => corrected);
  const [least, most] = [ohms.reduce((a, b) => Math.min(a, b)), ohms.reduce((a, b) => Math.max(a, b))];
  const change = fit && percentPerYear(fit.slope);
  return [
    `${rows.length} readings from ${formatDay(first.day)} to ${formatDay(last.day)}, corrected, on a logarithmic axis:`,
    `from ${formatRounded(least, 'Ω')} to ${formatRounded(most, 'Ω')}.`,
    minimum === undefined ? '' : `The minimum is ${formatRounded(minimum, 'Ω')}.`,
    change === undefined ? '' : `The line ${change < 0 ? 'falls' : 'rises'} by ${percent(Math.abs(change))} a year.`,
  ]
    .filter(Boolean)
    .join(' ');
}
