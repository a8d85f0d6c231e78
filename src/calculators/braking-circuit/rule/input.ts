import type { Assessment, FindingOf, Nothing, Step } from '../../../kernel/assessment/assessment.ts';
import type { BusPayloads } from '../../../kernel/assessment/bus-discharge.ts';
import type { FigurePayloads, FigureStepCode } from '../../../kernel/assessment/possible-figures.ts';
import type { Instrument } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';

/** What switches in the resistor’s housing when it gets hot. */
export type ThermalSwitch = 'none' | 'opens-hot' | 'other' | 'not-stated';

export interface BrakingCircuitInput {
  /** DC+ to DC−, just before, in V. */
  busVoltage: Reading;
  /** Of the plate, all resistors together, in Ω. */
  plate: Reading;
  /** Of the plate or manual, in percent. */
  plateTolerance: Reading;
  /** End to end, both leads off the drive, in Ω. */
  ohms: Reading;
  /** While its lead was moved by hand. */
  lead: 'steady' | 'jumps' | 'not-stated';
  /** The lower of both ends to housing and PE, by multimeter, in Ω. */
  toHousing: Reading;
  /** Both ends joined to the housing, by insulation tester, in Ω. */
  insulation: Reading;
  thermal: ThermalSwitch;
  /** Its contact, resistor cool, in Ω. */
  thermalOhms: Reading;
  /** Diode test at the drive, resistor off, in V. B is the switched terminal. Red on B, black on DC+. */
  upperConducting: Reading;
  /** Red on DC+, black on B. */
  upperBlocking: Reading;
  /** Red on DC−, black on B. */
  lowerConducting: Reading;
  /** Red on B, black on DC−. */
  lowerBlocking: Reading;
  /** What looks odd was read a second time, tips lifted in between. */
  again: boolean;
  instrument?: Instrument;
}

/** B to DC+ has the freewheel diode, B to DC− the chopper transistor. */
export type ChopperPath = 'upper' | 'lower';

interface AtPath {
  path: ChopperPath;
}

interface Ohms {
  ohms: number;
  plateOhms: number;
}

export interface BrakingPayloads extends FigurePayloads, BusPayloads {
  'chopper-negative': Nothing;
  'resistor-plate-missing': Nothing;
  'resistor-missing': Nothing;
  'resistor-fits': Ohms & { tolerancePercent: number };
  'resistor-open': Nothing;
  /** Over a range that may end below the ohms of a sound one. */
  'resistor-over-range': Nothing;
  'resistor-low': Ohms;
  'resistor-high': Ohms;
  'resistor-too-close': { plateOhms: number; tolerancePercent: number };
  'resistor-lead-jumps': Nothing;
  'resistor-lead-not-stated': Nothing;
  'housing-missing': Nothing;
  'housing-path': { leastOhms: number };
  'housing-unclear': { leastOhms: number };
  'housing-insulation-missing': Nothing;
  'housing-insulation-bad': { leastOhms: number };
  'housing-insulation-unclear': { leastOhms: number };
  'housing-free': { leastOhms: number };
  'thermal-none': Nothing;
  'thermal-closed': Nothing;
  'thermal-open': Nothing;
  'thermal-unclear': Nothing;
  'thermal-other': Nothing;
  'thermal-not-stated': Nothing;
  'chopper-missing': AtPath;
  'chopper-sound': AtPath;
  'chopper-short': AtPath & { bothWays: boolean };
  'chopper-leaky': AtPath;
  'chopper-open': AtPath;
  'chopper-exchanged': AtPath;
  'chopper-unclear': AtPath;
}

export type BrakingFinding = FindingOf<BrakingPayloads>;

export type BrakingStepCode =
  | FigureStepCode
  | 'measure-bus'
  | 'wait-and-measure-bus'
  | 'read-resistor-plate'
  | 'measure-resistor'
  | 'note-resistor-range'
  | 'read-twice'
  | 'read-at-resistor'
  | 'measure-housing'
  | 'test-housing'
  | 'replace-resistor'
  | 'look-at-thermal'
  | 'measure-chopper'
  | 'compare-chopper'
  | 'replace-drive'
  | 'measure-bus-again';

export type BrakingAssessment = Assessment<BrakingFinding, Step<BrakingStepCode>>;
