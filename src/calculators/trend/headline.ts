import { formatDay } from '../../kernel/reading/calendar-date.ts';
import { inOhms } from '../../kernel/reading/format-reading.ts';
import { figureHeadline, type HeadlineWords, headlineFrom } from '../../kernel/words/headlines.ts';
import type { TrendAssessment, TrendFinding } from './rule/input.ts';

const words: HeadlineWords<TrendFinding> = {
  found: {
    ...figureHeadline,
    'trend-last-below': ({ correctedOhms, minimumOhms }) =>
      `the newest reading, ${inOhms(correctedOhms)} corrected, is below ${inOhms(minimumOhms)}`,
    'trend-table-problem': () => 'the table can’t be read',
    'trend-drop-open': ({ day }) => `a sudden fall on ${formatDay(day)}: it has a cause`,
    'trend-go-expired': ({ day }) => `the go ended on ${formatDay(day)}: measure now`,
    'trend-meets-now': () => 'the line may have reached the minimum already',
    'trend-meets-within': () => 'the minimum may be met before the next yearly reading',
    'trend-newest-kept-out': () => 'a row that can’t be used may be the newest',
    'trend-dates-ambiguous': () => 'a date can mean two days',
    'trend-last-unknown': () => 'the newest reading is only a bound',
    'trend-methods-differ': () => 'the kind of correction decides',
    'trend-over-range-contradicts': () => 'over-range rows contradict the line',
    'trend-under-range': () => 'a reading is only an upper bound',
    'trend-too-short': () => 'the record is too short to foretell anything',
    'trend-too-few': () => 'too few readings to tell a trend from scatter',
  },
  missing: {
    'trend-no-rows': () => 'a row with date, reading and winding temperature',
    'trend-rated-voltage-missing': () => 'the rated voltage',
  },
};

/** The verdict's reason in one line. A go is a matter of the record and ends with it. */
export function trendHeadline(assessment: TrendAssessment): string {
  const holds = assessment.findings.find(({ code }) => code === 'trend-holds-until');
  const until = holds?.code === 'trend-holds-until' ? `, until ${formatDay(holds.day)}` : '';
  return headlineFrom(assessment, words, `above the minimum, and the line stays above it${until}`);
}
