import type { Assessment, FindingOf, Nothing, Step } from '../../../kernel/assessment/assessment.ts';
import type { BusPayloads } from '../../../kernel/assessment/bus-discharge.ts';
import type { FigurePayloads, FigureStepCode } from '../../../kernel/assessment/possible-figures.ts';
import type { Instrument } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import type { BrakeCause, BrakeRelease, ReleasePayloads } from './release.ts';

/** `held`: on its support or pinned, or it can't fall. */
export type BrakeAxis = 'held' | 'not-held' | 'not-stated';

/** Brake plug and motor leads at the drive, while anything was read in ohms. */
export type BrakeLeads = 'off' | 'connected' | 'not-stated';

/** `electronics`: a rectifier, an economy circuit or a pulsed output lies between the terminals and the coil. */
export type BrakeCircuit = 'plain' | 'electronics' | 'not-stated';

/** The cable between drive and brake. */
export interface BrakeCable {
  /** One way, in m. */
  metres: Reading;
  /** Of one brake core in mm², one of the table's. */
  squareMillimetres?: number;
}

export interface BrakeInput {
  axis: BrakeAxis;
  /** DC+ to DC−, just before the readings in ohms, in V. */
  busVoltage: Reading;
  leads: BrakeLeads;
  circuit: BrakeCircuit;
  /** Of the plate, in V DC. */
  ratedVolts: Reading;
  /** Of the plate, in W at 20 °C. */
  ratedWatts: Reading;
  /** Of the plate or manual, in Ω at 20 °C; counts before volts and watts. */
  ratedOhms: Reading;
  /** In °C. */
  coilTemperature: Reading;
  /** The coil at the motor, both ways round, the higher figure, in Ω. */
  atMotor: Reading;
  /** The same from the drive's end of the cable, in Ω. */
  atDrive: Reading;
  /** B+ to B− of the cable alone, in Ω. */
  coresApart: Reading;
  /** The lower of the two cores to U, V and W, in Ω. */
  toPhases: Reading;
  /** The lower of the two cores to PE and screen, in Ω. */
  toPe: Reading;
  /** At the brake's pins at the motor, behind the cable, connected and released, in V DC. */
  plugVolts: Reading;
  /** At the terminals that feed the cable, at the same moment, in V DC. */
  sourceVolts: Reading;
  /** Of the voltage, by the brake's manual, in percent. */
  supplyTolerance: Reading;
  cable: BrakeCable;
  release: BrakeRelease;
  instrument?: Instrument;
}

/** A coil at 20 °C beside the figure of its plate, in Ω. */
export interface CoilFigures {
  ohms: number;
  expectedOhms: number;
}

/** What the two cores add, and what length, cross-section and contacts explain, in Ω. */
interface CoreFigures {
  addedOhms: number;
  explainedOhms: number;
}

interface SupplyFigures {
  /** Absent if no single figure was read. */
  volts?: number;
  ratedVolts: number;
  tolerancePercent: number;
}

interface Drop {
  volts: number;
  percent: number;
}

export interface BrakePayloads extends FigurePayloads, BusPayloads, ReleasePayloads {
  'brake-axis-not-held': Nothing;
  'brake-axis-not-stated': Nothing;
  'brake-leads-connected': Nothing;
  'brake-leads-not-stated': Nothing;
  'brake-not-extra-low': { ratedVolts: number };
  'brake-electronics': Nothing;
  'brake-circuit-not-stated': Nothing;
  'brake-plate-missing': Nothing;
  'brake-plate-contradicts': { byPower: number; stated: number };
  'brake-coil-missing': Nothing;
  'brake-coil-temperature-missing': Nothing;
  'brake-coil-fits': CoilFigures & { tolerancePercent: number };
  'brake-coil-low': CoilFigures;
  'brake-coil-high': CoilFigures;
  'brake-coil-open': Nothing;
  /** Over a range that may end below the ohms of a sound coil. */
  'brake-coil-over-range': Nothing;
  'brake-coil-too-close': { expectedOhms: number; tolerancePercent: number };
  'brake-core-open': Nothing;
  'brake-cores-touch': Nothing;
  /** Lower through the cable, by what a coil that cools may explain. */
  'brake-cores-below': Nothing;
  'brake-cable-not-stated': Nothing;
  'brake-cores-fit': CoreFigures;
  'brake-cores-high': CoreFigures;
  'brake-cores-too-close': { explainedOhms: number };
  'brake-cores-not-measured': { readings: string[] };
  'brake-core-path': { readings: string[]; leastOhms: number };
  'brake-core-unclear': { readings: string[]; leastOhms: number };
  'brake-cores-free': { leastOhms: number };
  'brake-supply-missing': Nothing;
  'brake-supply-fits': SupplyFigures & { computed: boolean };
  'brake-supply-low': SupplyFigures;
  'brake-supply-high': SupplyFigures;
  'brake-supply-too-close': SupplyFigures;
  'brake-drop-contradicts': Nothing;
  'brake-drop-high': Drop;
  'brake-drop-unclear': Drop;
  'brake-drop': Drop;
  'brake-drop-expected': Drop;
}

export type BrakeFinding = FindingOf<BrakePayloads>;

export type BrakeStepCode =
  | FigureStepCode
  | 'support-axis-first'
  | 'measure-bus'
  | 'wait-and-measure-bus'
  | 'take-leads-off'
  | 'look-between'
  | 'read-plate'
  | 'measure-coil'
  | 'measure-coil-temperature'
  | 'repeat-coil-with-care'
  | 'state-brake-cable'
  | 'separate-cable'
  | 'measure-brake-cores'
  | 'note-range'
  | 'measure-supply'
  | 'find-drop'
  | 'find-feed-fault'
  | 'ask-brake-manual'
  | 'listen-to-release'
  | 'replace-coil'
  | 'have-brake-tested';

export interface BrakeAssessment extends Assessment<BrakeFinding, Step<BrakeStepCode>> {
  /** Why the brake does not open as it should; absent unless it was seen to stay shut or to drag. */
  cause?: BrakeCause;
}
