import * as z from 'zod/mini';
import { list } from '../../kernel/link/schema-parts.ts';
import { type Instrument, instrumentSchema } from '../record/instrument-schema.ts';

const key = 'fieldbook-instruments';
const stored = list(instrumentSchema);

/** The instruments that were noted last on this device; none if there are none or they can't be read. */
export function deviceInstruments(): Instrument[] {
  try {
    const read = z.safeParse(stored, JSON.parse(localStorage.getItem(key) ?? '[]'));
    return read.success ? read.data : [];
  } catch {
    return [];
  }
}

/** Kept for the next visit; false if the browser refuses. */
export function keepDeviceInstruments(instruments: readonly Instrument[]): boolean {
  try {
    if (instruments.length === 0) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(instruments));
    return true;
  } catch {
    return false;
  }
}
