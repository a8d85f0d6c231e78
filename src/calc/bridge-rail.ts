import { type Finding, finding } from './assessment.ts';
import { type Instrument, type Interval, intervalOf } from './interval.ts';
import { type LimitId, limitRange, limitValue } from './limits.ts';
import { type Phase, type Phases, phases } from './phases.ts';
import type { Reading } from './reading.ts';
import { deviationFromMean, pairwiseSpread, spreadInterval, within } from './spread.ts';

export type RailCode =
  | 'rail-incomplete'
  | 'rail-short'
  | 'rail-all-short'
  | 'rail-short-possible'
  | 'rail-unbalanced'
  | 'rail-unbalanced-by-short'
  | 'rail-balanced'
  | 'rail-open'
  | 'rail-range-too-low'
  | 'rail-range-not-noted'
  | 'rail-too-close'
  | 'rail-lower-than-usual';

/** DC+ holds the three upper switches, DC− the three lower ones. */
export type Rail = 'plus' | 'minus';

interface RailReading {
  phase: Phase;
  reading: Reading;
  interval: Interval;
  /** Over-range, and nothing tells of which range. */
  rangeUnknown: boolean;
}

const typicalOf: Record<Rail, LimitId> = { plus: 'bridge-dc-plus-typical', minus: 'bridge-dc-minus-typical' };

/**
 * Judges the three readings of one rail by themselves, in ohms: no short, and agreement within
 * `tolerancePercent` (pairwise, against the smaller). Names the suspect positions as `plusU` … `minusW`.
 * `carried` are the terminals with a short on the other rail: what is read at them here comes through the resistors of
 * the bus and tells nothing of their own switches, so they are neither suspects nor a measure for the others.
 */
export function judgeRail(
  rail: Rail,
  readings: Phases<Reading>,
  tolerancePercent: number,
  instrument: Instrument,
  carried: readonly Phase[] = [],
): Finding<RailCode>[] {
  const name = (list: readonly { phase: Phase }[]) => list.map(({ phase }) => `${rail}${phase}`);
  const names = { rail };
  const present = phases
    .filter((phase) => readings[phase].kind !== 'missing')
    .map((phase) => railReading(phase, readings[phase], instrument));
  const found: Finding<RailCode>[] = [];
  const missing = phases.filter((phase) => readings[phase].kind === 'missing').map((phase) => ({ phase }));
  if (missing.length > 0) found.push(finding('rail-incomplete', 'undecided', { readings: name(missing), names }));

  const shorted = present.filter(isShort);
  const sound = present.filter((one) => !shorted.includes(one));
  if (shorted.length > 0) {
    const limits: LimitId[] = ['bridge-short'];
    const suspects = name(shorted).join(' ');
    // What was read, where it was a figure: 3.8 Ω says more than "below the limit".
    const values = shorted.flatMap(({ reading }) => (reading.kind === 'value' ? [reading.value] : []));
    const numbers = values.length > 0 ? { lowest: Math.min(...values) } : {};
    const parts = { readings: name(shorted), limits, numbers, names: { ...names, suspects } };
    found.push(finding('rail-short', 'fail', parts));
    if (shorted.length === 3) found.push(finding('rail-all-short', 'caution', { readings: name(shorted), names }));
  }
  const possible = sound.filter(
    ({ interval, reading }) => interval.lo <= limitValue('bridge-short') && reading.kind !== 'over',
  );
  if (possible.length > 0) {
    const limits: LimitId[] = ['bridge-short'];
    found.push(finding('rail-short-possible', 'undecided', { readings: name(possible), limits, names }));
  }
  // Under-range without a figure tells nothing of agreement; that it may be a short has just been said.
  const comparable = sound.filter(({ interval, reading }) => reading.kind !== 'under' || Number.isFinite(interval.hi));
  return [...found, ...judgeAgreement(rail, comparable, tolerancePercent, carried)];
}

/** The terminals of a rail that read a short. */
export function shortedTerminals(readings: Phases<Reading>, instrument: Instrument): Phase[] {
  return phases.filter(
    (phase) => readings[phase].kind !== 'missing' && isShort(railReading(phase, readings[phase], instrument)),
  );
}

function isShort({ interval }: Pick<RailReading, 'interval'>): boolean {
  return interval.hi <= limitValue('bridge-short');
}

function railReading(phase: Phase, reading: Reading, instrument: Instrument): RailReading {
  const rangeUnknown = reading.kind === 'over' && reading.atLeast === undefined && instrument.upperLimit === undefined;
  return { phase, reading, interval: intervalOf(reading, instrument), rangeUnknown };
}

