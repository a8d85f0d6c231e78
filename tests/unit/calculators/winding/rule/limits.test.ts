import { describe, expect, it } from 'vitest';
import type { WindingFinding } from '../../../../../src/calculators/winding/rule/assess.ts';
import { ohms } from '../../../../../src/kernel/reading/reading.ts';
import { typed } from '../../../../support/typed.ts';
import { assess, type Change, find, high, pairs, uneven, usual } from './measured.ts';

const again = (text: string): Change => ({ again: pairs(text) });
const alike = again('2.000 Ω | 2.004 Ω | 2.002 Ω');
const joint = (text: string): Change => ({ acrossJoint: typed(text) });

describe('the limits that a finding used', () => {
  const balance = ['winding-unbalance-good', 'winding-unbalance-bad'];
  const rows: [code: WindingFinding['code'], Change, limits: string[]][] = [
    ['winding-balanced', {}, balance],
    ['winding-balanced', { kind: 'form-wound' }, ['winding-unbalance-good-form', 'winding-unbalance-bad']],
    ['winding-unbalanced', uneven, balance],
    ['winding-too-coarse', { readings: pairs('2.0 Ω | 2.0 Ω | 2.0 Ω') }, balance],
    ['winding-needs-four-leads', { leads: 'zeroed' }, [...balance, 'winding-two-lead-contact']],
    [
      'winding-needs-four-leads',
      { leads: 'zeroed', readings: pairs('0.5000 Ω | 0.5000 Ω | 0.5000 Ω') },
      [...balance, 'winding-four-leads-below'],
    ],
    ['winding-open', { readings: pairs('OL | OL | OL') }, ['winding-open']],
    ['winding-again-confirms', alike, ['winding-again-agreement']],
    ['winding-again-differs', { ...uneven, ...again('2.400 Ω | 2.000 Ω | 2.400 Ω') }, ['winding-again-agreement']],
    ['winding-joint-bad', { ...uneven, ...joint('0.3 Ω') }, ['winding-joint']],
    ['winding-joint-unclear', { ...high, leads: 'zeroed', ...joint('0.01 Ω') }, ['winding-joint']],
  ];
  it.each(rows)('%s: case %#', (code, change, limits) => {
    expect(find(change, code).limits).toEqual(limits);
  });

  it('of a contact that may explain two alike sets', () => {
    const set = '20.00 Ω | 24.00 Ω | 24.00 Ω';
    const change: Change = { leads: 'zeroed', readings: pairs(set), ...again(set) };
    expect(find(change, 'winding-contact-possible').limits).toEqual(['winding-two-lead-contact']);
  });
});

describe('an impossible figure', () => {
  it('is all that is judged', () => {
    expect(assess({ readings: { ...usual.readings, UV: ohms(-1) } })).toEqual({
      verdict: 'undecided',
      findings: [{ code: 'figure-impossible', severity: 'undecided', readings: ['readings.UV'], limits: [] }],
      next: [{ code: 'read-figure-again' }],
      cause: 'open',
      joint: 'not-measured',
    });
  });
});
