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
  | 'third-unseen'
  | 'sum-off'
  | 'trip-not-seen';
export type RotationSilence = 'no-speed' | 'no-pairs' | 'too-little' | 'pairs-do-not-fit' | 'agrees' | 'between';
export type ZeroSilence = 'no-speed' | 'at-rest' | 'too-short';
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
export type MotionSilence = 'no-speed' | 'level-unknown' | 'ordinary' | 'direction-unknown' | 'no-loss' | 'too-fast';
export type BusSilence = 'no-column' | 'no-speed' | 'between' | 'trip-not-seen' | 'level-unknown' | 'current-first';

interface Slope {
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
  'slope-nothing': { why: SlopeSilence };
  'sum-for': { share: number };
  'sum-of-one': { phase: PhasePlace; share: number };
  'sum-offset': { share: number };
  'sum-against': { share: number };
  'sum-nothing': { why: SumSilence };
  'ordinary-for': { supply: 'steady' | 'unknown'; amps: number; share: number; seconds: number };
  'ordinary-nothing': { why: OrdinarySilence };
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
  | 'state-level'
  | 'record-faster'
  | 'measure-parts'
  | 'measure-insulation'
  | 'measure-winding'
  | 'check-bridge'
  | 'check-feedback'
  | 'check-mechanics'
  | 'check-tuning'
  | 'check-braking'
  | 'compare-sensors';

export interface TripTraceAssessment extends Assessment<TripTraceFinding, Step<TripTraceStepCode>> {
  /** What the rules together point to, the strongest first; empty: no statement. */
  points: Branch[];
  figures?: TraceFigures;
}
