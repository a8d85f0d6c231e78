import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { type Phases, phases } from '../../../kernel/electrics/phases.ts';
import { type LimitId, limitRange, limitValue } from '../../../kernel/limits.ts';
import { type Instrument, type Interval, intervalOf } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import { spreadInterval, within } from '../../../kernel/reading/spread.ts';
import {
  type DiodePlace,
  type DiodeWay,
  diodeField,
  type Rail,
  type SwitchPosition,
} from '../../bridge/rule/switch-position.ts';
import type { DiodeRailFinding, DiodeRailPayloads } from './rail-findings.ts';

const finding = findingMaker<DiodeRailPayloads>();

/** One rail in the diode test, in V: `forward` with the diodes conducting, `reverse` with the leads exchanged. */
export interface DiodeRail {
  forward: Phases<Reading>;
  reverse: Phases<Reading>;
}

export interface DiodePosition {
  position: SwitchPosition;
  forward: Interval | undefined;
  reverse: Interval | undefined;
}

/** The three positions of a rail as intervals; undefined if nothing was read. OL is above any drop. */
export function diodePositions(rail: Rail, { forward, reverse }: DiodeRail, instrument: Instrument): DiodePosition[] {
  const interval = (reading: Reading): Interval | undefined => {
    if (reading.kind === 'missing') return undefined;
    const open = reading.kind === 'over' && reading.atLeast === undefined;
    return open ? { lo: Number.POSITIVE_INFINITY, hi: Number.POSITIVE_INFINITY } : intervalOf(reading, instrument);
  };
  return phases.map((phase) => ({
    position: `${rail}${phase}`,
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

export function isShortBothWays({ forward, reverse }: DiodePosition): boolean {
  return isShort(forward) && isShort(reverse);
}

/** Judges the six readings of one rail by themselves. */
export function judgeDiodeRail(rail: Rail, positions: readonly DiodePosition[]): DiodeRailFinding[] {
  // Everything that may conduct counts here; otherwise a wider accuracy would turn two exchanged rows into a no-go.
  const mayConduct = (one: Interval | undefined) => one !== undefined && !blocks(one) && !isShort(one);
  const swapped = positions.every(({ forward, reverse }) => isOpen(forward) && mayConduct(reverse));
  if (swapped) return [finding('diode-rows-swapped', 'undecided', { readings: idsOf(positions), rail })];
  const found: DiodeRailFinding[] = [];
  const absent = placesOf(positions).filter(({ position, way }) =>
    positions.some((one) => one.position === position && one[way] === undefined),
  );
  if (absent.length > 0) {
    found.push(finding('diode-incomplete', 'undecided', { readings: absent.map(diodeField), places: absent }));
  }
  const shorted = positions.filter(({ forward, reverse }) => isShort(forward) || isShort(reverse));
  const rest = positions.filter((one) => !shorted.includes(one));
  const leaky = rest.filter(({ reverse }) => conducts(reverse));
  found.push(...suspects('diode-short', 'diode-short', shorted), ...oneWay(shorted));
  found.push(...suspects('diode-leaky', 'diode-blocking', leaky));
  if (shorted.length + leaky.length === 3)
    found.push(finding('diode-all-alike', 'caution', { readings: idsOf(positions), rail }));
  const possible = rest.filter(({ forward, reverse }) => mayBeShort(forward) || mayBeShort(reverse));
  if (possible.length > 0) {
    const limits: LimitId[] = ['diode-short'];
    const parts = { readings: idsOf(possible), limits, positions: at(possible) };
    found.push(finding('diode-short-possible', 'undecided', parts));
  }
  return [...found, ...judgeForward(rail, rest), ...judgeReverse(rail, rest)];
}

/** Both readings of each position. */
function placesOf(positions: readonly DiodePosition[]): DiodePlace[] {
  return at(positions).flatMap((position): DiodePlace[] => [
    { position, way: 'forward' },
    { position, way: 'reverse' },
  ]);
}

const at = (list: readonly DiodePosition[]) => list.map(({ position }) => position);
const idsOf = (positions: readonly DiodePosition[]) => placesOf(positions).map(diodeField);
const idsOn = (way: DiodeWay, list: readonly DiodePosition[]) =>
  at(list).map((position) => diodeField({ position, way }));

function suspects(
  code: 'diode-short' | 'diode-leaky',
  limit: LimitId,
  positions: readonly DiodePosition[],
): DiodeRailFinding[] {
  if (positions.length === 0) return [];
  const suspected = { positions: at(positions), suspects: at(positions) };
  return [finding(code, 'fail', { readings: idsOf(positions), limits: [limit], ...suspected })];
}

/** A short reads as one in both polarities; if the other polarity says something else, the leads are in doubt. */
function oneWay(shorted: readonly DiodePosition[]): DiodeRailFinding[] {
  const odd = shorted.filter(({ forward, reverse }) =>
    [forward, reverse].some((one) => one !== undefined && one.lo > limitValue('diode-short')),
  );
  return odd.length === 0 ? [] : [finding('diode-one-way', 'caution', { readings: idsOf(odd), positions: at(odd) })];
}

function judgeForward(rail: Rail, rest: readonly DiodePosition[]): DiodeRailFinding[] {
  const present = rest.filter(({ forward }) => forward !== undefined);
  const readings = idsOn('forward', present);
  const open = present.filter(({ forward }) => isOpen(forward));
  if (present.length === 3 && open.length === 3)
    return [finding('diode-forward-all-open', 'undecided', { readings, rail })];
  const conducting = present.filter((one) => !open.includes(one));
  const found: DiodeRailFinding[] = [];
  if (open.length > 0 && conducting.length > 0) {
    const parts = { readings: idsOn('forward', open), suspects: at(open) };
    found.push(finding('diode-forward-open', 'fail', parts));
  }
  return conducting.length < 2 ? found : [...found, ...judgeDrops(rail, conducting)];
}

function judgeDrops(rail: Rail, judged: readonly DiodePosition[]): DiodeRailFinding[] {
  const drops = judged.map(({ forward }) => forward as Interval);
  const readings = idsOn('forward', judged);
  const limits: LimitId[] = ['diode-balance'];
  const tolerance = limitValue('diode-balance');
  const least = leastDifference(drops);
  const most = Math.max(...drops.map(({ hi }) => hi)) - Math.min(...drops.map(({ lo }) => lo));
  const parts = { readings, limits, rail, toleranceVolts: tolerance };
  if (!within(least, tolerance)) {
    const apart = judged.map((_, index) => drops.filter((other) => !agree(drops[index], other)).length);
    const odd = judged.filter((_, index) => apart[index] === Math.max(...apart));
    return [finding('diode-unbalanced', 'fail', { ...parts, leastVolts: least, suspects: at(odd) })];
  }
  if (judged.length < 3) return [];
  if (!within(most, tolerance)) {
    const range = Number.isFinite(most) ? { range: { leastVolts: least, mostVolts: most } } : {};
    return [finding('diode-too-close', 'undecided', { ...parts, ...range })];
  }
  const { from, to } = limitRange('diode-forward-typical');
  const usual = drops.every(({ lo, hi }) => lo >= from && hi <= to);
  const typical: LimitId[] = ['diode-forward-typical'];
  const balanced = finding('diode-balanced', 'pass', { ...parts, mostVolts: most });
  if (usual) return [balanced];
  // A resistor, or leads on the wrong terminals, can read the same unusual value three times, and much the same with
  // the leads exchanged.
  const oneWay = judged.every(({ forward, reverse }) => conducts(forward) && isOpen(reverse));
  const severity = oneWay ? 'caution' : 'undecided';
  return [balanced, finding('diode-drop-unusual', severity, { readings, limits: typical, rail })];
}

function agree(one: Interval | undefined, other: Interval): boolean {
  return one === undefined || within(leastDifference([one, other]), limitValue('diode-balance'));
}

function leastDifference(drops: readonly Interval[]): number {
  return Math.max(0, Math.max(...drops.map(({ lo }) => lo)) - Math.min(...drops.map(({ hi }) => hi)));
}

/**
 * Blocking means over-range on all three, or three similar readings above the limit, through the resistors of the
 * stage.
 */
function judgeReverse(rail: Rail, rest: readonly DiodePosition[]): DiodeRailFinding[] {
  const present = rest.filter(({ reverse }) => reverse !== undefined);
  const limits: LimitId[] = ['diode-blocking', 'bridge-tolerance'];
  const unclear = present.filter(({ reverse }) => !conducts(reverse) && !blocks(reverse) && !mayBeShort(reverse));
  const blocking = present.filter(({ reverse }) => blocks(reverse));
  const intervals = blocking.map(({ reverse }) => reverse as Interval);
  const allOpen = intervals.every(({ hi }) => hi === Number.POSITIVE_INFINITY);
  const alike = allOpen || within(spreadInterval(intervals).hi, limitValue('bridge-tolerance'));
  const doubtful = alike ? unclear : [...unclear, ...blocking];
  if (doubtful.length > 0) {
    const places = at(doubtful).map((position): DiodePlace => ({ position, way: 'reverse' }));
    return [finding('diode-reverse-unclear', 'undecided', { readings: places.map(diodeField), limits, places })];
  }
  if (blocking.length < 3) return [];
  return [finding('diode-blocks', 'pass', { readings: idsOn('reverse', blocking), limits: ['diode-blocking'], rail })];
}
