const chunk = 0x2000;

/** Bytes as base64 with padding (RFC 4648, section 4). */
export function toBase64(bytes: Uint8Array): string {
  const parts: string[] = [];
  // In pieces: a function takes only so many arguments.
  for (let at = 0; at < bytes.length; at += chunk) parts.push(String.fromCharCode(...bytes.subarray(at, at + chunk)));
  return btoa(parts.join(''));
}

/** The bytes, or undefined if the text is not base64. */
export function fromBase64(text: string): Uint8Array<ArrayBuffer> | undefined {
  try {
    const binary = atob(text);
    const bytes = new Uint8Array(binary.length);
    for (let at = 0; at < binary.length; at += 1) bytes[at] = binary.charCodeAt(at);
    return bytes;
  } catch {
    return undefined;
  }
}
