import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { type Phase, type Phases, phases } from '../../../kernel/electrics/phases.ts';
import { type LimitId, limitRange, limitValue } from '../../../kernel/limits.ts';
import { type Instrument, type Interval, intervalOf } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import { deviationFromMean, pairwiseSpread, spreadInterval, within } from '../../../kernel/reading/spread.ts';
import type { Differences, RailFinding, RailPayloads } from './rail-findings.ts';
import type { Rail, SwitchPosition } from './switch-position.ts';

const finding = findingMaker<RailPayloads>();

interface RailReading {
  phase: Phase;
  reading: Reading;
  interval: Interval;
  /** Over-range without a noted range. */
  rangeUnknown: boolean;
}

const typicalOf: Record<Rail, LimitId> = { plus: 'bridge-dc-plus-typical', minus: 'bridge-dc-minus-typical' };

/**
 * Judges the three readings of one rail by themselves, in ohms: no short, and agreement within `tolerancePercent`
 * (pairwise, against the smaller). Names the suspect positions as `plusU` … `minusW`. `carried` are the terminals with
 * a short on the other rail: what is read at them here is the resistors of the bus, not their own switches, so they are
 * neither suspect nor compared with.
 */
export function judgeRail(
  rail: Rail,
  readings: Phases<Reading>,
  tolerancePercent: number,
  instrument: Instrument,
  carried: readonly Phase[] = [],
): RailFinding[] {
  const at = (list: readonly { phase: Phase }[]) => list.map(({ phase }): SwitchPosition => `${rail}${phase}`);
  const present = phases
    .filter((phase) => readings[phase].kind !== 'missing')
    .map((phase) => railReading(phase, readings[phase], instrument));
  const found: RailFinding[] = [];
  const missing = phases.filter((phase) => readings[phase].kind === 'missing').map((phase) => ({ phase }));
  if (missing.length > 0) found.push(finding('rail-incomplete', 'undecided', { readings: at(missing), rail }));

  const shorted = present.filter(isShort);
  const sound = present.filter((one) => !shorted.includes(one));
  if (shorted.length > 0) {
    const limits: LimitId[] = ['bridge-short'];
    // The figure, if there was one: 3.8 Ω says more than "below the limit".
    const values = shorted.flatMap(({ reading }) => (reading.kind === 'value' ? [reading.value] : []));
    const lowest = values.length > 0 ? { lowestOhms: Math.min(...values) } : {};
    const parts = { readings: at(shorted), limits, rail, suspects: at(shorted), ...lowest };
    found.push(finding('rail-short', 'fail', parts));
    if (shorted.length === 3) found.push(finding('rail-all-short', 'caution', { readings: at(shorted), rail }));
  }
  const possible = sound.filter(
    ({ interval, reading }) => interval.lo <= limitValue('bridge-short') && reading.kind !== 'over',
  );
  if (possible.length > 0) {
    const limits: LimitId[] = ['bridge-short'];
    found.push(finding('rail-short-possible', 'undecided', { readings: at(possible), limits, rail }));
  }
  // Under-range without a figure can't be compared; the finding above already says that it may be a short.
  const comparable = sound.filter(({ interval, reading }) => reading.kind !== 'under' || Number.isFinite(interval.hi));
  return [...found, ...judgeAgreement(rail, comparable, tolerancePercent, carried)];
}

/** The terminals of a rail that read a short. */
export function shortedTerminals(readings: Phases<Reading>, instrument: Instrument): Phase[] {
  return phases.filter(
    (phase) => readings[phase].kind !== 'missing' && isShort(railReading(phase, readings[phase], instrument)),
  );
}

function notNotedAt(rail: Rail, position: SwitchPosition): RailFinding {
  return finding('rail-range-not-noted', 'caution', { readings: [position], rail, position });
}

function isShort({ interval }: Pick<RailReading, 'interval'>): boolean {
  return interval.hi <= limitValue('bridge-short');
}

function railReading(phase: Phase, reading: Reading, instrument: Instrument): RailReading {
  const rangeUnknown = reading.kind === 'over' && reading.atLeast === undefined && instrument.upperLimit === undefined;
  return { phase, reading, interval: intervalOf(reading, instrument), rangeUnknown };
}

