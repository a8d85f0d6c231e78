import { expect, test } from 'vitest';
import { isolation } from '../../visit/guide/support/readings.ts';

// Found by the closed loop: a leak from core to core reads good joined, where the windings connect the cores anyway, and
// was taken for a contradiction.
const joined = '> 700M | > 700M | > 700M | 0.2 Ω';
const cable = '> 700M | > 700M | > 700M | > 700M';
const motor = '> 700M | > 700M | > 700M | 0.2 Ω';

test('two cores that read bad in the bonded row alone condemn the cable beside a good joined reading', () => {
  const { verdict, parts, next } = isolation(
    { joined, cable, bonded: '3M | 3M | > 700M', motor },
    { suspectedAnyway: true },
  );
  expect(verdict).toBe('no-go');
  expect(parts).toEqual({ cable: 'proven-bad', motor: 'proven-good', protectiveConductor: 'proven-good' });
  expect(next.map(({ code }) => code)).toContain('replace-cable');
});

test('one core alone is a contradiction still: to PE or screen it would leak joined, too', () => {
  const { verdict, parts } = isolation(
    { joined, cable, bonded: '3M | > 700M | > 700M', motor },
    { suspectedAnyway: true },
  );
  expect([verdict, parts.cable]).toEqual(['undecided', 'undecided']);
});

test('a motor that reads bad alone beside a good joined reading stays a contradiction', () => {
  const { verdict, parts } = isolation(
    { joined, cable, bonded: '3M | 3M | > 700M', motor: '2M | 2M | 2M | 0.2 Ω' },
    { suspectedAnyway: true },
  );
  expect([verdict, parts.motor]).toEqual(['no-go', 'undecided']);
});
