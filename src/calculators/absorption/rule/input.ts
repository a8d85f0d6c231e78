import type { Assessment, FindingOf, Nothing, Step } from '../../../kernel/assessment/assessment.ts';
import type { FigurePayloads, FigureStepCode } from '../../../kernel/assessment/possible-figures.ts';
import type { ReminderPayloads } from '../../../kernel/assessment/test-reminders.ts';
import { limitValue } from '../../../kernel/limits.ts';
import type { Instrument, Interval } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';

const minute = limitValue('index-first-time');
const minutes = limitValue('index-last-time') / minute;

/** When the insulation tester is read, in s after its voltage was applied: 15 s, 30 s and each minute up to the tenth. */
export const absorptionTimes: readonly number[] = [
  limitValue('ratio-first-time') / 2,
  limitValue('ratio-first-time'),
  ...Array.from({ length: minutes }, (_, index) => (index + 1) * minute),
];

/** How findings and forms name the reading after so many seconds. */
export const absorptionField = (seconds: number): string => `t${seconds}`;

/** A is old insulation of cotton and paper; all later classes share one limit. */
type ThermalClass = 'A' | 'BFH';

/** Most servo motors are random-wound. */
type WindingKind = 'random-wound' | 'form-wound';

export interface AbsorptionInput {
  /** In Ω, by the seconds after the voltage was applied (those of `absorptionTimes`). */
  readings: Readonly<Record<number, Reading>>;
  windingKind: WindingKind;
  thermalClass: ThermalClass;
  /** Of the winding, in °C. */
  temperature: Reading;
  instrument?: Instrument;
}

/** The polarization index, and the least that passes. */
interface IndexJudged {
  index: Interval;
  wanted: number;
}

interface Seconds {
  fromSeconds: number;
  toSeconds: number;
}

export interface AbsorptionPayloads extends FigurePayloads, ReminderPayloads {
  'index-incomplete': Nothing;
  'index-meets': IndexJudged;
  'index-below': IndexJudged;
  'index-too-close': IndexJudged;
  'index-not-for-random-wound': { index: Interval };
  'index-says-nothing': { index: Interval; highOhms: number };
  'one-minute-low': { floorOhms: number };
  'index-dry': Nothing;
  /** `from` to `to`: the range of the published limits. */
  'ratio-stated': { ratio: Interval; from: number; to: number };
  'curve-falls': Seconds;
  'curve-uneven': { atSeconds: number };
  'curve-breaks': { atSeconds: number };
  'curve-flat': Seconds;
  'curve-rises': Nothing;
  'temperature-missing': Nothing;
  'temperature-stated': { celsius: number };
}

export type AbsorptionFinding = FindingOf<AbsorptionPayloads>;

export type AbsorptionStepCode =
  | FigureStepCode
  | 'read-to-ten-minutes'
  | 'judge-one-minute'
  | 'repeat-with-accuracy'
  | 'repeat-steady'
  | 'clean-dry-repeat'
  | 'compare-with-earlier-curve'
  | 'state-temperature'
  | 'discharge-winding';

export interface AbsorptionAssessment extends Assessment<AbsorptionFinding, Step<AbsorptionStepCode>> {
  /** R after 10 min over R after 1 min; absent without both. */
  index?: Interval;
  /** R after 60 s over R after 30 s; absent without both. */
  ratio?: Interval;
}
