import { between, betweenDecades, chance, oneOf, type Random } from '../../kernel/random.ts';
import { field } from './field-figures.ts';

/**
 * One range: its largest reading, and the test source behind the leads, in volts and ohms. A negative voltage: minus is on
 * the red lead.
 */
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
  /** An automatic range is sought from the lowest up, or from the highest down; up if absent. */
  ranging?: 'up' | 'down';
}

/** A person's instruments. `error`: constant error of each, as a share of its stated accuracy, −1 to 1. */
export interface Instruments {
  error: number;
  leadOhms: number;
  ohms: MeterFunction;
  diode: MeterFunction;
  volts: MeterFunction;
  milliohms: MeterFunction;
  insulation: MeterFunction & { volts: number; upperLimit: number };
  /** Constant error of the thermometer, in kelvins. */
  thermometerKelvin: number;
}

const decade = (fullScale: number, sourceVolts: number, sourceOhms: number): Range => ({
  fullScale,
  sourceVolts,
  sourceOhms,
});

/**
 * Invented hand-held instruments with figures usual in the trade (project judgement): 7200 counts, test source below a
 * diode's knee from 7.2 kΩ up.
 */
export const multimeter = {
  ohms: {
    ranges: [
      decade(720, 0.6, 600),
      decade(7.2e3, 0.5, 10e3),
      decade(72e3, 0.5, 100e3),
      decade(720e3, 0.5, 1e6),
      decade(7.2e6, 0.5, 10e6),
      decade(72e6, 0.5, 20e6),
    ],
    percent: 1.2,
    counts: 4,
    displayCounts: 7200,
  },
  /** About a milliampere through a conducting diode. */
  diode: { ranges: [decade(2.4, 3, 2.5e3)], percent: 1.4, counts: 3, displayCounts: 2400 },
  volts: {
    ranges: [0.72, 7.2, 72, 720, 1000].map((fullScale) => decade(fullScale, 0, 10e6)),
    percent: 0.7,
    counts: 4,
    displayCounts: 7200,
  },
} satisfies Record<string, MeterFunction>;

/** Four leads, so that lead resistance does not count; a tenth of an ampere in the low ranges. */
const milliohmMeter: MeterFunction = {
  ranges: [decade(0.72, 5, 50), decade(7.2, 5, 50), decade(72, 5, 500), decade(720, 5, 5e3)],
  percent: 0.3,
  counts: 4,
  displayCounts: 7200,
};

/**
 * 1.5 mA short-circuited: between the 1 mA and the 15 mA of IEC 61557-2 (content/limits). Upper limits
 * and errors are invented, with figures usual for such testers (project judgement).
 */
export function insulationTester(volts: number, upperLimit: number, percent: number): Instruments['insulation'] {
  const sourceOhms = volts / 1.5e-3;
  const fullScales = [72e6, 720e6, 7.2e9, 72e9].filter((full) => full < upperLimit);
  return {
    ranges: [...fullScales, upperLimit].map((fullScale) => decade(fullScale, volts, sourceOhms)),
    percent,
    counts: 6,
    displayCounts: 7200,
    volts,
    upperLimit,
  };
}

export function drawInstruments(random: Random): Instruments {
  const [upperLimit, percent] = oneOf(random, [
    [700e6, 6.4],
    [1.8e9, 3.8],
    [14e9, 9],
  ] as const);
  return {
    error: between(random, -1, 1),
    leadOhms: between(random, 0.1, 0.25),
    ...multimeter,
    milliohms: milliohmMeter,
    insulation: insulationTester(500, upperLimit, percent),
    thermometerKelvin: 0,
  };
}

/**
 * The instruments that people bring: a multimeter with 0.3 to 3 V at its tips, plus or minus on red, that seeks its
 * range from either end, and a thermometer that is a few kelvins off.
 */
export function drawFieldInstruments(random: Random): Instruments {
  const tidy = drawInstruments(random);
  const sign = chance(random, field.negativeRed) ? -1 : 1;
  const low = betweenDecades(random, ...field.lowRangeVolts);
  const high = Math.min(low, betweenDecades(random, ...field.highRangeVolts));
  const ranging = chance(random, field.rangedDown) ? 'down' : 'up';
  return {
    ...tidy,
    thermometerKelvin: between(random, -field.thermometerKelvin, field.thermometerKelvin),
    ohms: {
      ...tidy.ohms,
      ranging,
      // The lowest range has the most voltage; the others have less.
      ranges: tidy.ohms.ranges.map((range, position) => ({
        ...range,
        sourceVolts: sign * (position === 0 ? low : high),
      })),
    },
  };
}
