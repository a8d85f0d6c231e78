import type { CorrectionMethod } from '../../src/kernel/electrics/correction-validity.ts';
import type { Instrument } from '../../src/kernel/reading/interval.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';
import { figure, span } from './readings.ts';

// The published rules of temperature, repeated on purpose: no figure and no line here is taken from the code under
// test.

/** Halves for each 10 °C, 0 to 100 °C. */
const halving = (celsius: number) => (celsius >= 0 && celsius <= 100 ? 2 ** (celsius / 10) : Number.NaN);

/** IEEE 43-2013, thermosetting insulation, 10 to 85 °C, its two formulas meeting at 40 °C. Recalled. */
function thermosetting(celsius: number): number {
  if (!(celsius >= 10 && celsius <= 85)) return Number.NaN;
  return Math.exp(-(celsius < 40 ? 1245 : 4230) * (1 / (celsius + 273) - 1 / 313));
}

/** The handbook table of factors to 20 °C for solid insulation, a row each 5 °C from 0 °C. Recalled. */
const rows = [0.4, 0.45, 0.5, 0.75, 1, 1.3, 1.6, 2.05, 2.5, 3.25, 4, 5.2, 6.4, 8.7, 10];
function table(celsius: number): number {
  const at = celsius / 5;
  const [below, above] = [rows[Math.floor(at)], rows[Math.ceil(at)]];
  if (below === undefined || above === undefined) return Number.NaN;
  return below * (above / below) ** (at - Math.floor(at));
}

const laws: Record<CorrectionMethod, (celsius: number) => number> = { halving, thermosetting, table };

/**
 * The lowest corrected value of a reading over all methods valid at this temperature; NaN if the chosen one isn't
 * valid.
 */
export function leastCorrected(ohms: number, celsius: number, reference: number, method: CorrectionMethod): number {
  const factors = Object.values(laws).map((law) => law(celsius) / law(reference));
  if (Number.isNaN(laws[method](celsius))) return Number.NaN;
  return ohms * Math.min(...factors.filter((factor) => !Number.isNaN(factor)));
}

/** After a trip a winding is good from 100 MΩ, both as read and at 20 °C, by every method. */
export function passesAfterTrip(one: Reading, by: Instrument, temperature: Reading, method: CorrectionMethod): boolean {
  const low = span(one, by)?.lo ?? -1;
  return low >= 100e6 && leastCorrected(low, figure(temperature), 20, method) >= 100e6 * (1 - 1e-9);
}
