import { deltaPhases, type Pairs, starPhases } from '../../../src/calculators/winding/rule/phases.ts';
import { temperatureFactor } from '../../../src/kernel/electrics/conductor-temperature.ts';
import { limitValue } from '../../../src/kernel/limits.ts';
import { formatQuantity } from '../../../src/kernel/reading/format-reading.ts';
import { deviationFromMean } from '../../../src/kernel/reading/spread.ts';

/** Invented readings of Marrow Bay, in ohms, four leads at the motor; a test gives them to the calculator. */
export const atMotor: Pairs<number> = { UV: 1.301, VW: 1.303, WU: 1.155 };
export const celsius = 24;
/** What the data sheet gives, line to line, at its temperature. */
export const nameplate = { value: 1.28, celsius: limitValue('winding-reference-20') };
/** The same three readings are drawn for star and delta. */
export const drawn: Pairs<number> = { UV: 2, VW: 2, WU: 2.3 };

const nbsp = (text: string) => text.replace(' ', '\u00a0');
export const ohms = (value: number) => nbsp(formatQuantity(Number(value.toPrecision(3)), 'Ω'));
export const exact = (value: number) => nbsp(formatQuantity(value, 'Ω'));
export const degrees = (value: number) => `${value}\u00a0°C`;
export const deviation = `${deviationFromMean(Object.values(atMotor)).toFixed(1)}\u00a0%`;
export const star = starPhases(atMotor);
export const drawnStar = starPhases(drawn);
export const drawnDelta = deltaPhases(drawn);

/** Copper that was measured at another temperature. */
export const warmer = { reading: 1.6, celsius: 65 };
export const cooled = ohms(
  warmer.reading * (temperatureFactor('copper', warmer.celsius, nameplate.celsius) ?? Number.NaN),
);
