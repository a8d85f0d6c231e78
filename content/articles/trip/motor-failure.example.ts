import { limitValue } from '../../../src/kernel/limits.ts';
import { deviationFromMean } from '../../../src/kernel/reading/spread.ts';

/** The invented Marrow Bay readings of the worked example, in ohms, four leads; a test gives them to the calculator. */
export const throughCable = { UV: 1.69, VW: 1.71, WU: 1.87 };
export const atMotor = { UV: 1.27, VW: 1.29, WU: 1.45 };

const percent = (value: number) => `${value.toFixed(1)}\u00a0%`;
export const deviation = (lines: Record<string, number>) => percent(deviationFromMean(Object.values(lines)));

export const dischargeMinutes = limitValue('reading-time') * limitValue('discharge-after-test');
