import type { Assessment } from './assessment.ts';
import type { Instrument } from './interval.ts';
import type { MachineClass } from './machine-minimum.ts';
import type { Phases } from './phases.ts';
import type { FigureCode, FigureStepCode } from './possible-figures.ts';
import type { PeJudgement } from './protective-conductor.ts';
import type { Reading } from './reading.ts';
import type { CorrectionMethod } from './temperature-correction.ts';
import type { ReminderCode } from './test-reminders.ts';
import type { TestVoltageCode } from './test-voltage.ts';
import type { WindingJudgement } from './winding-insulation.ts';

/** After a trip something has happened: the strict point on the reading. Routine: published minima, corrected. */
export type Occasion = 'after-trip' | 'routine';

/**
 * Insulation of a motor, or of motor and cable, to PE. Resistances in Ω, voltages in V (rated: line to line),
 * temperatures in °C, humidity in %, duration in min. `pe` is the PE pin to the frame, on the lowest resistance range of a
 * multimeter; `instrument` describes the insulation tester. Air and humidity are optional, but only together.
 */
export interface InsulationInput {
  occasion: Occasion;
  readings: Phases<Reading>;
  pe: Reading;
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

export type InsulationCode =
  | FigureCode
  | TestVoltageCode
  | `phase-${WindingJudgement | 'missing'}`
  | `pe-${PeJudgement}`
  | 'temperature-missing'
  | 'temperature-out-of-validity'
  | 'winding-at-dew-point'
  | 'dew-point-incomplete'
  | 'phases-differ'
  | 'air-not-stated'
  | 'form-wound-below-1-kv'
  | 'charts-do-not-apply'
  | ReminderCode
  | 'insulation-passed'
  | 'insulation-failed';

export type InsulationStepCode =
  | FigureStepCode
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

export type InsulationAssessment = Assessment<InsulationCode, InsulationStepCode>;
