import { limitRange, limitValue } from '../../../src/kernel/limits.ts';
import { formatQuantity } from '../../../src/kernel/reading/format-reading.ts';

/** What a usual multimeter drives through a resistance, in volts; invented, as every meter has its own. */
export const meterVolts = 1;
/** Highest range of that meter, in ohms. */
export const meterRange = 72e6;

const testVolts = limitRange('test-voltage-below-1000').from;
const point = limitValue('after-trip-point');
const shown = (value: number, unit: 'V' | 'Ω') => formatQuantity(value, unit).replace(' ', '\u00a0');
/** Currents take the prefixes of ohms. */
const amperes = (value: number) => `${Number((value * 1e9).toPrecision(2))}\u00a0nA`;

export const meter = shown(meterVolts, 'V');
export const range = shown(meterRange, 'Ω');
export const tester = shown(testVolts, 'V');
export const timesMore = testVolts / meterVolts;
export const meterCurrent = amperes(meterVolts / point);
export const testerCurrent = amperes(testVolts / point);
