const idBytes = 16;

/**
 * An id for a new visit: 128 random bits as 32 hexadecimal figures. Not `crypto.randomUUID`, which browsers withhold
 * from pages that come by plain http, as from a laptop to a tablet on the shop's network.
 */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(idBytes));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
