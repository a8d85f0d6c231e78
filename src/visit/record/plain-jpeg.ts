/** A JPEG with nothing in it but the picture, and its size in pixels. */
export interface PlainJpeg {
  jpeg: Uint8Array<ArrayBuffer>;
  width: number;
  height: number;
}

/** Markers of ISO/IEC 10918-1, annex B. */
const startOfImage = 0xd8;
const endOfImage = 0xd9;
const startOfScan = 0xda;
const jfif = 0xe0;
/** Says how the colours are coded; a picture with it is wrong without it. */
const adobe = 0xee;
const comment = 0xfe;

/**
 * The picture without all that a camera writes beside it: place, time, device (EXIF, in APP1), thumbnails, comments, and
 * what follows its end. Undefined if the bytes are no complete JPEG. The pixels are not decoded.
 */
export function plainJpeg(bytes: Uint8Array): PlainJpeg | undefined {
  if (bytes[0] !== 0xff || bytes[1] !== startOfImage) return undefined;
  const kept: Uint8Array[] = [bytes.subarray(0, 2)];
  let size: { width: number; height: number } | undefined;
  let at = 2;
  while (at < bytes.length) {
    if (bytes[at] !== 0xff) return undefined;
    while (bytes[at + 1] === 0xff) at += 1;
    const marker = bytes[at + 1];
    if (marker === undefined) return undefined;
    if (marker === endOfImage) {
      kept.push(bytes.subarray(at, at + 2));
      return size && { jpeg: joined(kept), ...size };
    }
    const length = pair(bytes, at + 2);
    const end = at + 2 + length;
    if (length < 2 || end > bytes.length) return undefined;
    if (isFrame(marker)) size = { height: pair(bytes, at + 5), width: pair(bytes, at + 7) };
    const next = marker === startOfScan ? endOfScan(bytes, end) : end;
    if (isKept(marker, length)) kept.push(bytes.subarray(at, next));
    at = next;
  }
  return undefined;
}

/** All but the application segments and comments; of those, only the ones that hold no more than the coding. */
function isKept(marker: number, length: number): boolean {
  const isApplication = marker >= 0xe0 && marker <= 0xef;
  // Longer ones hold a thumbnail.
  if (marker === jfif) return length === 16;
  return marker === adobe ? length === 14 : !isApplication && marker !== comment;
}

/** A frame header, of any coding: 0xC0 to 0xCF without the tables among them. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
}

/** The coded pixels end at the next marker that is neither a stuffed byte nor a restart. */
function endOfScan(bytes: Uint8Array, from: number): number {
  for (let at = from; at + 1 < bytes.length; at += 1) {
    const next = bytes[at + 1] ?? 0;
    if (bytes[at] === 0xff && next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return at;
  }
  return bytes.length;
}

const pair = (bytes: Uint8Array, at: number) => ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0);

function joined(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(parts.reduce((length, part) => length + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
