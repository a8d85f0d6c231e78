import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import type { Phase } from '../../../kernel/electrics/phases.ts';
import { type LimitId, limitRange, limitValue } from '../../../kernel/limits.ts';
import type { Instrument, Interval } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import { deviationFromMean, pairwiseSpread, spreadInterval, within } from '../../../kernel/reading/spread.ts';
import type { Differences, RailFinding, RailPayloads } from './rail-findings.ts';
import { counted, disagree, isBelow, isTaken, type RailReading, railReading } from './rail-reading.ts';
import type { Rail, SwitchPosition } from './switch-position.ts';

const finding = findingMaker<RailPayloads>();

export interface AgreementContext {
  tolerancePercent: number;
  instrument: Instrument;
  carried: readonly Phase[];
  /** U with the leads exchanged, in Ω. */
  exchanged: Reading;
}

const typicalOf: Record<Rail, LimitId> = { plus: 'bridge-dc-plus-typical', minus: 'bridge-dc-minus-typical' };

/** Compares the readings of a rail that are no shorts, in ohms, with each other. */
export function judgeAgreement(rail: Rail, list: RailReading[], context: AgreementContext): RailFinding[] {
  if (list.length < 2) return [];
  const { tolerancePercent: tolerance, carried } = context;
  const readings = list.map(({ phase }): SwitchPosition => `${rail}${phase}`);
  const limits: LimitId[] = ['bridge-tolerance'];
  const open = list.filter(({ interval }) => interval.hi === Number.POSITIVE_INFINITY);
  const notNoted = open
    .filter(({ rangeUnknown }) => rangeUnknown)
    .map(({ phase }): SwitchPosition => `${rail}${phase}`)
    .map((position) => finding('rail-range-not-noted', 'caution', { readings: [position], rail, position }));
  if (open.length === list.length)
    return list.length === 3 ? [...judgeAllOpen(rail, list), ...notNoted.slice(0, 1)] : [];

  const spread = spreadInterval(list.map(counted));
  if (!within(spread.lo, tolerance)) {
    const own = list.filter(({ phase }) => !carried.includes(phase));
    const shorted = list.flatMap(({ phase }) => (carried.includes(phase) ? [phase] : []));
    const found = judgeOdd(rail, own, list, tolerance);
    const byShort = () => finding('rail-unbalanced-by-short', 'caution', { readings, limits, rail, shorted });
    return [found ?? byShort(), ...notNoted.slice(0, 1)];
  }
  if (list.length < 3) return [];
  const parts = { readings, limits, rail, tolerancePercent: tolerance };
  const differences = shownSpread(list);
  if (within(spread.hi, tolerance) && differences !== undefined)
    return [finding('rail-balanced', 'pass', { ...parts, differences }), ...judgeSize(rail, list, context)];
  if (open.length > 0) return [finding('rail-range-too-low', 'undecided', { readings, limits, rail })];
  const range = { leastPercent: Math.max(0, spread.lo), mostPercent: spread.hi };
  return [finding('rail-too-close', 'undecided', { ...parts, ...(Number.isFinite(spread.hi) && { range }) })];
}

/** Undefined if the readings of `own` agree. */
function judgeOdd(rail: Rail, own: RailReading[], list: RailReading[], tolerance: number): RailFinding | undefined {
  const at = (some: readonly RailReading[]) => some.map(({ phase }): SwitchPosition => `${rail}${phase}`);
  const odd = oddOnesOut(own, tolerance);
  if (odd.length === 0) return undefined;
  const clearly = limitValue('bridge-clearly-off');
  const regular = own.filter((one) => !odd.includes(one));
  const high = odd.every((one) => regular.some((other) => counted(one).lo > counted(other).hi));
  const differences = shownSpread(list);
  const parts = { readings: at(list), rail, tolerancePercent: tolerance, high, ...(differences && { differences }) };
  if (own.every((one) => own.every((other) => !disagree(counted(one), counted(other), clearly))))
    return finding('rail-uneven', 'undecided', {
      ...parts,
      limits: ['bridge-tolerance', 'bridge-clearly-off'],
      odd: at(odd),
    });
  const limits: LimitId[] = ['bridge-tolerance', 'bridge-clearly-off', 'bridge-switch-leak'];
  const leaks = own.length < 3 ? [] : odd.filter((one) => isLeak(counted(one), intervalsBeside(one, own)));
  const suspects = at(leaks.length > 0 ? leaks : odd);
  return finding('rail-unbalanced', 'fail', { ...parts, limits, suspects, leaks: at(leaks) });
}

const intervalsBeside = (one: RailReading, own: readonly RailReading[]) =>
  own.filter((other) => other !== one).map(counted);

/** Clearly below each of the others, and lower than a resistor of the drive at a single terminal can be. */
export function isLeak(one: Interval, others: readonly Interval[]): boolean {
  const clearly = limitValue('bridge-clearly-off');
  return one.hi <= limitValue('bridge-switch-leak') && others.every((other) => isBelow(one, other, clearly));
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

/**
 * Balanced, but lower than usual. That can be the model, or three diodes that conduct and hide a leak beside them. The
 * way that reads more is the one that blocks.
 */
function judgeSize(rail: Rail, list: RailReading[], { exchanged, instrument, tolerancePercent }: AgreementContext) {
  const { from } = limitRange(typicalOf[rail]);
  if (list.every(({ interval }) => interval.lo >= from)) return [];
  const usual = typicalOf[rail];
  const readings = list.map(({ phase }) => `${rail}${phase}`);
  const parts = { readings, limits: [usual], rail };
  const both = { ...parts, readings: [...readings, `${rail}Exchanged`] };
  const other = counted(railReading('U', exchanged, instrument));
  if (isTaken(exchanged) && list.some(({ interval }) => isBelow(interval, other, tolerancePercent)))
    return [finding('rail-read-forward', 'undecided', both)];
  const lowest = Math.min(...list.map(({ interval }) => interval.lo));
  const blocks = isTaken(exchanged) && other.hi <= lowest * (1 + tolerancePercent / 100);
  return [finding('rail-lower-than-usual', blocks ? 'caution' : 'undecided', { ...parts, usual })];
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
function oddOnesOut(own: readonly RailReading[], tolerance: number): RailReading[] {
  const disagreements = own.map(
    (one) => own.filter((other) => disagree(counted(one), counted(other), tolerance)).length,
  );
  const most = Math.max(0, ...disagreements);
  return most === 0 ? [] : own.filter((_, index) => disagreements[index] === most);
}
