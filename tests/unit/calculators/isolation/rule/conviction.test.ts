import { describe, expect, it } from 'vitest';
import {
  type Grounds,
  type MoreEvidence,
  standingOf,
} from '../../../../../src/calculators/isolation/rule/conviction.ts';
import type { IsolationInput } from '../../../../../src/calculators/isolation/rule/input.ts';
import { motorGrounds } from '../../../../../src/calculators/isolation/rule/motor-grounds.ts';
import { limitValue } from '../../../../../src/kernel/limits.ts';
import type { Interval } from '../../../../../src/kernel/reading/interval.ts';
import { typed } from '../../../../support/typed.ts';

const exactly = (ohms: number): Interval => ({ lo: ohms, hi: ohms });
const cable: Grounds = {
  belowMinimum: ({ hi }) => hi < 1e6,
  minimum: { ohms: 1e6, limits: ['machine-minimum-60204'] },
  most: ({ hi }) => hi,
};

interface Given {
  first?: number;
  again?: number;
  judgement?: 'good' | 'bad' | 'unclear';
  dried?: MoreEvidence['dried'];
  sister?: number;
  grounds?: Grounds;
}

function stand({ first = 50e6, again, judgement = 'bad', dried, sister, grounds = cable }: Given) {
  const second = again === undefined ? undefined : { reading: exactly(again), judgement };
  const evidence = { dried, sister: sister === undefined ? undefined : exactly(sister) };
  return standingOf('cable', exactly(first), second, evidence, grounds);
}
const codes = (given: Given) => stand(given).findings.map(({ code }) => code);

describe('one reading', () => {
  it('makes a part suspect, and asks for the second', () => {
    const { standing, findings } = stand({});
    expect(standing).toBe('suspect');
    expect(findings).toEqual([
      { code: 'part-suspect', severity: 'caution', readings: [], limits: [], part: 'cable', lacks: 'second-reading' },
    ]);
  });

  it('counts as one if the second does not tell', () => {
    expect(stand({ again: 50e6, judgement: 'unclear' }).standing).toBe('suspect');
    expect(codes({ again: 50e6, judgement: 'unclear' })).toEqual(['again-unclear', 'part-suspect']);
  });
});

it('a good second reading lifts it, dried or not', () => {
  for (const dried of ['yes', 'no', undefined] as const) {
    const { standing, findings } = stand({ first: 5, again: 5e9, judgement: 'good', dried });
    expect(standing).toBe('lifted');
    expect(findings).toEqual([
      {
        ...{ code: 'dried-and-good', severity: 'undecided', part: 'cable' },
        ...{ readings: ['cableAgain'], limits: ['after-trip-point'] },
      },
    ]);
  }
});

describe('two readings', () => {
  it.each([
    ['a short twice', { first: 9e3, again: 9.9e3 }, 'short-twice', 10e3, ['short-beyond-moisture']],
    [
      'below the minimum, dry',
      { first: 0.9e6, again: 0.99e6, dried: 'yes' },
      'below-minimum',
      1e6,
      ['machine-minimum-60204'],
    ],
    [
      'ten times below itself, dry',
      { first: 50e6, again: 50e6, dried: 'yes', sister: 500e6 },
      'far-below-own',
      50e6,
      ['far-below-own'],
    ],
  ] as const)('convict: %s', (_, given, ground, limitOhms, limits) => {
    const { standing, findings } = stand(given);
    expect(standing).toBe('convicted');
    expect(findings.map(({ code }) => code)).toEqual(['again-bad', 'part-convicted']);
    expect(findings[0]).toMatchObject({
      severity: 'fail',
      readings: ['cableAgain'],
      limits: ['after-trip-point'],
      limitOhms: 100e6,
    });
    expect(findings[1]).toMatchObject({ severity: 'note', readings: ['cableAgain'], ground, limitOhms, limits });
  });

  it.each([
    ['a short, then 10 kΩ, wet', { first: 1, again: 10e3 }, 'drying'],
    ['10 kΩ, then a short, wet', { first: 10e3, again: 1 }, 'drying'],
    ['below the minimum, wet', { first: 0.5e6, again: 0.5e6 }, 'drying'],
    ['below the minimum, said not to be dry', { first: 0.5e6, again: 0.5e6, dried: 'no' }, 'drying'],
    ['dry, nothing to compare with', { first: 50e6, again: 50e6, dried: 'yes' }, 'comparison'],
    ['dry, low as it was before', { first: 30e6, again: 39e6, dried: 'yes', sister: 40e6 }, 'comparison'],
    ['dry, not ten times below', { first: 50e6, again: 50.1e6, dried: 'yes', sister: 500e6 }, 'comparison'],
  ] as const)('leave it suspect: %s', (_, given, lacks) => {
    const { standing, findings } = stand(given);
    expect(standing).toBe('suspect');
    expect(findings.map(({ code }) => code)).toEqual(['again-bad', 'part-suspect']);
    expect(findings[1]).toMatchObject({ lacks });
  });
});

