import type { FindingOf, Nothing } from '../../../kernel/assessment/assessment.ts';
import type { FigurePayloads, FigureStepCode } from '../../../kernel/assessment/possible-figures.ts';
import type { Instrument } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';

/**
 * What may be known of a bus; each item may be missing. If the time constant follows in several ways, they are
 * compared.
 */
export interface DischargeInput {
  /** The bus when the supply was cut, in V. */
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

/** To `touchVolts`, from the moment that the supply was cut or from the first reading; `fromSecondSeconds` if there is a second. */
interface LongestWait {
  touchVolts: number;
  shortestSeconds: number;
  longestSeconds: number;
  fromSecondSeconds?: number;
}

interface TimeConstants {
  measuredSeconds: number;
  statedSeconds: number;
}

interface AgainstLabel {
  /** The least time to `volts`. */
  seconds: number;
  labelSeconds: number;
  volts: number;
}

/** What the bus holds, and the voltage it was charged to. */
interface Stored {
  joules: number;
  volts: number;
}

export interface EnergyPayloads {
  'energy-arc': Stored;
  'energy-shock': Stored;
  'energy-reflex': Stored;
  'energy-burn': Stored;
  'energy-below': Stored;
}

export interface DischargePayloads extends FigurePayloads, EnergyPayloads {
  'only-the-meter': Nothing;
  'start-missing': Nothing;
  'discharge-data-missing': Nothing;
  'value-impossible': Nothing;
  'pair-incomplete': Nothing;
  'times-equal': Nothing;
  'voltage-rises': Nothing;
  /** The least time constant that the readings allow, if they give one. */
  'no-fall-shown': { atLeastSeconds?: number };
  /** It stands at about half of what it was charged to: two capacitors in series, one without its resistor. */
  'stands-near-half': { startVolts: number; standsVolts: number };
  'no-end': Nothing;
  'longest-wait': LongestWait;
  'longest-wait-from-reading': LongestWait;
  'slower-than-values': TimeConstants;
  'faster-than-values': TimeConstants;
  'slower-than-label': AgainstLabel;
  'values-beyond-label': AgainstLabel;
  'longer-than-standard': { longestSeconds: number; volts: number; withinSeconds: number };
  'tail-slower': Nothing;
  /** The tolerances of capacitors and bleeder. */
  'usual-tolerance': { capacitancePercent: number; bleederPercent: number };
}

export type DischargeFinding = FindingOf<DischargePayloads>;
export type EnergyFinding = FindingOf<EnergyPayloads>;

export type DischargeStepCode =
  | FigureStepCode
  | 'type-discharge-data'
  | 'repeat-pair'
  | 'find-feed'
  | 'suspect-bleeder'
  | 'treat-as-live'
  | 'wait-then-measure'
  | 'prove-dead';
