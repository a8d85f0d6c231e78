import type { Step } from '../../kernel/assessment/assessment.ts';
import { formatDay } from '../../kernel/reading/calendar-date.ts';
import { inOhms } from '../../kernel/reading/format-reading.ts';
import { methodNames } from '../../kernel/words/correction-names.ts';
import { figureFindings, figureSteps } from '../../kernel/words/impossible-figures.ts';
import { type FindingSentences, percent, type StepSentences } from '../../kernel/words/sentences.ts';
import { tableProblems } from './row-words.ts';
import type { MeetsMinimum, TrendFinding, TrendStepCode } from './rule/input.ts';
import { daysPerYear } from './rule/line-fit.ts';

const rows = (count: number) => (count === 1 ? 'One row' : `${count} rows`);

/** "a loss of 12 % a year", "a gain of 3 % a year". */
function change(percentPerYear: number): string {
  if (percentPerYear === 0) return 'no change';
  const size = percent(Math.abs(percentPerYear));
  return percentPerYear < 0 ? `a loss of ${size}` : `a gain of ${size}`;
}

/** "between 2027-03-01 and 2031-08-15", as far as the record can predict. */
function meeting({ earliestDay, latestDay, reachDay }: MeetsMinimum): string {
  const beyond = `not before ${formatDay(reachDay)}`;
  if (earliestDay === undefined) return beyond;
  const earliest = formatDay(earliestDay);
  return latestDay === undefined
    ? `on ${earliest} at the earliest, or ${beyond}`
    : `between ${earliest} and ${formatDay(latestDay)}`;
}

const inMonths = (years: number) => `${Math.round(years * 12)} months`;

