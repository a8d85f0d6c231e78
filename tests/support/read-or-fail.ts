import { parseReading } from '../../src/kernel/reading/parse-reading.ts';
import type { Quantity } from '../../src/kernel/reading/quantity.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';

/** The reading of a text. Throws if it could not be read. */
export const read = (text: string, quantity: Quantity = 'resistance', bareUnit = ''): Reading => {
  const result = parseReading(text, quantity, bareUnit);
  if (!result.ok) throw new Error(result.error.message);
  return result.reading;
};

/** Why a text could not be read. Throws if it was read. */
export const failure = (text: string, quantity: Quantity = 'resistance') => {
  const result = parseReading(text, quantity);
  if (result.ok) throw new Error(`${text} was read as ${JSON.stringify(result.reading)}`);
  return result.error;
};
