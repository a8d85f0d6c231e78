import { expect, test } from 'vitest';
import { typed } from '../../../support/typed.ts';
import { isolation } from '../../visit/guide/support/readings.ts';

// Found by `npm run prove`: a leak from core to core reads good joined, since the windings connect the cores anyway, and
// was treated as a contradiction.
const joined = '> 700M | > 700M | > 700M | 0.2 Ω';
const cable = '> 700M | > 700M | > 700M | > 700M';
const motor = '> 700M | > 700M | > 700M | 0.2 Ω';

const idleCores = 'to-pe';
const again = { moreOfCable: { again: typed('3M'), dried: 'yes', sister: typed('>700M') } } as const;

test('two cores that read bad only in the bonded row make the cable suspect despite a good joined reading', () => {
  const { verdict, parts, next } = isolation(
    { joined, cable, bonded: '3M | 3M | > 700M', motor },
    { suspectedAnyway: true, idleCores },
  );
  expect(verdict).toBe('no-go');
  expect(parts).toEqual({ cable: 'suspect', motor: 'proven-good', protectiveConductor: 'proven-good' });
  expect(next.map(({ code }) => code)).toContain('read-cable-again');
});

test('read again, clean and dry, and far below a sound cable, they prove it bad', () => {
  const { verdict, parts, next } = isolation(
    { joined, cable, bonded: '3M | 3M | > 700M', motor },
    { suspectedAnyway: true, idleCores, ...again },
  );
  expect(verdict).toBe('no-go');
  expect(parts).toEqual({ cable: 'proven-bad', motor: 'proven-good', protectiveConductor: 'proven-good' });
  expect(next.map(({ code }) => code)).toContain('replace-cable');
});

test('one core alone leaks to an idle core, which hung free joined: the cable, and no contradiction', () => {
  const { verdict, parts } = isolation(
    { joined, cable, bonded: '3M | > 700M | > 700M', motor },
    { suspectedAnyway: true, idleCores, ...again },
  );
  expect([verdict, parts.cable]).toEqual(['no-go', 'proven-bad']);
});

test('a motor that reads bad alone despite a good joined reading stays a contradiction', () => {
  const { verdict, parts } = isolation(
    { joined, cable, bonded: '3M | 3M | > 700M', motor: '2M | 2M | 2M | 0.2 Ω' },
    { suspectedAnyway: true, idleCores },
  );
  expect([verdict, parts.motor]).toEqual(['no-go', 'undecided']);
});
