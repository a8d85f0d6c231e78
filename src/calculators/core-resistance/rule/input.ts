import type { Assessment, FindingOf, Nothing, Step } from '../../../kernel/assessment/assessment.ts';
import type { FigurePayloads, FigureStepCode } from '../../../kernel/assessment/possible-figures.ts';
import type { Instrument } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';

/** `pair`: two cores joined at the far end, there and back. */
export type CoreWay = 'pe' | 'core' | 'pair' | 'not-stated';

/** Leads zeroed, or four of them. */
export type CoreMeter = 'continuity-tester' | 'four-leads' | 'multimeter' | 'not-stated';

/** Whether PE, or the core, and the screen are off at one end at least. */
export type CoreEnd = 'off' | 'on' | 'not-stated';

export interface CoreInput {
  way: CoreWay;
  end: CoreEnd;
  meter: CoreMeter;
  /** One way, in m. */
  metres: Reading;
  /** One of the table's, in mm². */
  squareMillimetres?: number;
  /** End to end, in Ω. */
  reading: Reading;
  /** Of the cable, in °C; only shown. */
  temperature: Reading;
  instrument?: Instrument;
}

/** What length, cross-section and contacts explain, in Ω. */
export interface CoreMarks {
  /** Copper alone at 20 °C, by the table. */
  table: number;
  /** Passes up to here. */
  most: number;
  /** Fails beyond this. */
  beyond: number;
}

export interface CorePayloads extends FigurePayloads {
  'core-way-not-stated': Nothing;
  'core-meter-not-stated': Nothing;
  /** Frame, conduit or screen may carry the current beside the core. */
  'core-other-path-possible': Nothing;
  'core-end-not-stated': Nothing;
  'core-data-missing': Nothing;
  'core-reading-missing': Nothing;
  'core-fits': CoreMarks;
  'core-open': Nothing;
  /** Over a range that may end below the ohms of a sound core. */
  'core-over-range': Nothing;
  'core-too-high': CoreMarks;
  'core-above-expected': CoreMarks;
  'core-below-expected': CoreMarks;
  'core-at-temperature': { ohms: number; celsius: number };
  'core-by-multimeter': Nothing;
}

export type CoreFinding = FindingOf<CorePayloads>;

export type CoreStepCode =
  | FigureStepCode
  | 'state-core-way'
  | 'state-core-meter'
  | 'take-one-end-off'
  | 'note-core-range'
  | 'measure-core-data'
  | 'measure-core'
  | 'clean-and-repeat'
  | 'divide-the-run'
  | 'look-for-other-path'
  | 'use-continuity-tester';

export interface CoreAssessment extends Assessment<CoreFinding, Step<CoreStepCode>> {
  /** Absent without length and cross-section. */
  marks?: CoreMarks;
}
