/**
 * CRC-32 as in ISO/IEC 8802-3 and gzip (RFC 1952). A link that a mail program has damaged must not give another
 * reading: deflate alone would not notice. It does not protect against deliberate changes.
 */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (crc ^ 0xffffffff) >>> 0;
}