function judgeAgreement(
  rail: Rail,
  list: RailReading[],
  tolerance: number,
  carried: readonly Phase[],
): Finding<RailCode>[] {
  if (list.length < 2) return [];
  const readings = list.map(({ phase }) => `${rail}${phase}`);
  const limits: LimitId[] = ['bridge-tolerance'];
  const open = list.filter(({ interval }) => interval.hi === Number.POSITIVE_INFINITY);
  const unnoted = open.filter(({ rangeUnknown }) => rangeUnknown);
  const notNoted = unnoted.map((one) =>
    finding<RailCode>('rail-range-not-noted', 'caution', { readings: [`${rail}${one.phase}`], names: { rail } }),
  );
  if (open.length === list.length)
    return list.length === 3 ? [...judgeAllOpen(rail, list), ...notNoted.slice(0, 1)] : [];

  // Beside a finite reading, an over-range without a noted range is taken for what it usually is: open.
  const intervals = list.map(({ interval, rangeUnknown }) =>
    rangeUnknown ? { lo: Number.POSITIVE_INFINITY, hi: Number.POSITIVE_INFINITY } : interval,
  );
  const spread = spreadInterval(intervals);
  const numbers = { tolerance, ...shownSpread(list) };
  if (!within(spread.lo, tolerance)) {
    const isOwn = (index: number) => !carried.some((phase) => phase === list[index]?.phase);
    const own = list.map((_, index) => index).filter(isOwn);
    const odd = oddOnesOut(own, intervals, tolerance);
    const parts = { readings, limits, numbers };
    const terminal = list.flatMap(({ phase }) => (carried.includes(phase) ? [phase] : [])).join(' ');
    const found: Finding<RailCode> =
      odd.length > 0
        ? finding('rail-unbalanced', 'fail', {
            ...parts,
            names: { rail, suspects: odd.map((index) => readings[index]).join(' ') },
          })
        : finding('rail-unbalanced-by-short', 'caution', { ...parts, names: { rail, terminal } });
    return [found, ...notNoted.slice(0, 1)];
  }
  if (list.length < 3) return [];
  if (within(spread.hi, tolerance)) {
    return [finding('rail-balanced', 'pass', { readings, limits, numbers, names: { rail } }), ...judgeSize(rail, list)];
  }
  const code = open.length > 0 ? 'rail-range-too-low' : 'rail-too-close';
  const least = Math.max(0, spread.lo);
  const range = Number.isFinite(spread.hi) ? { least, most: spread.hi } : {};
  return [finding(code, 'undecided', { readings, limits, numbers: { ...numbers, ...range }, names: { rail } })];
}

/**
 * All three over-range: balanced and open, provided that the range could have shown a usual reading.
 * A figure above the meter's own stated limit is a contradiction, not an open circuit.
 */
function judgeAllOpen(rail: Rail, list: RailReading[]): Finding<RailCode>[] {
  const readings = list.map(({ phase }) => `${rail}${phase}`);
  const limits: LimitId[] = ['bridge-open-from'];
  const from = limitValue('bridge-open-from');
  const tooLow = list.some(
    ({ interval, reading, rangeUnknown }) => reading.kind === 'value' || (!rangeUnknown && interval.lo < from),
  );
  if (tooLow) return [finding('rail-range-too-low', 'undecided', { readings, limits, names: { rail } })];
  return [finding('rail-open', 'pass', { readings, limits, names: { rail } })];
}

/** Balanced readings that are lower than usual are no fault by themselves, but never pass in silence. */
function judgeSize(rail: Rail, list: RailReading[]): Finding<RailCode>[] {
  const { from } = limitRange(typicalOf[rail]);
  const usual = list.every(({ interval }) => interval.lo >= from);
  if (usual) return [];
  const readings = list.map(({ phase }) => `${rail}${phase}`);
  return [finding('rail-lower-than-usual', 'caution', { readings, limits: [typicalOf[rail]], names: { rail } })];
}

function shownSpread(list: RailReading[]): Record<string, number> {
  const values = list.flatMap(({ reading }) => (reading.kind === 'value' ? [reading.value] : []));
  if (values.length < list.length || Math.min(...values) === 0) return {};
  return { spread: pairwiseSpread(values), deviation: deviationFromMean(values) };
}

/**
 * Those of the readings `own` that disagree with the most others of them: the odd one out, or all where no two agree.
 * None where no two of them disagree.
 */
function oddOnesOut(own: readonly number[], intervals: readonly Interval[], tolerance: number): number[] {
  const at = (index: number) => intervals[index] ?? { lo: 0, hi: Number.POSITIVE_INFINITY };
  const disagreements = own.map(
    (one) => own.filter((other) => !within(spreadInterval([at(one), at(other)]).lo, tolerance)).length,
  );
  const most = Math.max(0, ...disagreements);
  return most === 0 ? [] : own.filter((_, index) => disagreements[index] === most);
}
