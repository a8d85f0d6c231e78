const idBytes = 16;

/**
 * An id for a new visit: 128 random bits as 32 hexadecimal digits. Not `crypto.randomUUID`, which browsers do not
 * offer to pages served by plain http, such as from a laptop to a tablet on the shop's network.
 */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(idBytes));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
