import { formatDay } from '../../kernel/reading/calendar-date.ts';
import { formatRounded } from '../../kernel/reading/format-reading.ts';
import { lastIn } from '../../kernel/reading/last-in.ts';
import { percent } from '../../kernel/words/sentences.ts';
import type { TrendAssessment } from './rule/input.ts';
import { percentPerYear } from './rule/line-fit.ts';

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
