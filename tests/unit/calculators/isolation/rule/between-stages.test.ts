import { describe, expect, it } from 'vitest';
import { motorGrounds } from '../../../../../src/calculators/isolation/rule/motor-grounds.ts';
import { missing } from '../../../../../src/kernel/reading/reading.ts';
import { typed } from '../../../../support/typed.ts';
import {
  assess,
  badJoined,
  badMotor,
  type Change,
  cable,
  celsius,
  codes,
  find,
  goodCable,
  goodMotor,
  joined,
  linesOf,
  motor,
  stage,
  steps,
  usual,
} from './separated.ts';

describe('PE read twice', () => {
  const pe = (first: string, again: string) => {
    const { parts, findings } = assess({
      ...joined('600M | 600M | 600M', first),
      peAgain: typed(again),
    });
    return [
      parts.protectiveConductor,
      ...findings.map(({ code }) => code).filter((code) => code.startsWith('joined-pe')),
    ];
  };

  it.each<[first: string, again: string, [part: string, ...findings: string[]]]>([
    ['0.2 Ω', '0.2 Ω', ['proven-good', 'joined-pe-short']],
    ['0.2 Ω', '5 Ω', ['suspect', 'joined-pe-not-short', 'joined-pe-suspect']],
    ['0.2 Ω', '>0.5 Ω', ['undecided', 'joined-pe-not-proven']],
    ['5 Ω', '>0.5 Ω', ['suspect', 'joined-pe-not-short', 'joined-pe-suspect']],
    ['5 Ω', '0.2 Ω', ['undecided', 'joined-pe-not-short', 'joined-pe-again-short']],
    ['', '0.2 Ω', ['not-tested', 'joined-pe-missing']],
    ['', '5 Ω', ['suspect', 'joined-pe-not-short', 'joined-pe-suspect']],
  ])('%s, then %s: the worse counts', (first, again, said) => {
    expect(pe(first, again)).toEqual(said);
  });
});

describe('the accuracy of the tester', () => {
  it('makes a cable too close to the after-trip point', () => {
    const near = { ...cable('105M | 105M | 105M', '5G | 5G | 5G') };
    expect(codes(near)).not.toContain('stage-too-close');
    expect(linesOf({ ...near, instrument: { percent: 10 } }, ['stage-too-close'])).toEqual([
      'stage-too-close undecided cableU cableV cableW',
    ]);
  });
});

describe('U, V and W joined beside a lower bound', () => {
  it('do not raise it', () => {
    const row = {
      joined: {
        ...stage('>50M | 600M | 600M', '0.2 Ω'),
        together: typed('>600M'),
      },
    };
    expect(linesOf(row, ['stage-good'])).not.toContain('stage-good pass joinedU joinedV joinedW');
    expect(assess({ ...row, ...goodCable, ...goodMotor }).verdict).toBe('undecided');
  });

  it('the lowest figure of a row is that of its figures', () => {
    expect(find(joined('600M | >1G | 700M'), 'stage-good').lowestOhms).toBe(600e6);
  });
});

describe('a leak that one row shows', () => {
  it('is none between cores if the bonded row was not taken', () => {
    const alone = cable('2M | 5G | 5G', undefined);
    expect(assess(alone).verdict).toBe('undecided');
    expect(codes(alone)).toContain('good-joined-bad-part');
  });

  it('with bonded cores makes the joined reading too high', () => {
    const change = {
      ...joined('2G | 2G | 2G'),
      ...cable('5G | 5G | 5G', '120M | 120M | 120M'),
      ...goodMotor,
    };
    expect(linesOf(change, ['joined-too-high'])).toHaveLength(3);
  });
});

describe('a part that a second reading speaks against', () => {
  const lost: Change = {
    moreOfMotor: { again: typed('90M'), dried: 'yes', sister: typed('10G') },
  };

  it('is suspect though its first reading passed', () => {
    const { parts, verdict } = assess({
      ...badJoined,
      ...goodCable,
      ...motor('500M | 500M | 500M'),
      ...lost,
    });
    expect([parts.motor, verdict]).toEqual(['suspect', 'no-go']);
  });

  it('counts without any joined reading, and no more once it is lifted', () => {
    const twice: Change = {
      ...badMotor,
      moreOfMotor: { again: typed('2M'), dried: 'yes' },
    };
    const unknown = { joined: { ...usual.joined, PE: missing } };
    expect(assess({ ...unknown, ...goodCable, ...twice })).toMatchObject({
      verdict: 'no-go',
      parts: { motor: 'proven-bad' },
    });
    const lifted: Change = {
      ...badMotor,
      moreOfMotor: { again: typed('5G'), dried: 'yes' },
    };
    expect(assess({ ...unknown, ...goodCable, ...lifted }).verdict).toBe('undecided');
  });
});

describe('what is asked for next', () => {
  it('good parts that do not explain a bad joined reading are measured again, whether or not the figures fit', () => {
    const change = {
      ...joined('90M | 90M | 90M'),
      ...cable('150M | 150M | 150M', '150M | 150M | 150M'),
      ...motor('150M | 150M | 150M'),
    };
    expect(codes(change)).toContain('fit');
    expect(steps(change)).toContain('re-measure-contradiction');
  });

  it('the PE core of a bad cable, if it was not read', () => {
    expect(
      steps({
        ...badJoined,
        ...cable('2M | 2M | 2M', '5G | 5G | 5G', ''),
        ...goodMotor,
      }),
    ).toContain('complete-cable');
  });
});

describe('the published minimum of a winding of 5 MΩ at 40 °C (IEEE 43, recalled from memory)', () => {
  const grounds = (temperature: string) => motorGrounds({ ...usual, correction: 'halving' }, celsius(temperature));
  const exactly = (ohm: number) => ({ lo: ohm, hi: ohm });

  it('is not undercut by a reading of exactly as much', () => {
    const { belowMinimum } = grounds('20');
    expect([belowMinimum(exactly(5e6)), belowMinimum(exactly(4.99e6))]).toEqual([false, true]);
  });

  it('of a hot winding is compared with the most that it can be at room temperature', () => {
    // Halving at 50 °C: eight times as much at 20 °C.
    const { belowMinimum, most } = grounds('50');
    expect(most(exactly(625e3))).toBe(5e6);
    expect([belowMinimum(exactly(625e3)), belowMinimum(exactly(624e3))]).toEqual([false, true]);
  });

  it('leaves out a method that does not cover the temperature', () => {
    // The table ends at 70 °C.
    expect(grounds('80').most(exactly(1e4))).toBe(64e4);
  });
});