describe('a motor', () => {
  const at = (celsius: string, correction: IsolationInput['correction'] = 'halving') =>
    motorGrounds({ correction } as IsolationInput, typed(celsius, 'temperature'));

  // IEEE 43: 5 MΩ at 40 °C, random-wound. At 20 °C by halving 20 MΩ, by the formulas (k = 1245) 6.6 MΩ, by the table 12.5 MΩ.
  it.each([
    ['40 °C', 4.9e6, true],
    ['40 °C', 5.1e6, false],
    ['20 °C', 4.9e6, true],
    // Below it by every correction, but not as read.
    ['20 °C', 6e6, false],
    ['26 °C', 19.5e6, false],
    // 15 MΩ at 20 °C by halving: an old winding that is sound.
    ['60 °C', 0.93e6, false],
    ['60 °C', 0.3e6, true],
    ['', 0.07e6, true],
    ['', 4e6, false],
  ] as const)('at “%s” with %d Ω is below its minimum: %s', (celsius, ohms, below) => {
    expect(at(celsius).belowMinimum(exactly(ohms))).toBe(below);
  });

  it('is never below by an open end', () => {
    expect(at('40 °C').belowMinimum({ lo: 1, hi: Number.POSITIVE_INFINITY })).toBe(false);
  });

  it('can be as high as read, or at 20 °C by the most generous method', () => {
    expect(at('20 °C').most(exactly(10e6))).toBe(10e6);
    expect(at('40 °C').most(exactly(10e6))).toBe(40e6);
    expect(at('10 °C').most(exactly(10e6))).toBe(10e6);
    expect(at('').most(exactly(10e6))).toBe(Number.POSITIVE_INFINITY);
  });

  it('names the limits of its minimum', () => {
    expect(at('40 °C', 'table').minimum).toEqual({
      ohms: 5e6,
      limits: ['ieee43-minimum-random-wound', 'reference-temperature-routine', 'solid-insulation-to-20'],
    });
  });
});

describe('a part that reads as it always did is not condemned by a minimum', () => {
  /** A winding whose published minimum is 5 MΩ. */
  const winding: Grounds = {
    belowMinimum: ({ hi }) => hi < 5e6,
    minimum: { ohms: 5e6, limits: ['ieee43-minimum-random-wound'] },
    most: ({ hi }) => hi,
  };
  const both = (ohms: number, sister: number) =>
    stand({ first: ohms, again: ohms, dried: 'yes', sister, grounds: winding }).standing;

  it('as long as it has what the machine needs, a megohm', () => {
    expect([both(3e6, 4e6), both(1e6, 2e6)]).toEqual(['suspect', 'suspect']);
    expect(both(0.9e6, 1e6)).toBe('convicted');
  });

  it('and is not far below its own earlier reading', () => {
    const times = limitValue('far-below-own');
    expect(both(3e6, 3e6 * times * 0.99)).toBe('suspect');
    expect(both(3e6, 3e6 * times)).toBe('convicted');
    expect(codes({ first: 3e6, again: 3e6, dried: 'yes', sister: 3e6 * times, grounds: winding })).toContain(
      'part-convicted',
    );
    const { findings } = stand({ first: 3e6, again: 3e6, dried: 'yes', sister: 3e6 * times, grounds: winding });
    expect(findings.find(({ code }) => code === 'part-convicted')).toMatchObject({ ground: 'below-minimum' });
  });
});
