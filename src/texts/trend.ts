import {
  daysPerYear,
  type Finding,
  formatDay,
  formatRounded,
  type TableProblem,
  type TrendCode,
  type TrendStepCode,
} from '../calc/index.ts';
import { figureFindings, figureSteps } from './figures.ts';
import { type FindingSentences, percent, type StepSentences } from './sentences.ts';
import { tableProblems } from './trend-rows.ts';

type Numbers = Finding['numbers'];

const ohms = (value: number | undefined) => formatRounded(value ?? 0, 'Ω');
const day = (value: number | undefined) => formatDay(value ?? 0);
const rows = (count = 0) => (count === 1 ? 'One row' : `${count} rows`);

const methodNames: Record<string, string> = {
  halving: 'the halving rule',
  thermosetting: 'the formulas for thermosetting insulation',
  table: 'the conversion table',
};

/** "a loss of 12 % a year", "a gain of 3 % a year". */
function change(value = 0): string {
  if (value === 0) return 'no change';
  const size = percent(Math.abs(value));
  return value <= 0 ? `a loss of ${size}` : `a gain of ${size}`;
}

/** "between 2027-03-01 and 2031-08-15", as far as the record reaches. */
function meeting({ earliest, latest, reach }: Numbers): string {
  if (earliest !== undefined && latest !== undefined) return `between ${day(earliest)} and ${day(latest)}`;
  return `on ${day(earliest)} at the earliest, or not before ${day(reach)}`;
}

function span({ years = 0, needed = 0 }: Numbers): string {
  const months = (value: number) => `${Math.round(value * 12)} months`;
  return `The record covers ${months(years)}; it takes at least ${months(needed)} to look as far ahead.`;
}

export const trendFindings: FindingSentences<TrendCode> = {
  ...figureFindings,
  'trend-table-problem': ({ names }) => tableProblems[names.problem as TableProblem],
  'trend-no-rows': () => 'There is no row that can be used: each needs a date, a reading and a winding temperature.',
  'trend-rows-kept-out': ({ numbers }) =>
    `${rows(numbers.count)} kept out: listed below with the reason, and part of nothing else here.`,
  'trend-newest-kept-out': () =>
    'A row that is kept out may be the newest. What the newest reading says counts most, so nothing is passed without it.',
  'trend-dates-ambiguous': ({ numbers }) =>
    `${rows(numbers.count)} with a date that can mean two days, such as 3/5/2021. Nothing is guessed.`,
  'trend-columns-unused': ({ names }) => `Columns that are not used: ${names.columns}.`,
  'trend-rated-voltage-missing': () => 'The minimum of an old winding depends on its rated voltage, which is missing.',
  'trend-last-below': ({ numbers }) =>
    `The newest reading, of ${day(numbers.day)}, is ${ohms(numbers.corrected)} when corrected: below the minimum of ${ohms(numbers.minimum)}.`,
  'trend-last-above': ({ numbers, names }) =>
    `The newest reading, of ${day(numbers.day)}, is ${names.kind === 'over' ? 'at least ' : ''}${ohms(numbers.corrected)} when corrected; the minimum is ${ohms(numbers.minimum)}.`,
  'trend-last-unknown': ({ numbers, names }) =>
    `The newest reading, of ${day(numbers.day)}, is only known to be ${names.kind === 'over' ? 'above' : 'below'} ${ohms(numbers.corrected)} when corrected. That does not tell on which side of ${ohms(numbers.minimum)} it is.`,
  'trend-methods-differ': ({ names }) =>
    `With ${(names.methods ?? '')
      .split(' ')
      .map((name) => methodNames[name] ?? name)
      .join(' and ')} the answer would be another. A verdict that hangs on the kind of correction is none.`,
  'trend-too-few': ({ numbers }) =>
    `${numbers.count === 1 ? 'One reading' : `${numbers.count} readings`} with a value: too few to tell a trend from scatter. Five are the least from which a range can be given.`,
  'trend-too-short': ({ numbers }) => `Too short to foretell anything. ${span(numbers)}`,
  'trend-meets-now': () =>
    'The line through the readings, or what the scatter leaves open, has reached the minimum already.',
  'trend-meets-within': ({ numbers }) =>
    `The minimum may be met before the next yearly reading: ${meeting(numbers)}. The range is what the scatter leaves open.`,
  'trend-meets-later': ({ numbers }) =>
    `If it goes on like this, the minimum is met ${meeting(numbers)}. The range is what the scatter leaves open.`,
  'trend-not-within': ({ numbers }) =>
    `The minimum is not met before ${day(numbers.reach)}, even by the steepest fall that the scatter leaves open. Further ahead than the record is long, nothing is foretold.`,
  'trend-change': ({ numbers }) =>
    `The line through ${numbers.count} readings: ${change(numbers.change)} a year. The scatter leaves open anything from ${change(numbers.lo)} to ${change(numbers.hi)}.`,
  'trend-direction-unknown': () => 'Whether it falls or rises can’t be told: the scatter allows both.',
  'trend-drop-open': ({ numbers }) =>
    `A sudden fall on ${day(numbers.day)}: below each of the readings before by a factor of more than ${numbers.factor}, and none has come back since. That is no ageing: it has a cause.`,
  'trend-drop-recovered': ({ numbers }) =>
    `${numbers.count === 1 ? 'A sudden fall' : `${numbers.count} sudden falls, the last one`} on ${day(numbers.day)}: below each of the readings before by a factor of more than ${numbers.factor}. Later readings came back. Moisture does that; so does a slip.`,
  'trend-over-range': ({ numbers }) =>
    `${rows(numbers.count)} over-range: a lower bound, drawn as an arrow. A bound is no value, so the line does without it.`,
  'trend-over-range-contradicts': ({ numbers }) =>
    `${numbers.above} of ${numbers.count} over-range rows show more than the readings after them, or than the line at its end. The line is made without them, so it does not tell how the insulation went.`,
  'trend-under-range': ({ numbers }) =>
    `${rows(numbers.count)} under-range, or zero: an upper bound, drawn as an arrow. A bound is no value, so the line does without it.`,
  'trend-holds-until': ({ numbers }) =>
    `This go holds until ${day(numbers.day)}, ${Math.round(((numbers.years ?? 0) * daysPerYear) / 30.4)} months after the last value. Later, it takes a new reading.`,
  'trend-go-expired': ({ numbers }) =>
    `The record gave a go until ${day(numbers.day)}. That day has passed: it says nothing about today.`,
  'trend-only-the-record': () =>
    'A trend is about ageing. After a trip the reading itself counts, against a stricter limit.',
};

export const trendSteps: StepSentences<TrendStepCode> = {
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
