import { limitRange, limitValue } from '../limits.ts';
import { formatQuantity } from '../reading/format-reading.ts';

const volts = limitRange('test-voltage-below-1000').from;

/**
 * Why the go/no-go point after a trip is where it is: the current, in A, that it lets leak to the frame at the usual test
 * voltage of a servo motor. Common practice, no source.
 */
export const afterTripLeakage = volts / limitValue('after-trip-point');

/** The same as texts, "500 V" and "5 µA". */
export const shownAfterTrip = {
  volts: formatQuantity(volts, 'V'),
  leakage: `${Number((afterTripLeakage * 1e6).toPrecision(3))} µA`,
};
