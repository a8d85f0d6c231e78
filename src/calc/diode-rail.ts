import { type Finding, finding } from './assessment.ts';
import type { Rail } from './bridge-rail.ts';
import { type Instrument, type Interval, intervalOf } from './interval.ts';
import { type LimitId, limitRange, limitValue } from './limits.ts';
import { type Phase, type Phases, phases } from './phases.ts';
import type { Reading } from './reading.ts';
import { spreadInterval, within } from './spread.ts';

export type DiodeRailCode =
  | 'diode-incomplete'
  | 'diode-short'
  | 'diode-one-way'
  | 'diode-short-possible'
  | 'diode-all-alike'
  | 'diode-rows-swapped'
  | 'diode-leaky'
  | 'diode-reverse-unclear'
  | 'diode-blocks'
  | 'diode-forward-open'
  | 'diode-forward-all-open'
  | 'diode-unbalanced'
  | 'diode-too-close'
  | 'diode-balanced'
  | 'diode-drop-unusual';

/** One rail in the diode test, in V: `forward` with the diodes conducting, `reverse` with the leads exchanged. */
export interface DiodeRail {
  forward: Phases<Reading>;
  reverse: Phases<Reading>;
}

export interface DiodePosition {
  phase: Phase;
  /** Field ids, as `plusForwardU`. */
  forwardId: string;
  reverseId: string;
  forward: Interval | undefined;
  reverse: Interval | undefined;
}

/** The three positions of a rail as intervals; undefined where nothing was read. OL is above any drop. */
export function diodePositions(rail: Rail, { forward, reverse }: DiodeRail, instrument: Instrument): DiodePosition[] {
  const interval = (reading: Reading): Interval | undefined => {
    if (reading.kind === 'missing') return undefined;
    const open = reading.kind === 'over' && reading.atLeast === undefined;
    return open ? { lo: Number.POSITIVE_INFINITY, hi: Number.POSITIVE_INFINITY } : intervalOf(reading, instrument);
  };
  return phases.map((phase) => ({
    phase,
    forwardId: `${rail}Forward${phase}`,
    reverseId: `${rail}Reverse${phase}`,
    forward: interval(forward[phase]),
    reverse: interval(reverse[phase]),
  }));
}

const isShort = (one: Interval | undefined) => one !== undefined && one.hi <= limitValue('diode-short');
const mayBeShort = (one: Interval | undefined) =>
  one !== undefined && one.lo <= limitValue('diode-short') && !isShort(one);
const blocks = (one: Interval | undefined) => one !== undefined && one.lo >= limitValue('diode-blocking');
const leaks = (one: Interval | undefined) => one !== undefined && one.hi < limitValue('diode-blocking');
const isOpen = (one: Interval | undefined) => one !== undefined && blocks(one) && one.hi === Number.POSITIVE_INFINITY;
const conducts = (one: Interval | undefined) => one !== undefined && leaks(one) && !isShort(one) && !mayBeShort(one);

/** The position conducts one way and blocks the other, by itself. */
export function isSound({ forward, reverse }: DiodePosition): boolean {
  return conducts(forward) && blocks(reverse);
}

/** Judges the six readings of one rail by themselves. Names suspect positions as `plusU` … `minusW`. */
export function judgeDiodeRail(rail: Rail, positions: readonly DiodePosition[]): Finding<DiodeRailCode>[] {
  const names = { rail };
  // What may conduct counts here, lest a wider accuracy make a no-go of two exchanged rows.
  const mayConduct = (one: Interval | undefined) => one !== undefined && !blocks(one) && !isShort(one);
  const swapped = positions.every(({ forward, reverse }) => isOpen(forward) && mayConduct(reverse));
  if (swapped) return [finding('diode-rows-swapped', 'undecided', { readings: idsOf(positions), names })];
  const found: Finding<DiodeRailCode>[] = [];
  const absent = positions.flatMap((one) => [
    ...(one.forward === undefined ? [one.forwardId] : []),
    ...(one.reverse === undefined ? [one.reverseId] : []),
  ]);
  if (absent.length > 0) found.push(finding('diode-incomplete', 'undecided', { readings: absent, names }));
  const shorted = positions.filter(({ forward, reverse }) => isShort(forward) || isShort(reverse));
  const rest = positions.filter((one) => !shorted.includes(one));
  const leaky = rest.filter(({ reverse }) => conducts(reverse));
  found.push(...suspects('diode-short', 'diode-short', rail, shorted), ...oneWay(shorted, rail));
  found.push(...suspects('diode-leaky', 'diode-blocking', rail, leaky));
  if (shorted.length + leaky.length === 3)
    found.push(finding('diode-all-alike', 'caution', { readings: idsOf(positions), names }));
  const possible = rest.filter(({ forward, reverse }) => mayBeShort(forward) || mayBeShort(reverse));
  if (possible.length > 0) {
    const limits: LimitId[] = ['diode-short'];
    found.push(finding('diode-short-possible', 'undecided', { readings: idsOf(possible), limits, names }));
  }
  return [...found, ...judgeForward(rail, rest), ...judgeReverse(rail, rest)];
}

function idsOf(positions: readonly DiodePosition[]): string[] {
  return positions.flatMap(({ forwardId, reverseId }) => [forwardId, reverseId]);
}

