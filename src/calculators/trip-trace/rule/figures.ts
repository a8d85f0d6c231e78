/** How the moment of the trip was found. */
export type TripFrom = 'typed' | 'time-zero' | 'currents-end' | 'file-end';

/** The phases by place: 0 is U, 1 is V, 2 is W. */
export type PhasePlace = 0 | 1 | 2;

/**
 * What was measured in a trace, before anything is concluded from it. Currents in A (or in per cent of full scale if
 * `inAmperes` is false), times in s, bus in V (`busInVolts`), speeds in min⁻¹ (`speedInRpm`). Optional parts are absent if the
 * columns for them are.
 */
export interface TraceFigures {
  file: string;
  rows: number;
  /** Usual time from one sample to the next. */
  sampleSeconds: number;
  spanSeconds: number;
  /** Of the moment of the trip, on the time scale of the file. */
  tripSeconds: number;
  tripFrom: TripFrom;
  /** Samples behind the trip. */
  samplesAfter: number;
  inAmperes: boolean;
  busInVolts: boolean;
  speedInRpm: boolean;
  /** Pole pairs that the figures were measured with. */
  polePairs?: number;
  /** Phases that were measured; the third of two is minus their sum. */
  measured: 2 | 3;
  /** Standard deviation of one sample of a phase current, from its second differences. */
  noise: number;
  /** Samples are missing at the trip: the file has a gap there. */
  gapAtTrip: boolean;
  /** The highest figure stands still over several samples: the recorder or a sensor is at its end. */
  clippedAt?: number;
  peaks: PeakFigures;
  slope: SlopeFigures;
  sum?: SumFigures;
  zero?: ZeroFigures;
  rotation?: RotationFigures;
  speedJump?: SpeedJumpFigures;
  oscillation?: OscillationFigures;
  motion?: MotionFigures;
  bus?: BusFigures;
}

export interface PeakFigures {
  /** Highest phase current up to the trip. */
  atTrip: number;
  /** Highest one before the last moments. */
  before: number;
  /** Time that `before` was taken from. */
  beforeSeconds: number;
}

export interface SlopeFigures {
  /** Largest rise of a phase current within one sample, in the last moments. */
  rise: number;
  /** The change of each phase in that sample. */
  changes: readonly [number, number, number];
  /** The same rise earlier in the file. */
  riseBefore: number;
  /** The same of the vector of the three currents (amplitudes kept), while it grows. */
  vector: { rise: number; changes: readonly [number, number, number]; riseBefore: number };
  /** Samples from half of the highest current to the highest. */
  risingSamples: number;
  /** Largest rise within one of these but the last, and the rise of the last. */
  risingMost: number;
  risingLast: number;
}

export interface SumFigures {
  /** Hardly a sample differs from zero by more than a step: one of the three is computed. */
  zero: boolean;
  noise: number;
  /** Median before the trip. */
  offset: number;
  /** Largest distance from the median that lasts for three samples, in the last moments and before them. */
  atTrip: number;
  before: number;
  /** The same of one sample alone, at the trip or beside it. */
  alone: number;
  /** The sum follows one phase: its share, the square of the correlation, and how much of the sum that makes at the most. */
  follows?: { phase: PhasePlace; share: number; fit: number; amps: number };
}

export interface ZeroFigures {
  phase: PhasePlace;
  seconds: number;
  /** The stretch lasts up to the trip. */
  upToTrip: boolean;
  /** Highest current of the other two meanwhile. */
  others: number;
  /** Electrical turns that the rotor moved by meanwhile, by its speed and pole pairs, or one pair if they are not known. */
  turns?: number;
}

export interface RotationFigures {
  windows: number;
  /** Frequency of the current by speed, in Hz per min⁻¹ times 60: the pole pairs that it shows. */
  pairsBefore: number;
  /** Spread of it over the windows before the last ones. */
  spread: number;
  /** In the last windows before the trip: measured frequency in Hz, and the speed. */
  lastHertz: number;
  lastRpm: number;
  /** Seconds that these windows cover. */
  lastSeconds: number;
}

export interface SpeedJumpFigures {
  /** Change of the speed within two samples, just before the trip, and the largest one earlier, both as a share of the highest speed. */
  share: number;
  before: number;
}

export interface OscillationFigures {
  of: 'torque-current' | 'torque' | 'current' | 'speed';
  hertz: number;
  cycles: number;
  /** Amplitude at the end, as a share of the highest current or torque, and by what it has grown. */
  share: number;
  growth: number;
  /** Spread of the half periods, as a share of their mean. */
  irregularity: number;
  /** Frequency of the currents meanwhile, in Hz. */
  electricalHertz?: number;
}

export interface MotionFigures {
  /** Highest speed before, and the speed at the trip, as they are in the file. */
  speedBefore: number;
  speedAtTrip: number;
  /** Highest speed of the last 50 ms. */
  speedRecent: number;
  /** Time in which the current rose to the trip. */
  risingSeconds: number;
  /** Whether the motor drove in the direction of its motion; undefined if nothing tells. */
  driving?: boolean;
  /** Speed that falls while the motor drives: its share of the highest speed. */
  lostWhileDriving: number;
  /** Most speed that is gained in one stretch against a strong torque command: its share of the highest speed. Absent without such a column. */
  gainedAgainst?: number;
  /** Time up to the trip in which a strong torque did not move the shaft. */
  stalledSeconds: number;
  /** The current that constant speed took at the end, by what it took first, in comparable stretches. */
  loadGrowth?: number;
  /** The current at the end in it. */
  loadCurrent?: number;
}

export interface BusFigures {
  before: number;
  atTrip: number;
  least: number;
  most: number;
  /** Lowest bus before the last tenth of a second. */
  leastEarlier: number;
  /** Largest rise and fall from the usual in the whole recording up to the trip, as a share. */
  moved: number;
  /** The bus was highest just before the trip: nothing held it. */
  rising: boolean;
  /** Highest current until the bus had begun to fall. */
  currentBeforeFall?: number;
  /** The speed fell while the bus was highest. */
  slowing?: boolean;
}
