import { between, oneOf, type Random } from './random.ts';

/** One range: what it shows at most, and the test source behind the leads, in volts and ohms. */
export interface Range {
  fullScale: number;
  sourceVolts: number;
  sourceOhms: number;
}

/**
 * What a maker states of one function: limits of error as percent of reading and counts of the last digit, and the
 * display's counts at full scale.
 */
export interface MeterFunction {
  ranges: readonly Range[];
  percent: number;
  counts: number;
  displayCounts: number;
}

/** A person's instruments. `error` is how far each is off, as a share of its stated accuracy, −1 to 1; it stays so. */
export interface Instruments {
  error: number;
  leadOhms: number;
  ohms: MeterFunction;
  diode: MeterFunction;
  volts: MeterFunction;
  milliohms: MeterFunction;
  insulation: MeterFunction & { volts: number; upperLimit: number };
}

const decade = (fullScale: number, sourceVolts: number, sourceOhms: number): Range => ({
  fullScale,
  sourceVolts,
  sourceOhms,
});

/** Typical hand-held instruments, project judgement: 6000 counts, test source below a diode's knee from 6 kΩ up. */
export const multimeter = {
  ohms: {
    ranges: [
      decade(600, 0.6, 600),
      decade(6e3, 0.5, 10e3),
      decade(60e3, 0.5, 100e3),
      decade(600e3, 0.5, 1e6),
      decade(6e6, 0.5, 10e6),
      decade(60e6, 0.5, 20e6),
    ],
    percent: 0.9,
    counts: 2,
    displayCounts: 6000,
  },
  /** About a milliampere through a conducting diode. */
  diode: { ranges: [decade(2, 3, 2.5e3)], percent: 1, counts: 2, displayCounts: 2000 },
  volts: {
    ranges: [0.6, 6, 60, 600, 1000].map((fullScale) => decade(fullScale, 0, 10e6)),
    percent: 0.5,
    counts: 2,
    displayCounts: 6000,
  },
} satisfies Record<string, MeterFunction>;

/** Four leads, so that its own count for nothing; a tenth of an ampere in the low ranges. */
const milliohmMeter: MeterFunction = {
  ranges: [decade(0.6, 5, 50), decade(6, 5, 50), decade(60, 5, 500), decade(600, 5, 5e3)],
  percent: 0.2,
  counts: 3,
  displayCounts: 6000,
};

/**
 * 1.5 mA short-circuited: between the 1 mA and the 15 mA of IEC 61557-2 (content/limits). The steps of the display
 * widen with the value; upper limits and errors as such testers have them, typical, project judgement.
 */
export function insulationTester(volts: number, upperLimit: number, percent: number): Instruments['insulation'] {
  const sourceOhms = volts / 1.5e-3;
  const fullScales = [60e6, 600e6, 6e9, 60e9].filter((full) => full < upperLimit);
  return {
    ranges: [...fullScales, upperLimit].map((fullScale) => decade(fullScale, volts, sourceOhms)),
    percent,
    counts: 5,
    displayCounts: 6000,
    volts,
    upperLimit,
  };
}

export function drawInstruments(random: Random): Instruments {
  const [upperLimit, percent] = oneOf(random, [
    [550e6, 5],
    [2e9, 3],
    [20e9, 10],
  ] as const);
  return {
    error: between(random, -1, 1),
    leadOhms: between(random, 0.1, 0.25),
    ...multimeter,
    milliohms: milliohmMeter,
    insulation: insulationTester(500, upperLimit, percent),
  };
}
