import * as z from 'zod/mini';
import { list, text } from '../../kernel/link/schema-parts.ts';
import type { Wait } from '../waiting.ts';

const key = (visit: string) => `fieldbook-waits-${visit}`;
const stored = list(z.strictObject({ id: text, name: text, after: text, minutes: z.number(), startedAt: z.number() }));

/** The waits of a visit on this device. They belong to one cabinet and one hour, so no record or link carries them. */
export function keptWaits(visit: string): Wait[] {
  try {
    const read = z.safeParse(stored, JSON.parse(localStorage.getItem(key(visit)) ?? '[]'));
    return read.success ? read.data : [];
  } catch {
    return [];
  }
}

export function keepWaits(visit: string, waits: readonly Wait[]): void {
  try {
    if (waits.length === 0) localStorage.removeItem(key(visit));
    else localStorage.setItem(key(visit), JSON.stringify(waits));
  } catch {
    // Without storage only a reload loses them.
  }
}