export const trendFindings: FindingSentences<TrendFinding> = {
  ...figureFindings,
  'trend-table-problem': ({ problem }) => tableProblems[problem],
  'trend-no-rows': () => 'There is no row that can be used: each needs a date, a reading and a winding temperature.',
  'trend-rows-kept-out': ({ count }) =>
    `${rows(count)} kept out: listed below with the reason, and part of nothing else here.`,
  'trend-newest-kept-out': () =>
    'A row that is kept out may be the newest. What the newest reading says counts most, so nothing is passed without it.',
  'trend-dates-ambiguous': ({ count }) =>
    `${rows(count)} with a date that can mean two days, such as 3/5/2021. Nothing is guessed.`,
  'trend-columns-unused': ({ columns }) => `Columns that are not used: ${columns.join(', ')}.`,
  'trend-rated-voltage-missing': () => 'The minimum of an old winding depends on its rated voltage, which is missing.',
  'trend-last-below': ({ day, correctedOhms, minimumOhms }) =>
    `The newest reading, of ${formatDay(day)}, is ${inOhms(correctedOhms)} when corrected: below the minimum of ${inOhms(minimumOhms)}.`,
  'trend-last-above': ({ day, kind, correctedOhms, minimumOhms }) =>
    `The newest reading, of ${formatDay(day)}, is ${kind === 'over' ? 'at least ' : ''}${inOhms(correctedOhms)} when corrected; the minimum is ${inOhms(minimumOhms)}.`,
  'trend-last-unknown': ({ day, kind, correctedOhms, minimumOhms }) =>
    `The newest reading, of ${formatDay(day)}, is only known to be ${kind === 'over' ? 'above' : 'below'} ${inOhms(correctedOhms)} when corrected. That does not tell on which side of ${inOhms(minimumOhms)} it is.`,
  'trend-methods-differ': ({ methods }) =>
    `With ${methods.map((method) => methodNames[method]).join(' and ')} the answer would be another. The verdict depends on the kind of correction, so it is undecided.`,
  'trend-too-few': ({ count }) =>
    `${count === 1 ? 'One reading' : `${count} readings`} with a value: too few to tell a trend from scatter. Five are the least from which a range can be given.`,
  'trend-too-short': ({ years, neededYears }) =>
    `Too short to foretell anything. The record covers ${inMonths(years)}; it takes at least ${inMonths(neededYears)} to look as far ahead.`,
  'trend-meets-now': () =>
    'The line through the readings, or what the scatter leaves open, has reached the minimum already.',
  'trend-meets-within': (finding) =>
    `The minimum may be met before the next yearly reading: ${meeting(finding)}. The range is what the scatter leaves open.`,
  'trend-meets-later': (finding) =>
    `If it goes on like this, the minimum is met ${meeting(finding)}. The range is what the scatter leaves open.`,
  'trend-not-within': ({ reachDay }) =>
    `The minimum is not met before ${formatDay(reachDay)}, even by the steepest fall that the scatter leaves open. Further ahead than the record is long, nothing is foretold.`,
  'trend-change': ({ count, changePercent, leastPercent, mostPercent }) =>
    `The line through ${count} readings: ${change(changePercent)} a year. The scatter leaves open anything from ${change(leastPercent)} to ${change(mostPercent)}.`,
  'trend-direction-unknown': () => 'Whether it falls or rises can’t be told: the scatter allows both.',
  'trend-drop-open': ({ day, factor }) =>
    `A sudden fall on ${formatDay(day)}: below each of the readings before by a factor of more than ${factor}, and none has come back since. That is no ageing: it has a cause.`,
  'trend-drop-recovered': ({ count, day, factor }) =>
    `${count === 1 ? 'A sudden fall' : `${count} sudden falls, the last one`} on ${formatDay(day)}: below each of the readings before by a factor of more than ${factor}. Later readings came back. Moisture does that; so does a slip.`,
  'trend-over-range': ({ count }) =>
    `${rows(count)} over-range: a lower bound, drawn as an arrow. A bound is no value, so the line does without it.`,
  'trend-over-range-contradicts': ({ count, above }) =>
    `${above} of ${count} over-range rows show more than the readings after them, or than the line at its end. The line is made without them, so it does not tell how the insulation went.`,
  'trend-under-range': ({ count }) =>
    `${rows(count)} under-range, or zero: an upper bound, drawn as an arrow. A bound is no value, so the line does without it.`,
  'trend-holds-until': ({ day, years }) =>
    `This go holds until ${formatDay(day)}, ${Math.round((years * daysPerYear) / 30.4)} months after the last value. Later, it takes a new reading.`,
  'trend-go-expired': ({ day }) =>
    `The record gave a go until ${formatDay(day)}. That day has passed: it says nothing about today.`,
  'trend-only-the-record': () =>
    'A trend is about ageing. After a trip the reading itself counts, against a stricter limit.',
};

export const trendSteps: StepSentences<Step<TrendStepCode>> = {
  ...figureSteps,
  'mend-table': () => 'Correct what is named above, in the table that you copied from, and put it in again.',
  'mend-newest-row': () => 'Correct the newest row. If its temperature was not noted, measure again with it.',
  'state-date-order': () => 'Say whether the day or the month comes first, in the question below the rows.',
  'state-trend-voltage': () => 'Type the rated voltage of the machine.',
  'type-readings': () => 'Type, paste or open at least one row with a date, a reading and a winding temperature.',
  'measure-again-soon': () =>
    'Measure again within weeks, at the same temperature and test voltage, and find out what the insulation loses by: moisture, dirt, heat.',
  'take-a-reading-now': () =>
    'Measure now, with the test voltage and after the time of the readings before, and add the reading to the record.',
  'measure-yearly': () =>
    'Go on measuring once a year, with the same test voltage, after the same time, at about the same temperature: what differs between readings is taken for scatter.',
  'measure-at-one-temperature': () =>
    'Measure once more with the winding near the temperature of the limit: then the correction hardly matters.',
  'find-cause-of-drop': () =>
    'Find the cause of the fall before you trust the motor: dry and clean it, take the cable off, and measure again.',
  'note-range-of-over': () =>
    'Measure with a tester of a higher range, or note its highest reading, so that the record has values.',
  'judge-reading-itself': () => 'Judge the newest reading by itself, with the calculator for insulation.',
  'separate-and-repair': () =>
    'Separate cable and motor, to know which of the two is below the minimum. Dry, clean, repair or replace that one.',
};
