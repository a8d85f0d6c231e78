import { expect, test } from 'vitest';
import type { Exchange } from '../../../../src/axes/history/changes.ts';
import { ofSamePart } from '../../../../src/axes/history/past.ts';
import type { Point } from '../../../../src/axes/history/points.ts';
import { missing, ohms } from '../../../../src/kernel/reading/reading.ts';

// Common practice, no source.

const point = (visit: string, at: string): Point => ({
  ...{ visit, at, part: 'motor', text: '', baseline: false, line: 0, cells: [] },
  ...{ day: Date.parse(at) / 864e5, reading: ohms(1e6), temperature: missing, correction: 'halving' },
});
const points = [
  point('day-before', '2026-03-01T08:00:00+01:00'),
  point('morning', '2026-03-02T06:00:00+01:00'),
  point('decides', '2026-03-02T09:00:00+01:00'),
  point('evening', '2026-03-02T17:00:00+01:00'),
  point('day-after', '2026-03-03T08:00:00+01:00'),
];
const noted: Exchange = { id: 'change-1', part: 'motor', on: '2026-03-02', kind: 'noted', note: '' };
const left = (exchanges: Exchange[]) => ofSamePart(points, 'motor', exchanges).map(({ visit }) => visit);

test('on the day of an exchange the readings up to those that condemned the part are of the old one', () => {
  expect(left([{ ...noted, visit: 'decides' }])).toEqual(['evening', 'day-after']);
});

test('if no visit decided the exchange nobody knows which of that day came before, and all count', () => {
  expect(left([noted])).toEqual(['morning', 'decides', 'evening', 'day-after']);
});

test('an exchange that is only decided, or of another part, changes nothing', () => {
  expect(left([{ ...noted, kind: 'decided', visit: 'decides' }])).toHaveLength(5);
  expect(left([{ ...noted, part: 'motor-cable', visit: 'decides' }])).toHaveLength(5);
});

test('of two parts that were changed on one day both decisions count for the joined readings', () => {
  const joined = points.map((one) => ({ ...one, part: 'joined' as const }));
  const cable: Exchange = { ...noted, id: 'change-2', part: 'motor-cable', visit: 'evening' };
  const both = [{ ...noted, visit: 'decides' }, cable];
  for (const exchanges of [both, [...both].reverse()]) {
    expect(ofSamePart(joined, 'joined', exchanges).map(({ visit }) => visit)).toEqual(['day-after']);
  }
});
