const idBytes = 16;

/**
 * An id for a new visit: 128 random bits as 32 hexadecimal digits. Not `crypto.randomUUID`, which browsers do not
 * offer to pages served by plain http, such as from a laptop to a tablet on the shop's network.
 */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(idBytes));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

const timeDigits = 12;

/**
 * An id for a new photograph: the time in ms, so that those of one second keep their order, then 80 random bits. As long
 * as `newId`.
 */
export function newPhotographId(now = Date.now()): string {
  return now.toString(16).padStart(timeDigits, '0') + newId().slice(timeDigits);
}
