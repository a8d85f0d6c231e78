import { describe, expect, test } from 'vitest';
import { plainJpeg } from '../../../../src/visit/record/plain-jpeg.ts';
import { comment, endOfImage, exif, jfif, jpegOf, markersOf, picture, startOfImage } from '../../../support/jpegs.ts';

// Segments by ISO/IEC 10918-1, annex B; EXIF in APP1 as recalled from memory.

const plain = jpegOf(startOfImage, jfif, picture, endOfImage);
const read = (...parts: number[][]) => plainJpeg(jpegOf(...parts));

describe('nothing but the picture stays', () => {
  test.each([
    ['EXIF', [startOfImage, exif, picture, endOfImage], [startOfImage, picture, endOfImage]],
    ['EXIF behind JFIF', [startOfImage, jfif, exif, picture, endOfImage]],
    ['a comment', [startOfImage, jfif, comment, picture, endOfImage]],
    ['EXIF between the picture and its end', [startOfImage, jfif, picture, exif, endOfImage]],
    ['a film behind the picture', [startOfImage, jfif, picture, endOfImage, exif, [1, 2, 3]]],
    ['filling bytes', [startOfImage, jfif, [0xff, 0xff], exif, picture, endOfImage]],
  ] as [string, number[][], number[][]?][])('without %s', (_what, parts, left) => {
    const bytes = read(...parts)?.jpeg;
    expect(bytes).toBeDefined();
    expect(markersOf(bytes ?? plain)).not.toContain(0xe1);
    expect(new TextDecoder('latin1').decode(bytes)).not.toMatch(/GPS|Exif|Ines/);
    const expected = left === undefined ? plain : jpegOf(...left);
    expect([...(bytes ?? [])].filter((byte) => byte !== 0xff)).toEqual([...expected].filter((byte) => byte !== 0xff));
  });

  test('a thumbnail in a longer JFIF segment goes, and what says how colours are coded stays', () => {
    const thumbnail = [0xff, 0xe0, 0, 20, ...Array(18).fill(7)];
    const adobe = [0xff, 0xee, 0, 14, 65, 100, 111, 98, 101, 0, 100, 0, 0, 0, 0, 1];
    const bytes = read(startOfImage, thumbnail, adobe, picture, endOfImage)?.jpeg;
    expect(markersOf(bytes ?? plain)).toEqual([0xee, 0xdb, 0xc0]);
  });

  test('a plain one is unchanged, and its size is read', () => {
    expect(plainJpeg(plain)).toEqual({ jpeg: plain, width: 40, height: 30 });
  });

  test('scan after scan, with tables between them', () => {
    const progressive = jpegOf(startOfImage, jfif, picture, picture, endOfImage);
    expect(plainJpeg(progressive)?.jpeg).toEqual(progressive);
  });
});

describe('what is no complete JPEG gives nothing', () => {
  test.each([
    ['nothing', new Uint8Array()],
    ['another format', Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])],
    ['no frame', jpegOf(startOfImage, jfif, endOfImage)],
    ['a segment without a marker', jpegOf(startOfImage, [0x00, 0x10], picture, endOfImage)],
    ['a segment longer than the file', jpegOf(startOfImage, [0xff, 0xe1, 0xff, 0xff, 1])],
    ['a segment of length 0', jpegOf(startOfImage, [0xff, 0xdb, 0, 0], picture, endOfImage)],
  ])('%s', (_what, bytes) => {
    expect(plainJpeg(bytes)).toBeUndefined();
  });

  test('every truncation of one', () => {
    for (let length = 0; length < plain.length; length += 1) expect(plainJpeg(plain.slice(0, length))).toBeUndefined();
  });
});
