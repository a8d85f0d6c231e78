import { describe, expect, it } from 'vitest';
import type { InputPayloads, Line, Side } from '../../../../../src/calculators/input-circuit/rule/input.ts';
import { missing, type Reading, volts } from '../../../../../src/kernel/reading/reading.ts';
import { found } from '../../../../support/found.ts';
import { lineWithLimits } from '../../../../support/lines.ts';
import { allLines, assess, type Change, drop, linesWith, ol, pairLimits, pairs, sound, three } from './sound.ts';

// Common practice, no source: what a diode shows in the diode test.

const zero = volts(0.002);
const bound: Reading = { kind: 'over', unit: 'V', atLeast: 1 };

/** The sound rectifier with these readings at some of the lines of one side. */
function at(side: Side, lines: readonly Line[], conducting: Reading, blocking: Reading): Change {
  const changed = (row: 'Conducting' | 'Blocking', reading: Reading) => ({
    ...sound[`${side}${row}`],
    ...Object.fromEntries(lines.map((line) => [line, reading])),
  });
  return {
    [`${side}Conducting`]: changed('Conducting', conducting),
    [`${side}Blocking`]: changed('Blocking', blocking),
  };
}

const uneven = (side: Side) =>
  `rectifier-uneven undecided ${allLines.map((line) => `${side}Conducting${line}`).join(' ')}: diode-balance`;

describe.each(['plus', 'minus'] as const)('diodes at the side of %s', (side) => {
  type Row = [what: string, Reading, Reading, start: string, next: string[]];
  const rows: Row[] = [
    ['short', zero, zero, 'rectifier-short fail', ['read-twice']],
    ['short one way', drop, zero, 'rectifier-short fail', ['read-twice']],
    ['leaks', drop, volts(0.6), 'rectifier-leaky fail', ['read-twice']],
    ['short, at its mark', volts(0.1), volts(0.1), 'rectifier-short fail', ['read-twice']],
    ['open', ol, ol, 'rectifier-open fail', ['read-twice']],
    // A meter that shows higher figures.
    ['open, with a figure', volts(1.5), volts(2), 'rectifier-open fail', ['read-twice']],
    ['exchanged', ol, drop, 'rectifier-exchanged undecided', ['measure-rectifier']],
    ['unclear', bound, ol, 'rectifier-unclear undecided', ['measure-rectifier']],
  ];
  it.each(rows)('one that is %s', (what, conducting, blocking, start, next) => {
    for (const line of allLines) {
      const assessment = assess(at(side, [line], conducting, blocking));
      const expected = `${start} ${pairs(side, [line])}: ${pairLimits}`;
      expect(assessment.findings.map(lineWithLimits)).toEqual(linesWith({ rectifier: [expected] }));
      expect(assessment.next.map(({ code }) => code)).toEqual([...next, 'measure-bus-again']);
      const one = assessment.findings.find(({ code }) => start.startsWith(code));
      expect(one).toMatchObject({
        diodes: [{ side, line }],
        ...(what.startsWith('short') && { bothWays: what !== 'short one way' }),
      });
    }
  });

  it('one that is not measured', () => {
    for (const line of allLines) {
      for (const [conducting, blocking] of [[missing, ol] as const, [drop, missing] as const]) {
        const { findings, next } = assess(at(side, [line], conducting, blocking));
        const rectifier = [`rectifier-missing undecided ${pairs(side, [line])}`];
        expect(findings.map(lineWithLimits)).toEqual(linesWith({ rectifier }));
        expect(next.map(({ code }) => code)).toEqual(['measure-rectifier', 'measure-bus-again']);
      }
    }
  });

  it('all of them open', () => {
    const { findings, next } = assess(at(side, allLines, ol, ol));
    const rectifier = [`rectifier-side-open undecided ${pairs(side)}: ${pairLimits}`];
    expect(findings.map(lineWithLimits)).toEqual(linesWith({ rectifier }));
    expect(next.map(({ code }) => code)).toEqual(['compare-input', 'measure-bus-again']);
    expect(found(findings, 'rectifier-side-open').side).toBe(side);
  });

  it('some open: those that conduct and block beside them decide', () => {
    const beside = (L2: [Reading, Reading], L3: [Reading, Reading]) =>
      assess({
        [`${side}Conducting`]: three(ol, L2[0], L3[0]),
        [`${side}Blocking`]: three(ol, L2[1], L3[1]),
      }).findings.map(({ code }) => code);
    const leaky: [Reading, Reading] = [drop, volts(0.6)];
    const unmeasured: [Reading, Reading] = [missing, missing];
    expect(beside(leaky, [drop, ol])).toEqual(expect.arrayContaining(['rectifier-leaky', 'rectifier-open']));
    expect(beside([ol, ol], [drop, ol])).toEqual(expect.arrayContaining(['rectifier-open']));
    expect(beside(leaky, leaky)).toEqual(expect.arrayContaining(['rectifier-leaky', 'rectifier-side-open']));
    expect(beside(unmeasured, unmeasured)).toEqual(
      expect.arrayContaining(['rectifier-side-open', 'rectifier-missing']),
    );
  });

  const drops: [L2: number, L3: number, apart: number | undefined][] = [
    [0.46, 0.46, undefined],
    [0.51, 0.46, undefined],
    [0.511, 0.46, 0.051],
    [0.46, 0.4, 0.06],
    [0.5, 0.44, 0.06],
    [0.86, 0.46, 0.4],
  ];
  it.each(drops)('0.46 V beside %d V and %d V', (L2, L3, apart) => {
    const { findings, next } = assess({ [`${side}Conducting`]: three(drop, volts(L2, 0.001), volts(L3, 0.001)) });
    if (apart === undefined) {
      expect(findings.map(lineWithLimits)).toEqual(linesWith({}));
    } else {
      expect(findings.map(lineWithLimits)).toEqual(linesWith({ rectifier: [uneven(side)] }));
      expect(found(findings, 'rectifier-uneven')).toMatchObject({ side, apartVolts: expect.closeTo(apart, 9) });
      expect(next.map(({ code }) => code)).toEqual(['measure-rectifier', 'compare-input', 'measure-bus-again']);
    }
  });

  it('drops of 0.16 V and 0.11 V are 0.05 V apart, in binary fractions too', () => {
    const { findings } = assess({ [`${side}Conducting`]: three(volts(0.16), volts(0.11), volts(0.16)) });
    expect(findings.map(lineWithLimits)).toEqual(linesWith({}));
  });

  it.each([0.101, 1.499])('%d V of one that blocks the other way is a drop, far from that of its fellows', (shown) => {
    const { findings } = assess(at(side, ['L2'], volts(shown), ol));
    expect(findings.map(lineWithLimits)).toEqual(linesWith({ rectifier: [uneven(side)] }));
  });

  it('uneven drops name only the diodes that have one', () => {
    const { findings } = assess({ [`${side}Conducting`]: three(drop, ol, volts(0.56)) });
    expect(findings.map(lineWithLimits)).toContain(
      `rectifier-uneven undecided ${side}ConductingL1 ${side}ConductingL3: diode-balance`,
    );
  });
});