function judgeAgreement(rail: Rail, list: RailReading[], tolerance: number, carried: readonly Phase[]): RailFinding[] {
  if (list.length < 2) return [];
  const readings = list.map(({ phase }): SwitchPosition => `${rail}${phase}`);
  const limits: LimitId[] = ['bridge-tolerance'];
  const open = list.filter(({ interval }) => interval.hi === Number.POSITIVE_INFINITY);
  const unnoted = open.filter(({ rangeUnknown }) => rangeUnknown);
  const notNoted = unnoted.map((one) => notNotedAt(rail, `${rail}${one.phase}`));
  if (open.length === list.length)
    return list.length === 3 ? [...judgeAllOpen(rail, list), ...notNoted.slice(0, 1)] : [];

  // Beside a finite reading, an over-range without a noted range counts as open, which it usually is.
  const intervals = list.map(({ interval, rangeUnknown }) =>
    rangeUnknown ? { lo: Number.POSITIVE_INFINITY, hi: Number.POSITIVE_INFINITY } : interval,
  );
  const spread = spreadInterval(intervals);
  const differences = shownSpread(list);
  if (!within(spread.lo, tolerance)) {
    const isOwn = (index: number) => !carried.some((phase) => phase === list[index]?.phase);
    const own = list.map((_, index) => index).filter(isOwn);
    const odd = oddOnesOut(own, intervals, tolerance);
    const parts = { readings, limits, rail };
    const there = list.flatMap(({ phase }) => (carried.includes(phase) ? [phase] : []));
    const found: RailFinding =
      odd.length > 0
        ? finding('rail-unbalanced', 'fail', {
            ...parts,
            suspects: odd.flatMap((index) => readings[index] ?? []),
            tolerancePercent: tolerance,
            ...(differences && { differences }),
          })
        : finding('rail-unbalanced-by-short', 'caution', { ...parts, shorted: there });
    return [found, ...notNoted.slice(0, 1)];
  }
  if (list.length < 3) return [];
  const parts = { readings, limits, rail, tolerancePercent: tolerance };
  if (within(spread.hi, tolerance) && differences !== undefined) {
    return [finding('rail-balanced', 'pass', { ...parts, differences }), ...judgeSize(rail, list)];
  }
  if (open.length > 0) return [finding('rail-range-too-low', 'undecided', { readings, limits, rail })];
  const range = { leastPercent: Math.max(0, spread.lo), mostPercent: spread.hi };
  return [finding('rail-too-close', 'undecided', { ...parts, ...(Number.isFinite(spread.hi) && { range }) })];
}

/**
 * All three over-range: balanced and open, if the range could have shown a usual reading. A figure above the meter's
 * own stated limit is a contradiction, not an open circuit.
 */
function judgeAllOpen(rail: Rail, list: RailReading[]): RailFinding[] {
  const readings = list.map(({ phase }) => `${rail}${phase}`);
  const limits: LimitId[] = ['bridge-open-from'];
  const from = limitValue('bridge-open-from');
  const tooLow = list.some(
    ({ interval, reading, rangeUnknown }) => reading.kind === 'value' || (!rangeUnknown && interval.lo < from),
  );
  if (tooLow) return [finding('rail-range-too-low', 'undecided', { readings, limits, rail })];
  return [finding('rail-open', 'pass', { readings, limits, rail })];
}

/** Balanced readings that are lower than usual are no fault by themselves, but pass only with a caution. */
function judgeSize(rail: Rail, list: RailReading[]): RailFinding[] {
  const { from } = limitRange(typicalOf[rail]);
  if (list.every(({ interval }) => interval.lo >= from)) return [];
  const readings = list.map(({ phase }) => `${rail}${phase}`);
  const usual = typicalOf[rail];
  return [finding('rail-lower-than-usual', 'caution', { readings, limits: [usual], rail, usual })];
}

/** Undefined if a reading has no figure or is zero. */
function shownSpread(list: RailReading[]): Differences | undefined {
  const values = list.flatMap(({ reading }) => (reading.kind === 'value' ? [reading.value] : []));
  if (values.length < list.length || Math.min(...values) === 0) return undefined;
  return { spreadPercent: pairwiseSpread(values), deviationPercent: deviationFromMean(values) };
}

/**
 * The readings of `own` that disagree with the most others: the odd one out, or all if no two agree. Empty if all
 * agree.
 */
function oddOnesOut(own: readonly number[], intervals: readonly Interval[], tolerance: number): number[] {
  const at = (index: number) => intervals[index] ?? { lo: 0, hi: Number.POSITIVE_INFINITY };
  const disagreements = own.map(
    (one) => own.filter((other) => !within(spreadInterval([at(one), at(other)]).lo, tolerance)).length,
  );
  const most = Math.max(0, ...disagreements);
  return most === 0 ? [] : own.filter((_, index) => disagreements[index] === most);
}
