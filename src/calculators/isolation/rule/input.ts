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
import type { CableInsulation } from '../../../kernel/electrics/cable-insulation.ts';
import type { CorrectionMethod } from '../../../kernel/electrics/correction-validity.ts';
import type { Phase, Phases } from '../../../kernel/electrics/phases.ts';
import type { Instrument } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import type { ConvictionPayloads, MoreEvidence } from './conviction.ts';
import type { FitPayloads } from './parallel-check.ts';
import type { StagePayloads } from './stage.ts';

/**
 * Readings to ground, in Ω. PE by multimeter on its lowest resistance range if a short is expected. `together` is
 * one reading of U, V and W joined, where the windings join them anyway: it stands for all three if none
 * was read singly, and beside single ones the lower counts.
 */
export interface StageReadings extends Phases<Reading> {
  PE: Reading;
  together?: Reading;
}

/**
 * After-trip isolation of cable against motor. `joined`: at the drive end. `cable`: alone, both ends free.
 * `bonded`: alone, its PE core, screen and idle cores joined to ground. `motor`: alone, at its connector, to its shell.
 * A stage that is absent was not taken; one that is present with readings missing was begun and never gives `go`.
 * Without `windingTemperature` (°C) no winding passes, and only what is bad at every usual one is bad.
 * What is not stated of idle cores, filter, length and material counts as not known, never as good.
 * `suspectedAnyway`: the symptom points here (trips when the cable moves), so a good joined reading clears neither part.
 */
export interface IsolationInput {
  joined: StageReadings;
  cable?: StageReadings;
  bonded?: Phases<Reading>;
  motor?: StageReadings;
  /** PE of the joined stage once more, contacts cleaned, leads zeroed. */
  peAgain?: Reading;
  /** What is known of the PE core and of the instrument, and what else connects the motor frame to ground. */
  peConductor?: PeConductor;
  frameEarthed?: FrameEarthed;
  moreOfCable?: MoreEvidence;
  moreOfMotor?: MoreEvidence;
  idleCores?: IdleCores;
  filter?: EndFilter;
  /** Length of the cable in m, insulation of its cores, and its temperature in °C. */
  cableMetres?: Reading;
  cableMaterial?: CableInsulation | 'not-stated';
  cableTemperature?: Reading;
  /** Both cable ends and the screen were looked at and are free: then a PE core that reads low is the cable's fault. */
  cableEndsChecked: boolean;
  suspectedAnyway: boolean;
  testVoltage: Reading;
  windingTemperature: Reading;
  /** Winding temperature at the motor stage (°C); without it, that of the joined stage applies. */
  motorTemperature?: Reading;
  correction: CorrectionMethod;
  instrument?: Instrument;
}

/**
 * `suspect`: it fails the after-trip limit, so nothing new is connected to it, but that alone proves it not bad.
 * `proven-bad`: at least two independent readings speak against it.
 */
export type PartStatus = 'proven-good' | 'proven-bad' | 'suspect' | 'not-suspect' | 'undecided' | 'not-tested';

type PePayloads = Record<`${'joined' | 'motor'}-pe-${PeJudgement}`, Nothing>;

export interface IsolationPayloads
  extends FigurePayloads,
    StagePayloads,
    FitPayloads,
    CableEndPayloads,
    ConvictionPayloads,
    PeRemarkPayloads,
    TestVoltagePayloads,
    PePayloads,
    ReminderPayloads {
  'cable-pe-isolated': Nothing;
  'cable-pe-unclear': Nothing;
  'cable-pe-low': Nothing;
  'cable-pe-low-ends-checked': Nothing;
  'cable-pe-length-explains': Nothing;
  'cable-pe-missing': Nothing;
  'bonded-row-missing': Nothing;
  'motor-two-shorts': Nothing;
  'motor-pins-mistaken': Nothing;
  'cable-pe-broken-implied': Nothing;
  'good-joined-bad-part': Nothing;
  'cores-leak-to-each-other': Nothing;
  'core-leaks-to-idle-core': { phase: Phase };
  'joined-pe-suspect': Nothing;
  'joined-pe-again-short': Nothing;
  'bad-joined-good-parts': Nothing;
  'joined-good': Nothing;
  'symptom-outweighs-joined': Nothing;
  'part-not-known': Nothing;
  'also-test-other-part': Nothing;
}

export type IsolationFinding = FindingOf<IsolationPayloads>;

export type IsolationStepCode =
  | FigureStepCode
  | CableEndStepCode
  | 'read-pe-again'
  | 'read-cable-again'
  | 'read-motor-again'
  | 'compare-cable'
  | 'compare-motor'
  | 'state-cable-length'
  | 'find-the-water'
  | 'measure-joined'
  | 'repeat-joined'
  | 'state-winding-temperature'
  | 'let-motor-cool'
  | 'let-motor-warm'
  | 'neither-suspect'
  | 'flex-cable'
  | 'measure-pe-low-range'
  | 'use-insulation-tester'
  | 'state-test-voltage'
  | 'test-cable-alone'
  | 'complete-cable'
  | 'check-ends-free'
  | 'take-bonded-row'
  | 'test-motor-alone'
  | 'complete-motor'
  | 'check-pin-order'
  | 'mend-motor-pe'
  | 'find-broken-pe'
  | 're-measure-contradiction'
  | 'replace-cable'
  | 'replace-motor'
  | 'replace-both';

export interface IsolationAssessment extends Assessment<IsolationFinding, Step<IsolationStepCode>> {
  parts: { cable: PartStatus; motor: PartStatus; protectiveConductor: PartStatus };
}
