/** JPEGs for tests, built from segments by ISO/IEC 10918-1, annex B. Their pixels mean nothing. */

const segment = (marker: number, ...content: number[]) => {
  const length = content.length + 2;
  return [0xff, marker, length >> 8, length & 0xff, ...content];
};
const letters = (text: string) => Array.from(text, (letter) => letter.charCodeAt(0));

export const startOfImage = [0xff, 0xd8];
export const endOfImage = [0xff, 0xd9];
export const jfif = segment(0xe0, ...letters('JFIF\0'), 1, 2, 0, 0, 1, 0, 1, 0, 0);
/** What a camera writes: a place and a device, in APP1. */
export const exif = segment(0xe1, ...letters('Exif\0\0MM GPS 53.5511 N 9.9937 E, device 0417'));
export const comment = segment(0xfe, ...letters('taken by Ines'));
const table = segment(0xdb, 0, ...Array(64).fill(1));
/** 40 wide, 30 high, one colour. */
const frame = segment(0xc0, 8, 0, 30, 0, 40, 1, 1, 0x11, 0);
/** With a stuffed byte and a restart in it. */
export const scan = [...segment(0xda, 1, 1, 0, 0, 63, 0), 0x12, 0xff, 0x00, 0x34, 0xff, 0xd0, 0x56];

export const picture = [...table, ...frame, ...scan];

export const jpegOf = (...parts: number[][]) => Uint8Array.from(parts.flat());

/** A JPEG without metadata, of about this many bytes; `seed` makes it another one. */
export function plainJpegOf(bytes = 0, seed = 0): Uint8Array<ArrayBuffer> {
  const more = Array.from({ length: bytes }, (_, index) => (index * 7 + seed) % 251);
  return jpegOf(startOfImage, jfif, picture, more, endOfImage);
}

/** The markers before the first scan. */
export function markersOf(jpeg: Uint8Array): number[] {
  const markers: number[] = [];
  for (
    let at = 2;
    jpeg[at + 1] !== 0xda && at < jpeg.length;
    at += 2 + (jpeg[at + 2] ?? 0) * 256 + (jpeg[at + 3] ?? 0)
  ) {
    markers.push(jpeg[at + 1] ?? 0);
  }
  return markers;
}

/** APP1 with EXIF as recalled from memory: the orientation, 6 for a quarter turn clockwise, and a place as text. */
export function exifOf(orientation: number): number[] {
  const directory = [0, 2, ...[1, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0]];
  const note = letters('53.5511 N, device 0417\0');
  const description = [1, 0x0e, 0, 2, 0, 0, 0, note.length, 0, 0, 0, 38];
  const [count, ...entry] = [directory.slice(0, 2), directory.slice(2)];
  return segment(
    0xe1,
    ...letters('Exif\0\0MM\0*'),
    ...[0, 0, 0, 8],
    ...(count ?? []),
    ...description,
    ...entry.flat(),
    ...[0, 0, 0, 0],
    ...note,
  );
}
