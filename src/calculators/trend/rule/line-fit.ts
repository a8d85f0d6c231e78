import { lastIn } from '../../../kernel/reading/last-in.ts';
import { type FitPoint, heightAt, robustSlope } from './theil-sen.ts';

/** Days of a year on average. */
export const daysPerYear = 365.25;

/** A line through the logarithms (to ten) of the corrected resistances against time in years. */
export interface TrendFit {
  /** Decades a year; below zero the insulation falls. */
  slope: number;
  range: { lo: number; hi: number };
  /** Where the line stands at the last day, as log10 of Ω: for the slope itself, its lowest and its highest. */
  heights: { middle: number; lo: number; hi: number };
  firstDay: number;
  lastDay: number;
  /** How many readings it rests on. */
  count: number;
}

/** When the line meets a minimum, in days from 1970-01-01; Infinity where it never does. */
export interface Meeting {
  earliest: number;
  latest: number;
}

export interface DatedValue {
  day: number;
  /** In Ω, above zero. */
  corrected: number;
}

/**
 * Undefined where there are too few readings for a range of the slope, or a point is no number. `values` in the order of
 * their days.
 */
export function fitTrend(values: readonly DatedValue[]): TrendFit | undefined {
  const first = values[0];
  const last = lastIn(values);
  if (first === undefined || last === undefined) return undefined;
  // Years as x, with the last day as zero, so that heights are those of today.
  const points = values.map(({ day, corrected }): FitPoint => [(day - last.day) / daysPerYear, Math.log10(corrected)]);
  const line = robustSlope(points);
  if (line?.range === undefined) return undefined;
  const { slope, range } = line;
  const height = (one: number) => heightAt(points, one, 0);
  return {
    ...{ slope, range, firstDay: first.day, lastDay: last.day, count: values.length },
    heights: { middle: height(slope), lo: height(range.lo), hi: height(range.hi) },
  };
}

/**
 * The range of days in which the line meets `minimum` (Ω): from the steepest fall that the range of the slope holds to
 * the least steep one. It starts from the line or from the last reading, whichever is lower for the earliest day and
 * higher for the latest, since the last reading may already tell more than the line.
 */
export function meetingOf({ range, heights, lastDay }: TrendFit, lastValue: number, minimum: number): Meeting {
  const last = Math.log10(lastValue);
  return {
    earliest: lastDay + daysUntil(Math.min(heights.lo, last), range.lo, minimum),
    latest: lastDay + daysUntil(Math.max(heights.hi, last), range.hi, minimum),
  };
}

/** From a height in log10 of Ω down to the minimum in Ω. */
function daysUntil(height: number, slope: number, minimum: number): number {
  const above = height - Math.log10(minimum);
  if (above <= 0) return 0;
  return slope < 0 ? (above / -slope) * daysPerYear : Number.POSITIVE_INFINITY;
}

/** Where the line stands at a day, in Ω. */
export function lineAt({ slope, heights, lastDay }: TrendFit, day: number): number {
  return 10 ** (heights.middle + (slope * (day - lastDay)) / daysPerYear);
}

/** The change in a year in percent, for a slope in decades a year: -0.0458 is a loss of 10 %. */
export function percentPerYear(slope: number): number {
  return (10 ** slope - 1) * 100;
}
