import { coreResistance } from '../electrics/core-resistance.ts';
import { type LimitId, limitValue } from '../limits.ts';
import { intervalOf } from '../reading/interval.ts';
import type { Reading } from '../reading/reading.ts';
import { type FindingOf, findingMaker, type Nothing } from './assessment.ts';
import { isPossible } from './possible-figures.ts';

/** `higher-than-expected`: there, but with more resistance than length, cross-section and contacts explain. */
export type PeJudgement = 'short' | 'higher-than-expected' | 'not-short' | 'not-proven' | 'missing';

/** What is known of a protective conductor and of how it was measured; each may be left out. */
export interface PeConductor {
  /** One length of the core, in m. */
  metres?: number;
  /** Its cross-section in mm², one of the table's. */
  squareMillimetres?: number;
  /** Test current in A; a multimeter has some milliamperes at most. */
  amperes?: number;
}

/**
 * What connects the motor frame to the machine ground. If only the PE core does, a reading from the core to the machine
 * ground is open even where the core is sound: the way back is missing.
 */
export type FrameEarthed = 'only-pe' | 'also-otherwise' | 'not-stated';

/** Which reading is a short, and from which on the conductor counts as broken, in Ω. */
export interface PeMarks {
  /** Resistance of the core alone by the table; undefined if length or cross-section is not known. */
  expected: number | undefined;
  short: number;
  broken: number;
}

export function peMarks({ metres, squareMillimetres }: PeConductor = {}): PeMarks {
  const limit = limitValue('pe-dead-short');
  const known = metres !== undefined && squareMillimetres !== undefined;
  const expected = known ? coreResistance(metres, squareMillimetres) : undefined;
  if (expected === undefined) {
    return { expected, short: limit, broken: limitValue('pe-broken-unknown-length') };
  }
  const most = expected * (1 + limitValue('pe-core-tolerance') / 100);
  return { expected, short: most + limitValue('pe-contacts'), broken: most + limit };
}

/**
 * Whether a protective conductor reads what its length and cross-section let expect; without them, whether it reads a
 * short. A zero in megohms proves little: it only says "less than one step of the display". An over-range reading
 * without a noted range is broken on any range. An impossible figure proves nothing.
 */
export function judgePe(reading: Reading, conductor: PeConductor = {}): PeJudgement {
  const { short, broken } = peMarks(conductor);
  if (!isPossible(reading)) return 'not-proven';
  switch (reading.kind) {
    case 'missing':
      return 'missing';
    case 'over':
      return reading.atLeast !== undefined && reading.atLeast < broken ? 'not-proven' : 'not-short';
    case 'under':
      return (reading.atMost ?? Number.POSITIVE_INFINITY) <= short ? 'short' : 'not-proven';
    case 'value': {
      if (reading.value > broken) return 'not-short';
      if (reading.value > short) return 'higher-than-expected';
      const hi = reading.value === 0 ? (reading.resolution ?? 0) : intervalOf(reading).hi;
      return hi <= short ? 'short' : 'not-proven';
    }
  }
}

/**
 * Whether two readings prove the PE core broken: both broken, and the motor frame has another connection to the machine
 * ground, without which a sound core reads open too.
 */
export function isPeProvenBroken(first: PeJudgement, again: PeJudgement, frame: FrameEarthed): boolean {
  return first === 'not-short' && again === 'not-short' && frame === 'also-otherwise';
}

export interface PeRemarkPayloads {
  /** A short by a few milliamperes: a film on a contact or one last strand carries that too. */
  'pe-by-multimeter': Nothing;
  /** Less than half of what the core alone has: the current went another way, such as a screen. */
  'pe-lower-than-expected': { expectedOhms: number };
  /** More than the core and its contacts explain. No `expectedOhms` if length or cross-section is not known. */
  'pe-above-expected': { expectedOhms?: number; shortOhms: number };
  /** A broken reading proves nothing until it is known what else connects the frame to the machine ground. */
  'pe-frame-not-stated': Nothing;
  'pe-frame-only-by-pe': Nothing;
}

export type PeRemark = FindingOf<PeRemarkPayloads>;

const finding = findingMaker<PeRemarkPayloads>();

/** The limits behind a judgement of a protective conductor. */
export function peLimits(conductor: PeConductor = {}): LimitId[] {
  return peMarks(conductor).expected === undefined
    ? ['pe-dead-short', 'pe-broken-unknown-length']
    : ['pe-dead-short', 'pe-core-resistance', 'pe-core-tolerance', 'pe-contacts'];
}

/** What should be said beside the judgement of `reading`; `field` is its place in the input. None decides anything. */
export function peRemarks(
  reading: Reading,
  conductor: PeConductor = {},
  frame: FrameEarthed = 'also-otherwise',
  field = 'PE',
): PeRemark[] {
  const readings = [field];
  const { expected, short } = peMarks(conductor);
  const judgement = judgePe(reading, conductor);
  if (judgement === 'higher-than-expected') {
    const known = expected === undefined ? {} : { expectedOhms: expected };
    return [
      finding('pe-above-expected', 'note', { readings, ...known, shortOhms: short, limits: peLimits(conductor) }),
    ];
  }
  if (judgement === 'not-short' && frame === 'not-stated')
    return [finding('pe-frame-not-stated', 'note', { readings })];
  if (judgement === 'not-short' && frame === 'only-pe')
    return [finding('pe-frame-only-by-pe', 'caution', { readings })];
  if (judgement !== 'short') return [];
  const remarks: PeRemark[] = [];
  if ((conductor.amperes ?? 0) < limitValue('continuity-current'))
    remarks.push(finding('pe-by-multimeter', 'note', { readings, limits: ['continuity-current'] }));
  const most = reading.kind === 'value' ? intervalOf(reading, { counts: 1 }).hi : Number.POSITIVE_INFINITY;
  if (expected !== undefined && most < expected / 2)
    remarks.push(finding('pe-lower-than-expected', 'caution', { readings, expectedOhms: expected }));
  return remarks;
}
