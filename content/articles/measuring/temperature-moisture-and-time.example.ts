import { dewPoint } from '../../../src/kernel/electrics/dew-point.ts';
import { correctionFactor } from '../../../src/kernel/electrics/temperature-correction.ts';
import { limitRange, limitValue } from '../../../src/kernel/limits.ts';
import { formatQuantity } from '../../../src/kernel/reading/format-reading.ts';

/** Invented readings of Marrow Bay, in ohms, °C and percent; a test gives them to the calculators. */
export const hot = { reading: 38e6, celsius: 55 };
export const cooled = { reading: 410e6, celsius: 23 };
export const cold = { reading: 900e6, celsius: 9, air: 24, humidity: 55 };

const nbsp = (text: string) => text.replace(' ', '\u00a0');
export const ohms = (value: number) => nbsp(formatQuantity(Number(value.toPrecision(2)), 'Ω'));
export const degrees = (value: number) => nbsp(formatQuantity(Number(value.toFixed(1)), '°C'));

const pointTemperature = limitValue('reference-temperature-after-trip');
export const hotAtPoint = ohms(
  hot.reading * (correctionFactor('halving', hot.celsius, pointTemperature) ?? Number.NaN),
);
export const coldDewPoint = degrees(dewPoint(cold.air, cold.humidity) ?? Number.NaN);

const airs = [15, 20, 25, 30];
export const humidities = [40, 60, 80];
/** Dew points as a table: air temperature, then one figure a humidity. */
export const dewRows = airs.map((air) => ({
  air: degrees(air),
  points: humidities.map((humidity) => degrees(dewPoint(air, humidity) ?? Number.NaN)),
}));
export const percent = (value: number) => `${value}\u00a0%`;

/**
 * An invented winding under a steady test voltage: a leakage that stays, and an absorption current that falls with a
 * power of time. In microamperes; the leakage alone differs between the three.
 */
export const leakages = [0.1, 1, 6] as const;
const absorbed = (minutes: number) => 0.5 * minutes ** -0.9;
const testVolts = limitRange('test-voltage-below-1000').from;
export const resistanceAfter = (minutes: number, leakage: number) => testVolts / ((leakage + absorbed(minutes)) * 1e-6);

const minutesOf = (id: 'index-first-time' | 'index-last-time' | 'ratio-first-time') => limitValue(id) / 60;
const ratio = (later: number, earlier: number, leakage: number) =>
  (resistanceAfter(later, leakage) / resistanceAfter(earlier, leakage)).toFixed(1);
/** Polarization index and dielectric absorption ratio of each. */
export const indices = leakages.map((leakage) =>
  ratio(minutesOf('index-last-time'), minutesOf('index-first-time'), leakage),
);
export const ratios = leakages.map((leakage) =>
  ratio(minutesOf('index-first-time'), minutesOf('ratio-first-time'), leakage),
);