describe('several of them', () => {
  it('both sides open', () => {
    const { findings } = assess({ plusConducting: three(ol), minusConducting: three(ol) });
    const rectifier = (['plus', 'minus'] as const).map(
      (side) => `rectifier-side-open undecided ${pairs(side)}: ${pairLimits}`,
    );
    expect(findings.map(lineWithLimits)).toEqual(linesWith({ rectifier }));
  });

  it('one bad in each way, the worst first', () => {
    const { findings } = assess({
      plusConducting: three(drop, drop, ol),
      plusBlocking: three(zero, volts(0.6), drop),
      minusConducting: three(ol, drop, missing),
      minusBlocking: three(ol, bound, ol),
    });
    const rectifier = [
      `rectifier-short fail ${pairs('plus', ['L1'])}: ${pairLimits}`,
      `rectifier-leaky fail ${pairs('plus', ['L2'])}: ${pairLimits}`,
      `rectifier-side-open undecided ${pairs('minus', ['L1'])}: ${pairLimits}`,
      `rectifier-exchanged undecided ${pairs('plus', ['L3'])}: ${pairLimits}`,
      `rectifier-unclear undecided ${pairs('minus', ['L2'])}: ${pairLimits}`,
      `rectifier-missing undecided ${pairs('minus', ['L3'])}`,
    ];
    expect(findings.map(lineWithLimits)).toEqual(linesWith({ rectifier }));
  });

  it('a short both ways beside one of one way', () => {
    const { findings } = assess({ plusConducting: three(zero), plusBlocking: three(zero, zero, ol) });
    const shorts = findings.filter(({ code }) => code === 'rectifier-short');
    const bothWays: InputPayloads['rectifier-short'] = {
      bothWays: true,
      diodes: [
        { side: 'plus', line: 'L1' },
        { side: 'plus', line: 'L2' },
      ],
    };
    expect(shorts).toMatchObject([bothWays, { bothWays: false, diodes: [{ side: 'plus', line: 'L3' }] }]);
  });

  it('a drive on one phase has no third line', () => {
    const bad = { plusConducting: three(drop, drop, zero), minusBlocking: three(ol, ol, zero) };
    const { findings } = assess({ ...bad, lines: 'two' });
    const two: Line[] = ['L1', 'L2'];
    expect(findings.map(lineWithLimits)).toEqual(
      linesWith({
        fuses: ['fuses-conduct pass fuseL1 fuseL2: tips-together'],
        rectifier: [
          `rectifier-sound pass ${pairs('plus', two)} ${pairs('minus', two)}: ${pairLimits}`,
          'lines-not-judged caution',
        ],
      }),
    );
  });

  it('the error of the meter takes a decision away', () => {
    const change = { plusBlocking: three(volts(1.5)) };
    expect(assess(change).verdict).toBe('go');
    const { findings } = assess({ ...change, instrument: { percent: 5 } });
    expect(findings.map(({ code }) => code)).toContain('rectifier-unclear');
  });
});
