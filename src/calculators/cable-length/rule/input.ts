import type { Assessment, FindingOf, Nothing, Step } from '../../../kernel/assessment/assessment.ts';
import type { FigurePayloads, FigureStepCode } from '../../../kernel/assessment/possible-figures.ts';
import type { CableInsulation } from '../../../kernel/electrics/cable-insulation.ts';
import type { Instrument, Interval } from '../../../kernel/reading/interval.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';

export interface CableLengthInput {
  insulation: CableInsulation;
  /** Over the insulation of one core, in mm. */
  insulationDiameter: Reading;
  /** Of the conductor in it, in mm. */
  conductorDiameter: Reading;
  /** Of the tested run, in m. */
  length: Reading;
  /** One core against all others joined with screen and PE, in Ω, after one minute. */
  reading: Reading;
  /** Of the cable, in °C. */
  temperature: Reading;
  instrument?: Instrument;
}

interface BothLimits {
  /** The go/no-go point after a trip. */
  pointOhms: number;
  /** The least resistance of a new cable: a range, because of the constant and the last digits. */
  newOhms: Interval;
}

/** The length up to which the point applies unchanged, and the length of this cable. */
interface Lengths {
  holdsToMetres: number;
  lengthMetres: number;
}

export interface CableLengthPayloads extends FigurePayloads {
  'cable-data-missing': Nothing;
  'diameters-impossible': Nothing;
  'cable-reading-missing': Nothing;
  'cable-temperature-missing': Nothing;
  'cable-passes-both': BothLimits;
  'cable-below-new': BothLimits;
  'cable-long-enough-to-explain': BothLimits;
  'cable-fails': BothLimits;
  'cable-below-machine-minimum': { minimumOhms: number };
  'cable-too-close': BothLimits;
  'point-still-holds': Lengths;
  'point-holds-no-more': Lengths;
  'constant-recalled': Nothing;
}

export type CableLengthFinding = FindingOf<CableLengthPayloads>;

export type CableLengthStepCode =
  | FigureStepCode
  | 'measure-cable-data'
  | 'measure-cable'
  | 'measure-cable-temperature'
  | 'compare-cores'
  | 'test-parts-of-run'
  | 'compare-with-earlier'
  | 'repeat-cable-exactly';

export interface CableLengthAssessment extends Assessment<CableLengthFinding, Step<CableLengthStepCode>> {
  /**
   * The least resistance of a new cable of this construction, in Ω at the temperature of the tables; absent without its
   * data.
   */
  expected?: Interval;
  /** The reading corrected to that temperature, in Ω. */
  corrected?: Interval;
}
