import type { Assessment, FindingOf, Nothing, Step } from '../../../kernel/assessment/assessment.ts';
import type { OscillationFigures, PhasePlace, TraceFigures } from './figures.ts';

/** What a trace can point to. None of them is ever proven by it. */
export type Branch =
  | 'short-outside'
  | 'earth-path'
  | 'inside-drive'
  | 'sensing'
  | 'feedback'
  | 'open-core'
  | 'mechanics'
  | 'tuning'
  | 'supply-braking';

export interface TripTraceInput {
  /** Absent until a file has been read. */
  figures?: TraceFigures;
  /** Between two terminals of the motor, in H. */
  inductance?: number;
  /** It is the smaller of two, along the magnets and across them. Absent: one was stated, or it is not known which. */
  inductanceIs?: 'smaller';
  /** Of the bus if the file has no column for it, in V. */
  busVolts?: number;
  /** The current at which the drive trips, or its peak current, in A. */
  tripAmps?: number;
  polePairs?: number;
  /** How the recorder stores: each sample as measured, or filtered. Absent: not known. */
  stored?: 'raw' | 'filtered';
  /** Current sensors of the drive. Absent: not known. */
  sensors?: 'two' | 'three';
}

export type SlopeSilence =
  | 'no-amperes'
  | 'no-inductance'
  | 'no-bus'
  | 'gap'
  | 'coarse'
  | 'filtered'
  | 'level-unknown'
  | 'below-level'
  | 'clipped'
  | 'between';
export type SumSilence = 'two-columns' | 'by-construction' | 'gap' | 'level-unknown' | 'below-level' | 'between';
export type OrdinarySilence =
  | 'no-amperes'
  | 'level-unknown'
  | 'high'
  | 'filtered'
  | 'no-inductance'
  | 'no-bus'
  | 'coarse'
  | 'clipped'
  | 'gap'
  | 'trip-not-seen';
export type RotationSilence = 'no-speed' | 'no-pairs' | 'too-little' | 'pairs-do-not-fit' | 'agrees' | 'between';
export type ZeroSilence = 'no-speed' | 'at-rest' | 'no-pairs' | 'coarse' | 'too-short' | 'trip-not-seen';
export type OscillationSilence =
  | 'none-found'
  | 'few-cycles'
  | 'irregular'
  | 'small'
  | 'at-the-frequency'
  | 'frequency-unknown'
  | 'moves'
  | 'level-unknown'
  | 'ordinary'
  | 'trip-not-seen';
export type MotionSilence =
  | 'no-speed'
  | 'level-unknown'
  | 'ordinary'
  | 'direction-unknown'
  | 'no-loss'
  | 'too-fast'
  | 'trip-not-seen';
export type BusSilence = 'no-column' | 'no-speed' | 'between' | 'trip-not-seen' | 'level-unknown' | 'current-first';

interface Needed {
  /** Time between samples from which on the recording would tell, in s; absent if that is not the reason or not known. */
  needed?: number;
}

interface Slope {
  /** Of the current of one phase, or of the vector of all three. */
  of: 'phase' | 'vector';
  /** Largest rise in one sample, and what the motor allows in it, in A. */
  rise: number;
  allowed: number;
  seconds: number;
}

/** Each rule has one finding that speaks for something, one against, or one that says why it states nothing. */
export interface TripTracePayloads {
  'file-missing': Nothing;
  'trace-read': { rows: number; sampleSeconds: number; tripSeconds: number; tripFrom: TraceFigures['tripFrom'] };
  'trip-not-recorded': Nothing;
  'points-only': Nothing;
  'slope-for': Slope;
  'slope-of-one': Slope & { phase: PhasePlace };
  'slope-against': Slope & { samples: number };
  'slope-nothing': { why: SlopeSilence } & Needed;
  'sum-for': { share: number };
  'sum-of-one': { phase: PhasePlace; share: number };
  'sum-offset': { share: number };
  'sum-against': { share: number };
  'sum-nothing': { why: SumSilence };
  'ordinary-for': {
    supply: 'steady' | 'unknown';
    earth: 'excluded' | 'possible';
    core: 'excluded' | 'possible';
    amps: number;
    share: number;
    seconds: number;
  };
  'ordinary-nothing': { why: OrdinarySilence } & Needed;
  'rotation-for': { hertz: number; expected: number };
  'rotation-nothing': { why: RotationSilence; shown?: number };
  'speed-jump-for': { share: number; seconds: number };
  'zero-for': { phase: PhasePlace; seconds: number; turns: number };
  'zero-against': { turns: number };
  'zero-nothing': { why: ZeroSilence };
  'oscillation-for': { of: OscillationFigures['of']; hertz: number; cycles: number; share: number };
  'oscillation-against': { share: number };
  'oscillation-nothing': { why: OscillationSilence };
  'motion-lost': { share: number; seconds: number };
  'motion-against-torque': { share: number };
  'motion-stalled': { seconds: number };
  'motion-load': { growth: number };
  'motion-nothing': { why: MotionSilence };
  'bus-braking': { before: number; most: number; percent: number; inVolts: boolean };
  'bus-supply': { before: number; least: number; percent: number; inVolts: boolean };
  'bus-against': { percent: number };
  'bus-nothing': { why: BusSilence };
}

export type TripTraceFinding = FindingOf<TripTracePayloads>;

export type TripTraceStepCode =
  | 'open-the-file'
  | 'look-at-moment'
  | 'state-inductance'
  | 'state-smaller'
  | 'state-level'
  | 'state-storing'
  | 'state-sensors'
  | 'state-pairs'
  | 'measure-parts'
  | 'measure-insulation'
  | 'measure-winding'
  | 'check-bridge'
  | 'check-feedback'
  | 'check-mechanics'
  | 'check-tuning'
  | 'check-braking'
  | 'compare-sensors';

/** What a recording may hold besides, or how it is made. */
export type WantedColumn = 'third-current' | 'bus' | 'speed' | 'torque' | 'after-trip' | 'as-measured' | 'longer';

/** How the next recording would let more rules speak. */
export interface Wanted {
  columns: WantedColumn[];
  /** Time between samples, in s; absent: this one suffices, or it is not known. */
  seconds?: number;
}

/** What to state, to look at or to measure, or how the next recording would tell more. */
export type TripTraceStep = Step<TripTraceStepCode> | ({ code: 'record-so' } & Wanted);

export interface TripTraceAssessment extends Assessment<TripTraceFinding, TripTraceStep> {
  /** What the rules together point to, the strongest first; empty: no statement. */
  points: Branch[];
  figures?: TraceFigures;
}
