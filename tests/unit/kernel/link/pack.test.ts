import { deflateRawSync, inflateRawSync, crc32 as zlibCrc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromBase64url, toBase64url } from '../../../../src/kernel/link/base64url.ts';
import { crc32 } from '../../../../src/kernel/link/crc32.ts';
import { pack, unpack } from '../../../../src/kernel/link/pack.ts';
import { runs } from '../../../support/runs.ts';

const dictionary = new TextEncoder().encode('{"plusU":"450k","plusV":"');
const most = 100_000;

describe('CRC-32', () => {
  // Check value of the CRC-32 of ISO/IEC 8802-3 in the usual catalogues of CRCs; recalled.
  test('has its published check value', () => {
    expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
  });

  test('agrees with zlib', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(crc32(bytes)).toBe(zlibCrc32(bytes));
      }),
      { numRuns: runs },
    );
  });
});

describe('base64url', () => {
  // RFC 4648, section 10, without padding.
  test.each([
    ['', ''],
    ['f', 'Zg'],
    ['fo', 'Zm8'],
    ['foo', 'Zm9v'],
    ['foobar', 'Zm9vYmFy'],
  ])('%j is %j', (plain, text) => {
    expect(toBase64url(new TextEncoder().encode(plain))).toBe(text);
    expect(fromBase64url(text)).toEqual(new TextEncoder().encode(plain));
  });

  test('agrees with Buffer, for any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        const text = toBase64url(bytes);
        expect(text).toBe(Buffer.from(bytes).toString('base64url'));
        expect(fromBase64url(text)).toEqual(bytes);
      }),
      { numRuns: runs },
    );
  });

  test.each(['A', 'AAAAA', 'Zg==', 'Zm+v', 'Zm/v', 'Zm 9v', 'Ω'])('%j is not base64url', (text) => {
    expect(fromBase64url(text)).toBeUndefined();
  });
});

describe('packing', () => {
  test('gives back any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 500 }), (text) => {
        expect(unpack(pack(text, dictionary), dictionary, most)).toEqual({ ok: true, text });
      }),
      { numRuns: runs },
    );
  });

  // Reference: zlib, which knows dictionaries too.
  test('is raw deflate that zlib reads, and reads what zlib packs', () => {
    const text = '{"plusU":"482k","plusV":"495k","plusW":"488k"}';
    const packed = pack(text, dictionary);
    expect(inflateRawSync(packed.subarray(4), { dictionary }).toString()).toBe(text);
    const foreign = Buffer.concat([packed.subarray(0, 4), deflateRawSync(text, { dictionary, level: 1 })]);
    expect(unpack(foreign, dictionary, most)).toEqual({ ok: true, text });
  });

  test('truncated bytes, or any changed bit, never give another text', () => {
    const text = JSON.stringify({ minusV: '3.8 Ω', minusW: '45.7k', notes: 'Cable track open at the lower end.' });
    const packed = pack(text, dictionary);
    for (let length = 0; length < packed.length; length += 1) {
      expect(unpack(packed.subarray(0, length), dictionary, most)).toEqual({ ok: false, kind: 'damaged' });
    }
    for (let bit = 0; bit < packed.length * 8; bit += 1) {
      const changed = packed.slice();
      changed[bit >> 3] = (changed[bit >> 3] ?? 0) ^ (1 << (bit & 7));
      const result = unpack(changed, dictionary, most);
      // The bits after the end of deflate have no meaning.
      if (result.ok) expect(result.text).toBe(text);
    }
  });

  test('unpacking a bomb stops at the allowed size, long before its end', () => {
    const bomb = new Uint8Array(deflateRawSync(Buffer.alloc(500_000_000), { level: 9 }));
    const heldBefore = process.memoryUsage().arrayBuffers;
    expect(bomb.length).toBeLessThan(500_000);
    expect(unpack(new Uint8Array([0, 0, 0, 0, ...bomb]), dictionary, most)).toEqual({ ok: false, kind: 'too-large' });
    expect(process.memoryUsage().arrayBuffers - heldBefore).toBeLessThan(50_000_000);
  });

  test('exactly the allowed size is accepted, one byte more is not', () => {
    const packed = pack('x'.repeat(most), dictionary);
    expect(unpack(packed, dictionary, most).ok).toBe(true);
    expect(unpack(packed, dictionary, most - 1)).toEqual({ ok: false, kind: 'too-large' });
  });

  test('bytes that are not UTF-8 are damaged', () => {
    const bytes = Buffer.from([0xff, 0xfe, 0x41]);
    const check = Buffer.alloc(4);
    check.writeUInt32BE(zlibCrc32(bytes));
    expect(unpack(Buffer.concat([check, deflateRawSync(bytes)]), dictionary, most)).toEqual({
      ok: false,
      kind: 'damaged',
    });
  });
});
