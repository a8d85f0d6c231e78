import { expect, test } from 'vitest';
import { isolation } from '../../visit/guide/support/readings.ts';

// Found by `npm run prove`: a leak from core to core reads good joined, since the windings connect the cores anyway, and
// was treated as a contradiction.
const joined = '> 700M | > 700M | > 700M | 0.2 Ω';
const cable = '> 700M | > 700M | > 700M | > 700M';
const motor = '> 700M | > 700M | > 700M | 0.2 Ω';

test('two cores that read bad only in the bonded row prove the cable bad despite a good joined reading', () => {
  const { verdict, parts, next } = isolation(
    { joined, cable, bonded: '3M | 3M | > 700M', motor },
    { suspectedAnyway: true },
  );
  expect(verdict).toBe('no-go');
  expect(parts).toEqual({ cable: 'proven-bad', motor: 'proven-good', protectiveConductor: 'proven-good' });
  expect(next.map(({ code }) => code)).toContain('replace-cable');
});

test('one core alone is still a contradiction: a leak to PE or screen would also show joined', () => {
  const { verdict, parts } = isolation(
    { joined, cable, bonded: '3M | > 700M | > 700M', motor },
    { suspectedAnyway: true },
  );
  expect([verdict, parts.cable]).toEqual(['undecided', 'undecided']);
});

test('a motor that reads bad alone despite a good joined reading stays a contradiction', () => {
  const { verdict, parts } = isolation(
    { joined, cable, bonded: '3M | 3M | > 700M', motor: '2M | 2M | 2M | 0.2 Ω' },
    { suspectedAnyway: true },
  );
  expect([verdict, parts.motor]).toEqual(['no-go', 'undecided']);
});
