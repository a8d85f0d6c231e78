import type { Assessment } from './assessment.ts';
import type { Instrument, Interval } from './interval.ts';
import { limitValue } from './limits.ts';
import type { FigureCode, FigureStepCode } from './possible-figures.ts';
import type { Reading } from './reading.ts';
import type { ReminderCode } from './test-reminders.ts';

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
export type ThermalClass = 'A' | 'BFH';

/** Most servo motors are random-wound. */
export type WindingKind = 'random-wound' | 'form-wound';

export interface AbsorptionInput {
  /** In Ω, by the seconds after the voltage was applied (those of `absorptionTimes`). */
  readings: Readonly<Record<number, Reading>>;
  windingKind: WindingKind;
  thermalClass: ThermalClass;
  /** Of the winding, in °C. */
  temperature: Reading;
  instrument?: Instrument;
}

export type AbsorptionCode =
  | FigureCode
  | 'index-incomplete'
  | 'index-meets'
  | 'index-below'
  | 'index-too-close'
  | 'index-not-for-random-wound'
  | 'index-says-nothing'
  | 'one-minute-low'
  | 'index-dry'
  | 'ratio-stated'
  | 'curve-falls'
  | 'curve-uneven'
  | 'curve-breaks'
  | 'curve-flat'
  | 'curve-rises'
  | 'temperature-missing'
  | 'temperature-stated'
  | ReminderCode;

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

export interface AbsorptionAssessment extends Assessment<AbsorptionCode, AbsorptionStepCode> {
  /** R after 10 min over R after 1 min; absent without both. */
  index?: Interval;
  /** R after 60 s over R after 30 s; absent without both. */
  ratio?: Interval;
}
