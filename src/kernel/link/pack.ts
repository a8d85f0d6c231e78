import { deflateSync, Inflate } from 'fflate';
import { crc32 } from './crc32.ts';

const checkLength = 4;

/** Small enough that the output of one step (at most 1032 times as many bytes) is counted before it gets too large. */
const slice = 512;

/** Text packed to bytes: the CRC-32 of its UTF-8, then raw deflate with a preset `dictionary`. */
export function pack(text: string, dictionary: Uint8Array): Uint8Array {
  const plain = new TextEncoder().encode(text);
  const packed = deflateSync(plain, { level: 9, dictionary });
  const bytes = new Uint8Array(checkLength + packed.length);
  new DataView(bytes.buffer).setUint32(0, crc32(plain));
  bytes.set(packed, checkLength);
  return bytes;
}

type Unpacked = { ok: true; text: string } | { ok: false; kind: 'damaged' | 'too-large' };

/** Reverses `pack`, up to `most` bytes of text: unpacking stops as soon as there is more. Never throws. */
export function unpack(bytes: Uint8Array, dictionary: Uint8Array, most: number): Unpacked {
  if (bytes.length <= checkLength) return { ok: false, kind: 'damaged' };
  const check = new DataView(bytes.buffer, bytes.byteOffset).getUint32(0);
  try {
    const plain = inflate(bytes.subarray(checkLength), dictionary, most);
    if (plain === undefined) return { ok: false, kind: 'too-large' };
    if (crc32(plain) !== check) return { ok: false, kind: 'damaged' };
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(plain) };
  } catch {
    return { ok: false, kind: 'damaged' };
  }
}

function inflate(packed: Uint8Array, dictionary: Uint8Array, most: number): Uint8Array | undefined {
  const chunks: Uint8Array[] = [];
  let length = 0;
  const stream = new Inflate({ dictionary }, (chunk) => {
    chunks.push(chunk);
    length += chunk.length;
  });
  for (let at = 0; at < packed.length; at += slice) {
    stream.push(packed.subarray(at, at + slice), at + slice >= packed.length);
    if (length > most) return undefined;
  }
  const plain = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    plain.set(chunk, at);
    at += chunk.length;
  }
  return plain;
}
