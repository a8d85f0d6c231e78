import { describe, expect, it } from 'vitest';
import { missing, volts } from '../../../../../src/kernel/reading/reading.ts';
import { assess, type Change, farads, pair, said, seconds, steps, values } from './bus.ts';

const always = 'only-the-meter undecided';
const energy = 'energy-shock caution capacitance startVoltage';
const ofPair = 'first second elapsed';
const { startVoltage } = values;
const start: Change = startVoltage === undefined ? {} : { startVoltage };

describe('what is found, which readings it names, and what comes next', () => {
  const rows: [what: string, Change, verdict: string, lines: string[], next: string[]][] = [
    [
      'nothing is known',
      {},
      'undecided',
      [always, 'start-missing undecided', 'discharge-data-missing undecided'],
      ['type-discharge-data', 'prove-dead'],
    ],
    [
      'only the start is known',
      start,
      'undecided',
      [always, 'discharge-data-missing undecided'],
      ['type-discharge-data', 'prove-dead'],
    ],
    [
      'values',
      values,
      'undecided',
      [always, energy, 'longest-wait caution', 'longer-than-standard caution'],
      ['wait-then-measure', 'prove-dead'],
    ],
    [
      'values without a start',
      { ...values, startVoltage: missing },
      'undecided',
      [always, 'start-missing undecided'],
      ['type-discharge-data', 'prove-dead'],
    ],
    [
      'a value of zero',
      { ...values, capacitance: farads(0) },
      'undecided',
      [always, 'value-impossible undecided', 'discharge-data-missing undecided'],
      ['type-discharge-data', 'prove-dead'],
    ],
    [
      'a pair of readings',
      pair(565, 400, 17),
      'undecided',
      [always, `tail-slower caution ${ofPair}`, 'longest-wait-from-reading caution', 'longer-than-standard caution'],
      ['wait-then-measure', 'prove-dead'],
    ],
    [
      'half a pair',
      { ...start, first: volts(565, 1) },
      'undecided',
      [always, `pair-incomplete undecided ${ofPair}`, 'discharge-data-missing undecided'],
      ['repeat-pair', 'type-discharge-data', 'prove-dead'],
    ],
    [
      'a pair at one moment',
      { ...start, ...pair(565, 400, 0) },
      'undecided',
      [always, `times-equal undecided ${ofPair}`, 'discharge-data-missing undecided'],
      ['repeat-pair', 'type-discharge-data', 'prove-dead'],
    ],
    [
      'a bus that rises',
      pair(400, 403, 10),
      'undecided',
      [always, `voltage-rises stop ${ofPair}`],
      ['find-feed', 'prove-dead'],
    ],
    [
      'a bus that does not fall',
      { ...start, ...pair(400, 400, 60) },
      'undecided',
      [always, `no-fall-shown undecided ${ofPair}`, 'no-end undecided'],
      ['repeat-pair', 'prove-dead'],
    ],
    [
      'slower than its values',
      { ...values, ...pair(565, 500, 60) },
      'no-go',
      [
        always,
        `tail-slower caution ${ofPair}`,
        energy,
        'longest-wait caution',
        'longer-than-standard caution',
        'slower-than-values fail',
      ],
      ['wait-then-measure', 'suspect-bleeder', 'prove-dead'],
    ],
    [
      'faster than its values',
      { ...values, ...pair(565, 100, 10) },
      'undecided',
      [
        always,
        `tail-slower caution ${ofPair}`,
        energy,
        'longest-wait caution',
        'longer-than-standard caution',
        'faster-than-values caution',
      ],
      ['wait-then-measure', 'prove-dead'],
    ],
    [
      'readings slower than the label',
      { ...pair(565, 400, 17), label: seconds(60) },
      'no-go',
      [
        always,
        `tail-slower caution ${ofPair}`,
        'longest-wait-from-reading caution',
        'longer-than-standard caution',
        'slower-than-label fail label',
      ],
      ['wait-then-measure', 'suspect-bleeder', 'prove-dead'],
    ],
    [
      'values slower than the label',
      { ...values, label: seconds(60) },
      'undecided',
      [always, energy, 'longest-wait caution', 'longer-than-standard caution', 'values-beyond-label caution label'],
      ['wait-then-measure', 'prove-dead'],
    ],
    [
      'values within the label',
      { ...values, label: seconds(300) },
      'undecided',
      [always, energy, 'longest-wait caution', 'longer-than-standard caution'],
      ['wait-then-measure', 'prove-dead'],
    ],
  ];
  it.each(rows)('%s', (_, change, verdict, lines, next) => {
    expect(said(change)).toEqual(lines);
    expect(assess(change).verdict).toBe(verdict);
    expect(steps(change)).toEqual(next);
  });

  it('a value of zero is asked for beside readings that give a time, and a pair without a fall below 50 V', () => {
    expect(steps({ ...values, ...pair(565, 400, 17), capacitance: farads(0) })).toContain('type-discharge-data');
    expect(said(pair(40, 40, 60))).not.toContain('no-end undecided');
    expect(steps(pair(40, 40, 60))).toContain('repeat-pair');
  });

  it('an impossible figure is all that is judged', () => {
    expect(assess({ ...values, startVoltage: volts(-1) })).toEqual({
      verdict: 'undecided',
      findings: [{ code: 'figure-impossible', severity: 'undecided', readings: ['startVoltage'], limits: [] }],
      next: [{ code: 'read-figure-again' }, { code: 'prove-dead' }],
      waits: [],
    });
  });
});