function suspects(
  code: 'diode-short' | 'diode-leaky',
  limit: LimitId,
  rail: Rail,
  positions: readonly DiodePosition[],
): Finding<DiodeRailCode>[] {
  if (positions.length === 0) return [];
  const names = { rail, suspects: positions.map(({ phase }) => rail + phase).join(' ') };
  return [finding(code, 'fail', { readings: idsOf(positions), limits: [limit], names })];
}

/** A short is one in both polarities; the other one that says something else casts doubt on the leads. */
function oneWay(shorted: readonly DiodePosition[], rail: Rail): Finding<DiodeRailCode>[] {
  const odd = shorted.filter(({ forward, reverse }) =>
    [forward, reverse].some((one) => one !== undefined && one.lo > limitValue('diode-short')),
  );
  return odd.length === 0 ? [] : [finding('diode-one-way', 'caution', { readings: idsOf(odd), names: { rail } })];
}

function judgeForward(rail: Rail, rest: readonly DiodePosition[]): Finding<DiodeRailCode>[] {
  const present = rest.filter(({ forward }) => forward !== undefined);
  const names = { rail };
  const readings = present.map(({ forwardId }) => forwardId);
  const open = present.filter(({ forward }) => isOpen(forward));
  if (present.length === 3 && open.length === 3)
    return [finding('diode-forward-all-open', 'undecided', { readings, names })];
  const conducting = present.filter((one) => !open.includes(one));
  const found: Finding<DiodeRailCode>[] = [];
  if (open.length > 0 && conducting.length > 0) {
    const suspected = open.map(({ phase }) => rail + phase).join(' ');
    const ids = open.map(({ forwardId }) => forwardId);
    found.push(finding('diode-forward-open', 'fail', { readings: ids, names: { rail, suspects: suspected } }));
  }
  return conducting.length < 2 ? found : [...found, ...judgeDrops(rail, conducting)];
}

function judgeDrops(rail: Rail, judged: readonly DiodePosition[]): Finding<DiodeRailCode>[] {
  const drops = judged.map(({ forward }) => forward as Interval);
  const readings = judged.map(({ forwardId }) => forwardId);
  const limits: LimitId[] = ['diode-balance'];
  const tolerance = limitValue('diode-balance');
  const least = leastDifference(drops);
  const most = Math.max(...drops.map(({ hi }) => hi)) - Math.min(...drops.map(({ lo }) => lo));
  const numbers = { tolerance, least, ...(Number.isFinite(most) && { most }) };
  if (!within(least, tolerance)) {
    const apart = judged.map((_, index) => drops.filter((other) => !agree(drops[index], other)).length);
    const odd = judged.filter((_, index) => apart[index] === Math.max(...apart));
    const names = { rail, suspects: odd.map(({ phase }) => rail + phase).join(' ') };
    return [finding('diode-unbalanced', 'fail', { readings, limits, numbers, names })];
  }
  if (judged.length < 3) return [];
  const names = { rail };
  if (!within(most, tolerance)) return [finding('diode-too-close', 'undecided', { readings, limits, numbers, names })];
  const { from, to } = limitRange('diode-forward-typical');
  const usual = drops.every(({ lo, hi }) => lo >= from && hi <= to);
  const typical: LimitId[] = ['diode-forward-typical'];
  const balanced = finding<DiodeRailCode>('diode-balanced', 'pass', { readings, limits, numbers, names });
  if (usual) return [balanced];
  // A resistor, or leads on the wrong terminals, can read an unusual size alike, and much the same the other way.
  const oneWay = judged.every(({ forward, reverse }) => conducts(forward) && isOpen(reverse));
  const severity = oneWay ? 'caution' : 'undecided';
  return [balanced, finding('diode-drop-unusual', severity, { readings, limits: typical, names })];
}

function agree(one: Interval | undefined, other: Interval): boolean {
  return one === undefined || within(leastDifference([one, other]), limitValue('diode-balance'));
}

function leastDifference(drops: readonly Interval[]): number {
  return Math.max(0, Math.max(...drops.map(({ lo }) => lo)) - Math.min(...drops.map(({ hi }) => hi)));
}

/** Blocking is over-range on all three, or three alike readings above the limit, through the resistors of the stage. */
function judgeReverse(rail: Rail, rest: readonly DiodePosition[]): Finding<DiodeRailCode>[] {
  const present = rest.filter(({ reverse }) => reverse !== undefined);
  const limits: LimitId[] = ['diode-blocking', 'bridge-tolerance'];
  const names = { rail };
  const unclear = present.filter(({ reverse }) => !conducts(reverse) && !blocks(reverse) && !mayBeShort(reverse));
  const blocking = present.filter(({ reverse }) => blocks(reverse));
  const intervals = blocking.map(({ reverse }) => reverse as Interval);
  const allOpen = intervals.every(({ hi }) => hi === Number.POSITIVE_INFINITY);
  const alike = allOpen || within(spreadInterval(intervals).hi, limitValue('bridge-tolerance'));
  const doubtful = alike ? unclear : [...unclear, ...blocking];
  if (doubtful.length > 0) {
    const readings = doubtful.map(({ reverseId }) => reverseId);
    return [finding('diode-reverse-unclear', 'undecided', { readings, limits, names })];
  }
  if (blocking.length < 3) return [];
  const readings = blocking.map(({ reverseId }) => reverseId);
  return [finding('diode-blocks', 'pass', { readings, limits: ['diode-blocking'], names })];
}
