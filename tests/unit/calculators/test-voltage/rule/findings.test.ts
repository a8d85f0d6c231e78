import { describe, expect, it } from 'vitest';
import { assessTestVoltage } from '../../../../../src/calculators/test-voltage/rule/assess.ts';
import type { TestVoltageInput } from '../../../../../src/calculators/test-voltage/rule/input.ts';
import { missing, overOhms, volts } from '../../../../../src/kernel/reading/reading.ts';
import { found } from '../../../../support/found.ts';
import { lineWithLimits } from '../../../../support/lines.ts';

type Change = Partial<TestVoltageInput>;

/** Wiring of 400 V with all taken off, and 500 V set. */
const wiring: TestVoltageInput = {
  object: 'wiring',
  rated: volts(400),
  set: volts(500),
  drive: 'off',
  sensitive: 'off',
};
const assess = (change: Change) => assessTestVoltage({ ...wiring, ...change });
const said = (change: Change) => assess(change).findings.map(lineWithLimits);
const steps = (change: Change) => assess(change).next.map(({ code }) => code);

const minimum = 'minimum-of-table note: installation-minimum-500';
const fits = 'set-fits pass set: test-voltage-wiring-500';
const test = ['set-the-tester', 'discharge-afterwards'];
const brake = (rated: number): Change => ({ object: 'brake-coil', rated: volts(rated) });
const brakeOff = 'take-brake-parts-off';

describe('which readings and limits each finding names, and what comes next', () => {
  const rows: [what: string, Change, verdict: string, lines: string[], next: string[]][] = [
    ['wiring', {}, 'go', [fits, minimum], test],
    [
      'wiring above 500 V, tested too low',
      { rated: volts(690) },
      'undecided',
      [
        'set-too-low undecided set: test-voltage-wiring-above-500',
        'minimum-of-table note: installation-minimum-above-500',
      ],
      test,
    ],
    [
      'a winding, whose minimum is no matter of this table',
      { object: 'winding' },
      'go',
      ['set-fits pass set: test-voltage-below-1000', 'winding-minimum-elsewhere note'],
      test,
    ],
    [
      'a winding above 1000 V has a table of its own',
      { object: 'winding', rated: volts(3000), set: volts(2500) },
      'go',
      ['set-fits pass set: test-voltage-2501-5000', 'winding-minimum-elsewhere note'],
      test,
    ],
    [
      'the circuits of a machine, tested too high',
      { object: 'machine-circuits', set: volts(501) },
      'no-go',
      ['set-too-high fail set: test-voltage-machine-circuits', 'minimum-of-table note: machine-minimum-60204'],
      test,
    ],
    [
      'nothing set',
      { set: missing },
      'undecided',
      ['set-voltage-missing undecided set: test-voltage-wiring-500', minimum],
      test,
    ],
    [
      'no rated voltage',
      { rated: missing },
      'undecided',
      ['rated-voltage-not-stated undecided rated'],
      ['state-rated'],
    ],
    [
      'a rated voltage that is only a bound',
      { rated: overOhms(400) },
      'undecided',
      ['rated-voltage-not-stated undecided rated'],
      ['state-rated'],
    ],
    [
      'a rated voltage of zero',
      { rated: volts(0) },
      'undecided',
      ['rated-voltage-not-stated undecided rated'],
      ['state-rated'],
    ],
    [
      'extra-low voltage',
      { object: 'extra-low', rated: volts(24), set: volts(250) },
      'go',
      ['set-fits pass set: test-voltage-extra-low', 'minimum-of-table note: installation-minimum-extra-low'],
      test,
    ],
    [
      'extra-low as DC only, at its end',
      { object: 'extra-low', rated: volts(120), set: volts(250) },
      'go',
      [
        'extra-low-only-dc caution rated: extra-low-end-ac extra-low-end',
        'set-fits pass set: test-voltage-extra-low',
        'minimum-of-table note: installation-minimum-extra-low',
      ],
      test,
    ],
    [
      'no extra-low voltage at all',
      { object: 'extra-low', rated: volts(121) },
      'undecided',
      ['not-extra-low undecided rated: extra-low-end'],
      ['choose-object-again'],
    ],
    [
      'wiring above low voltage',
      { rated: volts(1001) },
      'undecided',
      ['beyond-tables undecided rated: low-voltage-end'],
      ['ask-for-procedure'],
    ],
    [
      'wiring at the end of low voltage',
      { rated: volts(1000), set: volts(1000) },
      'go',
      ['set-fits pass set: test-voltage-wiring-above-500', 'minimum-of-table note: installation-minimum-above-500'],
      test,
    ],
    [
      'wiring between the ends of extra-low voltage is ordinary wiring',
      { rated: volts(110) },
      'go',
      [fits, minimum],
      test,
    ],
    [
      'a brake coil of 24 V: its minimum is no matter of this table',
      { ...brake(24), set: volts(250) },
      'go',
      ['set-fits pass set: test-voltage-extra-low', 'winding-minimum-elsewhere note'],
      [brakeOff, ...test],
    ],
    [
      'a brake coil behind a rectifier',
      brake(103),
      'undecided',
      ['brake-supply-unknown undecided rated: extra-low-end-ac extra-low-end'],
      ['choose-by-supply', brakeOff],
    ],
    ['a brake coil of the mains', brake(205), 'go', [fits, 'winding-minimum-elsewhere note'], [brakeOff, ...test]],
    [
      'a drive that is on: nobody is asked to press the button',
      { drive: 'connected' },
      'undecided',
      ['drive-connected stop drive', fits, minimum],
      ['take-drive-off'],
    ],
    [
      'a drive of which nothing is stated',
      { drive: 'unknown' },
      'undecided',
      ['drive-not-stated undecided drive', fits, minimum],
      ['take-drive-off'],
    ],
    [
      'sensitive parts of which nothing is stated: nobody is asked to press the button',
      { sensitive: 'unknown' },
      'undecided',
      ['sensitive-not-stated undecided sensitive', fits, minimum],
      ['take-sensitive-off'],
    ],
    [
      'sensitive parts that stay on',
      { sensitive: 'connected', set: volts(250) },
      'go',
      [
        'lower-for-sensitive caution sensitive: test-voltage-sensitive',
        'set-fits pass set: test-voltage-sensitive',
        minimum,
      ],
      ['join-conductors', ...test, 'repeat-at-full-voltage'],
    ],
    [
      'sensitive parts on a circuit outside the tables',
      { sensitive: 'connected', rated: volts(1001) },
      'undecided',
      [
        'lower-for-sensitive caution sensitive: test-voltage-sensitive',
        'beyond-tables undecided rated: low-voltage-end',
      ],
      ['ask-for-procedure'],
    ],
    ['feedback', { object: 'feedback' }, 'no-go', ['never-on-electronics fail'], ['check-feedback-otherwise']],
    [
      'an impossible figure',
      { set: volts(-500) },
      'undecided',
      ['figure-impossible undecided set'],
      ['read-figure-again'],
    ],
  ];
  it.each(rows)('%s', (_, change, verdict, lines, next) => {
    expect(assess(change).verdict).toBe(verdict);
    expect(said(change)).toEqual(lines);
    expect(steps(change)).toEqual(next);
  });
});

