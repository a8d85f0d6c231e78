import { expect, test } from 'vitest';
import { isoTime } from '../../../../src/kernel/time/iso-time.ts';

// Offsets as in ISO 8601; the moment is the same in every row.
const moment = new Date('2026-03-03T04:58:12.345Z');

test.each([
  [0, '2026-03-03T04:58:12+00:00'],
  [60, '2026-03-03T05:58:12+01:00'],
  [345, '2026-03-03T10:43:12+05:45'],
  [-210, '2026-03-03T01:28:12-03:30'],
  [-720, '2026-03-02T16:58:12-12:00'],
])('%i minutes east: %s', (offset, text) => {
  expect(isoTime(moment, offset)).toBe(text);
  expect(new Date(text).getTime()).toBe(Math.floor(moment.getTime() / 1000) * 1000);
});

test('the local time alone', () => {
  expect(new Date(isoTime(moment)).getTime()).toBe(Math.floor(moment.getTime() / 1000) * 1000);
});
