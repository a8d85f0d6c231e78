import {
  secondsUntil,
  storedEnergy,
  voltageAfter,
  voltageHalfOpen,
} from '../../../src/kernel/electrics/discharge-law.ts';
import { limitValue } from '../../../src/kernel/limits.ts';

/** The invented bus of the Bridge drive: V, F, Ω, and the minutes on its label. */
export const bus = { volts: 565, farads: 1.1e-3, ohms: 100e3, labelMinutes: 5 };
/** Two equal resistors share the discharge; with one of them open, twice the resistance is left. */
export const oneOpen = 2 * bus.ohms;
/** What the meter of the example showed at the end of the label's time, and a minute later, in V. */
export const read = { atLabel: 148, later: 113 };

const tau = (ohms: number) => ohms * bus.farads;

export const energy = storedEnergy(bus.farads, bus.volts);
export const energyAtTouch = storedEnergy(bus.farads, limitValue('touch-voltage'));
export const after = (seconds: number, ohms: number) => voltageAfter(bus.volts, seconds, tau(ohms));
/** The same bus built of two capacitors in series, each twice as large, with a resistor of half the ohms; one resistor open. */
export const afterHalfOpen = (seconds: number) => voltageHalfOpen(bus.volts, seconds, tau(bus.ohms));
export const minutesToTouch = (ohms: number) => secondsUntil(bus.volts, limitValue('touch-voltage'), tau(ohms)) / 60;
