import type { Assessment, FindingOf, Nothing, Step } from '../../../kernel/assessment/assessment.ts';
import type { BusPayloads } from '../../../kernel/assessment/bus-discharge.ts';
import type { FigurePayloads, FigureStepCode } from '../../../kernel/assessment/possible-figures.ts';
import type { Instrument } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';

/** L1, L2, L3; a drive on one phase has the first two. */
export type Line = 'L1' | 'L2' | 'L3';

export type Lines<T> = Record<Line, T>;

export type Side = 'plus' | 'minus';

/** One diode of the rectifier: from a line to DC+, or from DC− to a line. */
export interface Diode {
  side: Side;
  line: Line;
}

export interface InputCircuitInput {
  /** DC+ to DC−, just before, in V. */
  busVoltage: Reading;
  supplyLeads: 'off' | 'connected' | 'not-stated';
  /** Braking resistor, motor leads and neighbours on the same bus. */
  others: 'off' | 'connected' | 'not-stated';
  lines: 'three' | 'two';
  /** Each out of its holder, in Ω. */
  fuses: Lines<Reading>;
  /** Diode test in V. Red on the line, black on DC+. */
  plusConducting: Lines<Reading>;
  /** Red on DC+, black on the line. */
  plusBlocking: Lines<Reading>;
  /** Red on DC−, black on the line. */
  minusConducting: Lines<Reading>;
  /** Red on the line, black on DC−. */
  minusBlocking: Lines<Reading>;
  /** Red on DC−, black on DC+. */
  linkConducting: Reading;
  /** Red on DC+, black on DC−, once it stands still. */
  linkBlocking: Reading;
  /** How that reading got there: the meter charges the capacitor. */
  climb: 'climbs' | 'at-once' | 'not-stated';
  /** `inside`: out of reach in the drive. */
  precharge: 'reached' | 'none' | 'inside' | 'not-stated';
  /** In Ω. */
  prechargePlate: Reading;
  prechargeOhms: Reading;
  /** What looks odd was read a second time, tips lifted in between. */
  again: boolean;
  instrument?: Instrument;
}

interface Diodes {
  diodes: Diode[];
}

interface Precharge {
  ohms: number;
  plateOhms: number;
}

export interface InputPayloads extends FigurePayloads, BusPayloads {
  'input-negative': Nothing;
  'supply-leads-connected': Nothing;
  'supply-leads-not-stated': Nothing;
  'others-connected': Nothing;
  'others-not-stated': Nothing;
  'fuse-open': { lines: Line[] };
  'fuse-unclear': { lines: Line[]; mostOhms: number };
  'fuses-missing': { lines: Line[] };
  'fuses-conduct': Nothing;
  'rectifier-missing': Nothing;
  'rectifier-sound': Nothing;
  /** The diodes say nothing of what lies between the lines, or from a line to PE. */
  'lines-not-judged': Nothing;
  'rectifier-short': Diodes & { bothWays: boolean };
  'rectifier-leaky': Diodes;
  'rectifier-open': Diodes;
  'rectifier-side-open': { side: Side };
  /** The drops of one side differ by more than those of like diodes. */
  'rectifier-uneven': { side: Side; apartVolts: number };
  'rectifier-exchanged': Diodes;
  'rectifier-unclear': Diodes;
  'link-missing': Nothing;
  'link-sound': Nothing;
  /** Conducts like one diode, where two in series are usual. */
  'link-one-drop': Nothing;
  'link-short': { bothWays: boolean };
  'link-leaky': Nothing;
  'link-open': Nothing;
  'link-exchanged': Nothing;
  'link-unclear': Nothing;
  'link-climbs': Nothing;
  'link-no-climb': Nothing;
  'link-climb-not-stated': Nothing;
  'precharge-none': Nothing;
  'precharge-inside': Nothing;
  'precharge-missing': Nothing;
  'precharge-fits': Precharge & { tolerancePercent: number };
  'precharge-bypassed': Nothing;
  'precharge-open': Nothing;
  /** Over a range that may end below the ohms of a sound one. */
  'precharge-over-range': Nothing;
  'precharge-off': Precharge;
  'precharge-too-close': { plateOhms: number; tolerancePercent: number };
}

export type InputFinding = FindingOf<InputPayloads>;

export type InputStepCode =
  | FigureStepCode
  | 'measure-bus'
  | 'wait-and-measure-bus'
  | 'measure-bus-again'
  | 'take-supply-leads-off'
  | 'take-others-off'
  | 'measure-fuses'
  | 'fuses-last'
  | 'measure-rectifier'
  | 'measure-lines'
  | 'measure-link'
  | 'read-stages'
  | 'read-twice'
  | 'compare-input'
  | 'take-rest-off'
  | 'replace-drive'
  | 'look-before-drive'
  | 'note-precharge-range'
  | 'ask-about-precharge';

export type InputAssessment = Assessment<InputFinding, Step<InputStepCode>>;
