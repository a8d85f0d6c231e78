import { lastIn } from '../../../kernel/reading/last-in.ts';
import { type FitPoint, heightAt, robustSlope } from './theil-sen.ts';

/** Mean days in a year. */
export const daysPerYear = 365.25;

/** A line through the logarithms (to ten) of the corrected resistances against time in years. */
export interface TrendFit {
  /** Decades a year; below zero the insulation falls. */
  slope: number;
  range: { lo: number; hi: number };
  /** Height of the line at the last day, as log10 of Ω: for the slope itself, its lowest and its highest value. */
  heights: { middle: number; lo: number; hi: number };
  firstDay: number;
  lastDay: number;
  /** How many readings it uses. */
  count: number;
}

/** When the line meets a minimum, in days from 1970-01-01; Infinity if never. */
export interface Meeting {
  earliest: number;
  latest: number;
}

interface DatedValue {
  day: number;
  /** In Ω, above zero. */
  corrected: number;
}

/**
 * Undefined with too few readings for a range of the slope, or if a point is not finite. `values` in order of their
 * days.
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
 * The range of days in which the line meets `minimum` (Ω): from the steepest fall in the range of the slope to the
 * least steep one. It starts from the line or from the last reading, whichever is lower for the earliest day and higher
 * for the latest, since the last reading may be more recent evidence than the line.
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

/** Height of the line at a day, in Ω. */
export function lineAt({ slope, heights, lastDay }: TrendFit, day: number): number {
  return 10 ** (heights.middle + (slope * (day - lastDay)) / daysPerYear);
}

/** The change per year in percent, for a slope in decades per year: -0.0458 is a loss of 10 %. */
export function percentPerYear(slope: number): number {
  return (10 ** slope - 1) * 100;
}
