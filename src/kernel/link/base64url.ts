import { fromBase64, toBase64 } from './base64.ts';

/** Bytes as base64url without padding (RFC 4648, section 5): safe in an address without escaping. */
export function toBase64url(bytes: Uint8Array): string {
  return toBase64(bytes).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** The bytes, or undefined if the text is not base64url. */
export function fromBase64url(text: string): Uint8Array | undefined {
  if (!/^[A-Za-z0-9_-]*$/.test(text)) return undefined;
  return fromBase64(text.replaceAll('-', '+').replaceAll('_', '/'));
}