describe('the figures', () => {
  it('are the voltage that is set and that of the table', () => {
    const { setVolts, fromVolts, toVolts } = found(assess({ set: volts(250) }).findings, 'set-too-low');
    expect([setVolts, fromVolts, toVolts]).toEqual([250, 500, 500]);
    const fitting = found(assess({ object: 'winding', rated: volts(2300), set: volts(750) }).findings, 'set-fits');
    expect([fitting.setVolts, fitting.fromVolts, fitting.toVolts]).toEqual([750, 500, 1000]);
    expect(assess({}).next[0]).toEqual({ code: 'set-the-tester', volts: 500 });
    expect(assess({ object: 'winding', rated: volts(2300) }).next[0]).toEqual({ code: 'set-the-tester', volts: 500 });
  });

  // IEC 60364-6, table 6.1, and IEC 60204-1: recalled from memory.
  it.each<[Change, number]>([
    [{}, 1e6],
    [{ rated: volts(690) }, 1e6],
    [{ object: 'extra-low', rated: volts(24) }, 0.5e6],
    [{ object: 'machine-circuits' }, 1e6],
  ])('of the least resistance: %o', (change, least) => {
    expect(found(assess(change).findings, 'minimum-of-table').minimumOhms).toBe(least);
  });

  it('of the rated voltage stand in what is said of it', () => {
    const rated = (change: Change, code: 'not-extra-low' | 'beyond-tables' | 'brake-supply-unknown') =>
      found(assess(change).findings, code).ratedVolts;
    expect(rated({ object: 'extra-low', rated: volts(230) }, 'not-extra-low')).toBe(230);
    expect(rated({ rated: volts(1500) }, 'beyond-tables')).toBe(1500);
    expect(rated(brake(103), 'brake-supply-unknown')).toBe(103);
    const extraLow: Change = { object: 'extra-low', rated: volts(110), set: volts(250) };
    expect(found(assess(extraLow).findings, 'extra-low-only-dc').ratedVolts).toBe(110);
  });
});
