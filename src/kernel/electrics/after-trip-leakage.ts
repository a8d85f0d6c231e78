import { limitRange, limitValue } from '../limits.ts';
import { formatQuantity } from '../reading/format-reading.ts';

const volts = limitRange('test-voltage-below-1000').from;

/**
 * The reason for the go/no-go point after a trip: the leakage current, in A, that it allows at the usual test voltage
 * of a servo motor. Common practice, no source.
 */
export const afterTripLeakage = volts / limitValue('after-trip-point');

/** The same as text, "500 V" and "5 µA". */
export const shownAfterTrip = {
  volts: formatQuantity(volts, 'V'),
  leakage: `${Number((afterTripLeakage * 1e6).toPrecision(3))} µA`,
};
