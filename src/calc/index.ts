export * from './absorption.ts';
export * from './absorption-input.ts';
export { afterTripLeakage, shownAfterTrip } from './after-trip-leakage.ts';
export * from './assessment.ts';
export * from './bridge.ts';
export * from './bridge-diode.ts';
export * from './cable-insulation.ts';
export * from './cable-length.ts';
export * from './cable-length-input.ts';
export { type DateOrder, formatDay, parseDate } from './calendar-date.ts';
export { type Conductor, conductors, temperatureFactor } from './conductor-temperature.ts';
export { dewPoint } from './dew-point.ts';
export type { DiodeRail } from './diode-rail.ts';
export * from './discharge.ts';
export * from './discharge-input.ts';
export * from './discharge-law.ts';
export type { Charged, Wait } from './discharge-wait.ts';
export { type BusFinding, judgeDischarge } from './discharged.ts';
export { clockFace, formatQuantity, formatReading, formatRounded, formatSeconds } from './format-reading.ts';
export { assessInsulation } from './insulation.ts';
export * from './insulation-input.ts';
export { limitCurve } from './insulation-target.ts';
export { type Instrument, type Interval, intervalOf } from './interval.ts';
export { assessIsolation } from './isolation.ts';
export * from './isolation-input.ts';
export type { StageName } from './isolation-stage.ts';
export { type LimitId, limit, limitConstant, limitIds, limitPoints, limitRange, limitValue } from './limits.ts';
export type { MachineClass } from './machine-minimum.ts';
export { parallel } from './parallel-law.ts';
export { type ParseResult, parseReading } from './parse-reading.ts';
export { mapPhases, type Phase, type Phases, phases } from './phases.ts';
export type { FigureFinding, FigureStepCode } from './possible-figures.ts';
export type { Quantity } from './quantity.ts';
export * from './reading.ts';
export type { ReadingError, ReadingErrorCode } from './reading-error.ts';
export { deviationFromMean, pairwiseSpread } from './spread.ts';
export * from './switch-position.ts';
export {
  type CorrectionMethod,
  correctionFactor,
  correctionMethods,
  interpolate,
  validityOf,
} from './temperature-correction.ts';
export type { ReminderFinding } from './test-reminders.ts';
export type { TestVoltageFinding } from './test-voltage.ts';
export * from './test-voltage-choice.ts';
export * from './test-voltage-input.ts';
export { heightAt, robustSlope } from './theil-sen.ts';
export { assessTrend } from './trend.ts';
export { daysPerYear, fitTrend, lineAt, meetingOf, percentPerYear, type TrendFit } from './trend-fit.ts';
export * from './trend-input.ts';
export { readTrendTable } from './trend-table.ts';
export { isDash } from './typed-text.ts';
export * from './winding.ts';
export { deviationInterval } from './winding-balance.ts';
export type { LeadHandling } from './winding-leads.ts';
export { deltaPhases, type Pairs, starPhases, type WindingPair, windingPairs } from './winding-phases.ts';
export type { CorrectTo } from './winding-reference.ts';
export type { Connection } from './winding-suspect.ts';
