import { shownAfterTrip } from '../../../src/kernel/electrics/after-trip-leakage.ts';
import { coreInsulation, lengthForResistance } from '../../../src/kernel/electrics/cable-insulation.ts';
import { machineMinimum } from '../../../src/kernel/electrics/machine-minimum.ts';
import { limitRange, limitValue } from '../../../src/kernel/limits.ts';
import { formatQuantity } from '../../../src/kernel/reading/format-reading.ts';

/** An invented PVC core of Marrow Bay: diameters in mm, run in m, readings in ohms, cable in °C; a test judges it. */
export const core = { outer: 3.4, inner: 2.0, metres: 480, celsius: 21 };
export const runReadings = { U: 70e6, V: 74e6, W: 72e6 };
export const halves = { near: 140e6, far: 144e6 };
/** A servo cable of the same build. */
export const servoMetres = 25;

/** An old winding, rated in volts. */
export const oldRated = 400;

const constant = limitRange('cable-constant-pvc').from;
const nbsp = (text: string) => text.replace(' ', '\u00a0');
export const ohms = (value: number) => nbsp(formatQuantity(Number(value.toPrecision(2)), 'Ω'));
export const metres = (value: number) => `${Number(value.toPrecision(2))}\u00a0m`;
export const millimetres = (value: number) => `${value.toFixed(1)}\u00a0mm`;
export const celsius = (value: number) => `${value}\u00a0°C`;
export const oldVoltage = nbsp(formatQuantity(oldRated, 'V'));
export const oldMinimum = ohms(machineMinimum('pre-1970', oldRated));

/** What the after-trip limit lets leak, and at which test voltage. */
export const pointVolts = nbsp(shownAfterTrip.volts);
export const pointLeakage = nbsp(shownAfterTrip.leakage);

/** What a new core of this build has at least, in ohms at the reference temperature of the formula. */
export const floor = (length: number) => coreInsulation(constant, core.outer, core.inner, length);
export const pointLength = lengthForResistance(constant, core.outer, core.inner, limitValue('after-trip-point'));
