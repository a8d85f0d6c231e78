import type { Instrument } from './interval.ts';
import type { FigureCode, FigureStepCode } from './possible-figures.ts';
import type { Reading } from './reading.ts';

/** All that may be known of a bus; each may be missing. Several ways to the time constant are held against each other. */
export interface DischargeInput {
  /** When the supply was cut, in V. */
  startVoltage: Reading;
  /** Of the whole bus, in F, with its tolerance in percent. */
  capacitance: Reading;
  capacitanceTolerance: Reading;
  /** Everything that discharges it, in Ω, with its tolerance in percent. */
  bleeder: Reading;
  bleederTolerance: Reading;
  /** As stated, in s. */
  timeConstant: Reading;
  /** Two voltmeter readings of the bus in V, and the seconds between them, with nothing feeding the bus. */
  first: Reading;
  second: Reading;
  elapsed: Reading;
  /** Waiting time on the label of the drive, in s. */
  label: Reading;
  /** The voltmeter. */
  instrument?: Instrument;
}

export type BusDischargeCode =
  | FigureCode
  | 'only-the-meter'
  | 'start-missing'
  | 'discharge-data-missing'
  | 'value-impossible'
  | 'pair-incomplete'
  | 'times-equal'
  | 'voltage-rises'
  | 'no-fall-shown'
  | 'no-end'
  | 'longest-wait'
  | 'longest-wait-from-reading'
  | 'slower-than-values'
  | 'faster-than-values'
  | 'slower-than-label'
  | 'values-beyond-label'
  | 'longer-than-standard'
  | 'tail-slower'
  | 'usual-tolerance'
  | EnergyCode;

export type EnergyCode = 'energy-arc' | 'energy-shock' | 'energy-reflex' | 'energy-burn' | 'energy-below';

export type DischargeStepCode =
  | FigureStepCode
  | 'type-discharge-data'
  | 'repeat-pair'
  | 'find-feed'
  | 'suspect-bleeder'
  | 'wait-then-measure'
  | 'prove-dead';
