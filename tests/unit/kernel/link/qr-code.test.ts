import { expect, test } from 'vitest';
import { qrCodeOf } from '../../../../src/kernel/link/qr-code.ts';
import { shareAddress } from '../../../../src/kernel/link/share-address.ts';
import { shareText } from '../../../../src/visit/record/share.ts';
import { must } from '../../visit/record/support/must.ts';
import { typicalVisit } from '../../visit/record/support/typical-visit.ts';

/** Capacity in bytes of a QR code of version 40 at correction level L: ISO/IEC 18004, table 7; recalled. */
const most = 2953;

test('a whole visit fits, with room for a long address of the site', () => {
  const share = must(shareText({ kind: 'visit', visit: typicalVisit() }));
  const page = `https://handbook.plant.example.org/${'folder/'.repeat(40)}visit/`;
  expect(qrCodeOf(shareAddress(page, share)).ok).toBe(true);
});

test('the code is a square with a quiet border of four modules, as the standard asks', () => {
  const { version, rows } = must(qrCodeOf('https://example.org/visit/#share=1.AbC'));
  // ISO/IEC 18004: version v has 17 + 4·v modules a side.
  const side = 17 + 4 * version + 8;
  expect(rows).toHaveLength(side);
  expect(rows.every((row) => row.length === side)).toBe(true);
  const border = rows.filter((_row, i) => i < 4 || i >= side - 4).flat();
  expect(border.every((dark) => !dark)).toBe(true);
  // The finder pattern in the corner: a dark ring, a light one, a dark middle.
  expect(rows[4]?.slice(4, 12)).toEqual([true, true, true, true, true, true, true, false]);
  expect(rows[5]?.slice(4, 11)).toEqual([true, false, false, false, false, false, true]);
});

test('the most that fits, and one byte more', () => {
  const address = (length: number) => 'https://example.org/#share=1.'.padEnd(length, 'a');
  expect(must(qrCodeOf(address(most))).version).toBe(40);
  const refused = qrCodeOf(address(most + 1));
  expect(refused).toMatchObject({ ok: false, problem: { kind: 'too-long-for-code' } });
  expect(refused.ok ? '' : refused.problem.message).toContain('Send the link or the file instead');
});
