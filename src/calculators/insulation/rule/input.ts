import type { Assessment, FindingOf, Nothing, Step } from '../../../kernel/assessment/assessment.ts';
import type {
  CableEndPayloads,
  CableEndStepCode,
  EndFilter,
  IdleCores,
} from '../../../kernel/assessment/cable-ends.ts';
import type { FigurePayloads, FigureStepCode } from '../../../kernel/assessment/possible-figures.ts';
import type {
  FrameEarthed,
  PeConductor,
  PeJudgement,
  PeRemarkPayloads,
} from '../../../kernel/assessment/protective-conductor.ts';
import type { ReminderPayloads } from '../../../kernel/assessment/test-reminders.ts';
import type { TestVoltagePayloads } from '../../../kernel/assessment/test-voltage.ts';
import type { Occasion, WindingJudgement } from '../../../kernel/assessment/winding-insulation.ts';
import type { CorrectionMethod } from '../../../kernel/electrics/correction-validity.ts';
import type { MachineClass } from '../../../kernel/electrics/machine-minimum.ts';
import type { Phase, Phases } from '../../../kernel/electrics/phases.ts';
import type { Instrument } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';

/**
 * Insulation of a motor, or of motor and cable, to PE. Resistances in Ω, voltages in V (rated: line to line),
 * temperatures in °C, humidity in %, duration in min. `pe` is the PE pin to the frame, on the lowest resistance range of a
 * multimeter; `instrument` describes the insulation tester. Air and humidity are optional, but only together. `together`
 * is one reading of U, V and W joined; it stands for all three if none was read singly. `rowKind` only says which of them is asked for. What is
 * not stated of idle cores and filter counts as not known.
 */
export interface InsulationInput {
  occasion: Occasion;
  readings: Phases<Reading>;
  rowKind?: 'joined' | 'single';
  together?: Reading;
  idleCores?: IdleCores;
  filter?: EndFilter;
  pe: Reading;
  peConductor?: PeConductor;
  frameEarthed?: FrameEarthed;
  testVoltage: Reading;
  ratedVoltage: Reading;
  windingTemperature: Reading;
  ambient: Reading;
  humidity: Reading;
  machineClass: MachineClass;
  correction: CorrectionMethod;
  instrument?: Instrument;
  testMinutes: Reading;
}

/** A phase, or all three joined. */
export type Terminal = Phase | 'together';

/** The reading of one phase, or of all three joined, and its limit. */
export interface PhaseJudged {
  phase: Terminal;
  occasion: Occasion;
  limitOhms: number;
  /** The temperature of the limit. */
  referenceCelsius: number;
  kind: Reading['kind'];
  /** The figure or bound as read; absent if there is none. */
  ohms?: number;
  /** At the temperature of the limit; absent without a single correction factor. */
  corrected?: { ohms: number; factor: number };
}

type PhasePayloads = Record<`phase-${Exclude<WindingJudgement, 'methods-differ'>}`, PhaseJudged>;
type PePayloads = Record<`pe-${PeJudgement}`, Nothing>;

export interface InsulationPayloads
  extends FigurePayloads,
    CableEndPayloads,
    PeRemarkPayloads,
    TestVoltagePayloads,
    PhasePayloads,
    PePayloads,
    ReminderPayloads {
  'phase-missing': { readings: Phase[] };
  'together-missing': Nothing;
  /** `methods`: those that would give another judgement. */
  'phase-methods-differ': PhaseJudged & { methods: CorrectionMethod[] };
  'temperature-missing': Nothing;
  'temperature-out-of-validity': { method: CorrectionMethod; fromCelsius: number; toCelsius: number };
  'winding-at-dew-point': { windingCelsius: number; dewPointCelsius: number };
  'dew-point-incomplete': Nothing;
  'phases-differ': { ratio: number };
  'air-not-stated': Nothing;
  'form-wound-below-1-kv': Nothing;
  'charts-do-not-apply': Nothing;
  'insulation-passed': Nothing;
  'insulation-failed': Nothing;
}

export type InsulationFinding = FindingOf<InsulationPayloads>;

export type InsulationStepCode =
  | FigureStepCode
  | CableEndStepCode
  | 'measure-together'
  | 'measure-phases'
  | 'measure-pe'
  | 'measure-pe-low-range'
  | 'mend-pe'
  | 'measure-temperature'
  | 'other-method-or-temperature'
  | 'state-test-voltage'
  | 'use-insulation-tester'
  | 'state-rated-voltage'
  | 'measure-air'
  | 'dry-first'
  | 'let-cool'
  | 'let-warm'
  | 'repeat-near-reference'
  | 'repeat-after-pe'
  | 'repeat-more-exactly'
  | 'note-range'
  | 'find-contact'
  | 'separate-cable-and-motor'
  | 'keep-as-baseline';

export type InsulationAssessment = Assessment<InsulationFinding, Step<InsulationStepCode>>;
