import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { timeConstantBetween } from '../../../kernel/electrics/discharge-law.ts';
import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import { type Instrument, type Interval, intervalOf } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import type { DischargeFinding, DischargeInput, DischargePayloads } from './input.ts';

const finding = findingMaker<DischargePayloads>();

export interface KnownTimeConstant {
  timeConstant?: Interval;
  findings: DischargeFinding[];
}

/** A tolerance in percent: the stated one, else the usual one. */
function toleranceOf(stated: Reading, usual: LimitId): number {
  return stated.kind === 'value' ? stated.value : limitValue(usual);
}

/** The capacitance with its tolerance, in F; undefined if unknown. */
export function capacitanceOf({ capacitance, capacitanceTolerance }: DischargeInput): Interval | undefined {
  if (capacitance.kind !== 'value' || capacitance.value <= 0) return undefined;
  return intervalOf(capacitance, { percent: toleranceOf(capacitanceTolerance, 'capacitor-tolerance') });
}

/** The time constant from stated values, τ = R · C or as given. A stated one gets the tolerances of both parts. */
export function statedTimeConstant(input: DischargeInput): KnownTimeConstant {
  const { capacitance, bleeder, timeConstant } = input;
  const impossible = [capacitance, bleeder, timeConstant].some((r) => r.kind === 'value' && r.value <= 0);
  if (impossible) return { findings: [finding('value-impossible', 'undecided')] };
  const farads = toleranceOf(input.capacitanceTolerance, 'capacitor-tolerance');
  const ohms = toleranceOf(input.bleederTolerance, 'bleeder-tolerance');
  const ways: Interval[] = [];
  const c = capacitanceOf(input);
  if (c !== undefined && bleeder.kind !== 'missing') {
    const r = intervalOf(bleeder, { percent: ohms });
    ways.push({ lo: c.lo * r.lo, hi: c.hi * r.hi });
  }
  if (timeConstant.kind === 'value') {
    const [low, high] = [(1 - farads / 100) * (1 - ohms / 100), (1 + farads / 100) * (1 + ohms / 100)];
    ways.push({ lo: timeConstant.value * low, hi: timeConstant.value * high });
  }
  if (ways.length === 0) return { findings: [] };
  const usual = input.capacitanceTolerance.kind === 'missing' || input.bleederTolerance.kind === 'missing';
  const limits: LimitId[] = ['capacitor-tolerance', 'bleeder-tolerance'];
  const percent = { capacitancePercent: farads, bleederPercent: ohms };
  const findings = usual ? [finding('usual-tolerance', 'note', { limits, ...percent })] : [];
  return { timeConstant: hull(ways), findings };
}

/** From the smallest to the largest of several intervals. At least one. */
export function hull(intervals: readonly Interval[]): Interval {
  return { lo: Math.min(...intervals.map(({ lo }) => lo)), hi: Math.max(...intervals.map(({ hi }) => hi)) };
}

/** The interval of a reading: the stated accuracy of the meter, and never less than its last digit. */
export function shownVolts(reading: Reading, instrument: Instrument = {}): Interval {
  return intervalOf(reading, { ...instrument, counts: Math.max(1, instrument.counts ?? 0) });
}

/** The interval of the time constant from two voltmeter readings, or why they don't make a pair. */
export function measuredTimeConstant({ first, second, elapsed, instrument }: DischargeInput): KnownTimeConstant {
  const parts = [first, second, elapsed];
  if (parts.every(({ kind }) => kind === 'missing')) return { findings: [] };
  const readings = ['first', 'second', 'elapsed'];
  if (parts.some(({ kind }) => kind === 'missing')) {
    return { findings: [finding('pair-incomplete', 'undecided', { readings })] };
  }
  const [from, to, time] = [
    shownVolts(first, instrument),
    shownVolts(second, instrument),
    intervalOf(elapsed, { counts: 1 }),
  ];
  // A bus that nothing feeds can't rise, whatever time was noted.
  if (to.lo > from.hi) return { findings: [finding('voltage-rises', 'stop', { readings })] };
  if (elapsed.kind === 'value' && elapsed.value <= 0) {
    return { findings: [finding('times-equal', 'undecided', { readings })] };
  }
  const timeConstant = {
    lo: timeConstantBetween(from.hi, to.lo, time.lo),
    hi: timeConstantBetween(from.lo, to.hi, time.hi),
  };
  const shows = Number.isFinite(timeConstant.hi);
  const least = Number.isFinite(timeConstant.lo) && timeConstant.lo > 0 ? { atLeastSeconds: timeConstant.lo } : {};
  const findings = shows
    ? [finding('tail-slower', 'caution', { readings })]
    : [finding('no-fall-shown', 'undecided', { readings, ...least })];
  return { timeConstant, findings };
}
