import { limitValue } from '../../../kernel/limits.ts';
import type { ValueReading } from '../../../kernel/reading/reading.ts';

/** From here on, in ohms, a resistance of a question was read with an insulation tester, below it with a multimeter. */
const insulationFrom = 1e6;
/**
 * What a hand-held multimeter, a contact thermometer on a housing and a hygrometer of the trade are off by: percent of
 * the reading, kelvins, points of relative humidity. Project judgement.
 */
const multimeterPercent = 1;
const thermometerKelvin = 3;
const hygrometerPoints = 5;

/**
 * By how much an instrument may be wrong that showed this reading, in its unit. Zero for what is no measurement: a
 * time, a length from a drawing, a count.
 */
export function accuracyOf({ value, unit }: ValueReading): number {
  switch (unit) {
    case 'Ω':
      return (value / 100) * (value < insulationFrom ? multimeterPercent : limitValue('insulation-tester-error'));
    case 'V':
      return (value / 100) * multimeterPercent;
    case '°C':
      return thermometerKelvin;
    case '%':
      return hygrometerPoints;
    default:
      return 0;
  }
}
