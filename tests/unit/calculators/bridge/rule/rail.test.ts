import { describe, expect, it } from 'vitest';
import { judgeRail } from '../../../../../src/calculators/bridge/rule/rail.ts';
import type { Rail } from '../../../../../src/calculators/bridge/rule/switch-position.ts';
import type { Instrument } from '../../../../../src/kernel/reading/interval.ts';
import { found } from '../../../../support/found.ts';
import { typedPhases } from '../../../../support/typed.ts';

const judge = (rail: Rail, readings: string, instrument: Instrument = {}, tolerance = 10) =>
  judgeRail(rail, typedPhases(readings), tolerance, instrument);

const outcome = (...parameters: Parameters<typeof judge>) =>
  judge(...parameters).map(({ code, severity }) => `${severity} ${code}`);

const suspects = (...parameters: Parameters<typeof judge>) =>
  judge(...parameters).flatMap((one) => ('suspects' in one ? one.suspects : []));

describe('a sound rail', () => {
  it.each([
    ['plus', '450k | 455k | 460k'],
    ['plus', '100k | 105k | 110k'],
    ['plus', '5M | 5.2M | 5.1M'],
    ['minus', '45k | 46k | 47k'],
    ['minus', '10k | 10.5k | 11k'],
    ['minus', '91k | 95k | 100k'],
  ] as const)('%s %s is balanced', (rail, readings) => {
    expect(outcome(rail, readings)).toEqual(['pass rail-balanced']);
  });

  it('passes exactly at the tolerance, despite binary rounding', () => {
    expect(outcome('plus', '300k | 330k | 310k')).toEqual(['pass rail-balanced']);
    expect(outcome('minus', '70k | 77k | 70k')).toEqual(['pass rail-balanced']);
  });

  it('gives both usual figures of spread', () => {
    const balanced = found(judge('plus', '400k | 410k | 420k'), 'rail-balanced');
    expect(balanced).toMatchObject({ tolerancePercent: 10, differences: { spreadPercent: 5 } });
    expect(balanced.differences.deviationPercent).toBeCloseTo(2.4390244, 7);
    expect(balanced.limits).toEqual(['bridge-tolerance']);
    expect(balanced.readings).toEqual(['plusU', 'plusV', 'plusW']);
  });

  it('is open if all three are over-range on a range that could have shown a usual reading', () => {
    expect(outcome('plus', '>10M | >10M | >10M')).toEqual(['pass rail-open']);
    expect(outcome('minus', '>1M | >1M | >1M')).toEqual(['pass rail-open']);
    expect(outcome('plus', '>10M | >72M | >72M')).toEqual(['pass rail-open']);
  });

  it('is open with a caution if the range was not noted', () => {
    expect(outcome('plus', 'OL | OL | OL')).toEqual(['pass rail-open', 'caution rail-range-not-noted']);
    expect(outcome('plus', '>72M | OL | >72M')).toEqual(['pass rail-open', 'caution rail-range-not-noted']);
    expect(outcome('plus', 'OL | OL | OL', { upperLimit: 72e6 })).toEqual(['pass rail-open']);
  });
});

describe('a size that is not usual, though balanced', () => {
  it.each([
    ['plus', '9k | 9.2k | 9.4k'],
    ['minus', '9.9k | 10k | 10.1k'],
  ] as const)('%s %s passes with a caution', (rail, readings) => {
    expect(outcome(rail, readings)).toEqual(['pass rail-balanced', 'caution rail-lower-than-usual']);
  });

  it.each(['45k | 46k | 47k', '99k | 100k | 101k', '450k | 455k | 460k'])(
    '%s is usual on either rail: it depends on the model',
    (readings) => {
      for (const rail of ['plus', 'minus'] as const) expect(outcome(rail, readings)).toEqual(['pass rail-balanced']);
    },
  );

  it('open is usual on either rail', () => {
    for (const rail of ['plus', 'minus'] as const)
      expect(outcome(rail, '>72M | >72M | >72M')).toEqual(['pass rail-open']);
  });
});

describe('shorts', () => {
  it.each([
    ['0.3 Ω | 450k | 455k', ['plusU']],
    ['450k | 0 | 455k', ['plusV']],
    ['450k | 455k | 1k', ['plusW']],
    ['450k | 455k | <1k', ['plusW']],
    ['0.3 Ω | 0.2 Ω | 455k', ['plusU', 'plusV']],
    ['0.3 Ω | OL | OL', ['plusU']],
    ['0.3 Ω | | ', ['plusU']],
  ])('%s', (readings, positions) => {
    expect(outcome('plus', readings)).toContain('fail rail-short');
    expect(suspects('plus', readings)).toEqual(positions);
  });

  it('in all three are shorts still, with the hint that this is rare', () => {
    expect(outcome('minus', '0.3 Ω | 0.3 Ω | 0.3 Ω')).toEqual(['fail rail-short', 'caution rail-all-short']);
  });

  it('are named together with a disagreement of the other two', () => {
    expect(outcome('plus', '0.3 Ω | 450k | 4k')).toEqual(['fail rail-short', 'fail rail-unbalanced']);
  });

  it('are not proven if the reading allows more', () => {
    expect(outcome('plus', '<2k | 450k | 455k')).toContain('undecided rail-short-possible');
    expect(outcome('plus', '1.05k | 1.05k | 1.05k', { percent: 10 })).toContain('undecided rail-short-possible');
    expect(outcome('plus', '1k | 1k | 1k', { percent: 1 })).not.toContain('fail rail-short');
    expect(outcome('plus', '<1k | 450k | 455k', { percent: 1 })).toContain('undecided rail-short-possible');
  });

  it('just above the limit are judged by balance', () => {
    expect(outcome('minus', '1.01k | 1.02k | 1.03k')).toEqual(['pass rail-balanced', 'caution rail-lower-than-usual']);
  });

  it('under-range without a figure may be shorts, never open circuits', () => {
    expect(outcome('plus', 'under range | under range | under range')).toEqual(['undecided rail-short-possible']);
    expect(outcome('plus', 'under range | OL | OL')).toEqual(['undecided rail-short-possible']);
    expect(outcome('plus', 'under range | 450k | 5k')).toEqual([
      'undecided rail-short-possible',
      'fail rail-unbalanced',
    ]);
  });
});

describe('a disagreement', () => {
  it.each([
    ['450k | 455k | 300k', ['plusW']],
    ['450k | 700k | 455k', ['plusV']],
    ['300k | 450k | 455k', ['plusU']],
    ['100k | 120k | 140k', ['plusU', 'plusV', 'plusW']],
    ['450k | OL | OL', ['plusU']],
    ['OL | 450k | OL', ['plusV']],
    ['450k | 455k | OL', ['plusW']],
    ['450k | >2M | >2M', ['plusU']],
    ['>2M | >72M | 450k', ['plusW']],
    ['450k | 455k | >720k', ['plusW']],
    ['450k | 5k | ', ['plusU', 'plusV']],
  ])('%s names the odd one out: %o', (readings, positions) => {
    expect(outcome('plus', readings)).toContain('fail rail-unbalanced');
    expect(suspects('plus', readings)).toEqual(positions);
  });

  it('gives its size, against the smaller and from the mean', () => {
    const { differences } = found(judge('plus', '300k | 300k | 360k'), 'rail-unbalanced');
    expect(differences).toEqual({ spreadPercent: 20, deviationPercent: 12.5 });
  });

  it('beside an over-range has no size', () => {
    const unbalanced = found(judge('plus', '450k | 455k | >2M'), 'rail-unbalanced');
    expect(unbalanced.tolerancePercent).toBe(10);
    expect(unbalanced.differences).toBeUndefined();
  });

  it('depends on the tolerance that was set', () => {
    expect(outcome('plus', '300k | 300k | 360k', {}, 25)).toEqual(['pass rail-balanced']);
    expect(outcome('plus', '400k | 410k | 420k', {}, 4)).toEqual(['fail rail-unbalanced']);
  });
});

describe('too close or out of range to decide', () => {
  it('an over-range beside a value just below its bound needs a higher range', () => {
    expect(outcome('plus', '700k | 705k | >720k')).toEqual(['undecided rail-range-too-low']);
    expect(outcome('plus', '700k | >720k | >720k')).toEqual(['undecided rail-range-too-low']);
  });

  it('is a disagreement once the gap to the bound exceeds the tolerance', () => {
    expect(outcome('plus', '654k | 654k | >720k')).toEqual(['fail rail-unbalanced']);
    expect(outcome('plus', '655k | 655k | >720k')).toEqual(['undecided rail-range-too-low']);
  });

  it('three over-ranges on a range below the usual readings prove nothing', () => {
    expect(outcome('plus', '>72k | >72k | >72k')).toEqual(['undecided rail-range-too-low']);
    expect(outcome('minus', '>6k | >6k | >6k')).toEqual(['undecided rail-range-too-low']);
    expect(outcome('minus', '>720k | >720k | >720k')).toEqual(['undecided rail-range-too-low']);
    expect(outcome('plus', '>0 | >0 | >0')).toEqual(['undecided rail-range-too-low']);
    expect(outcome('plus', 'OL | OL | OL', { upperLimit: 72e3 })).toEqual(['undecided rail-range-too-low']);
  });

  it('values above the meter’s own limit contradict it', () => {
    expect(outcome('plus', '80M | 81M | 82M', { upperLimit: 72e6 })).toEqual(['undecided rail-range-too-low']);
  });

  it('a spread that the accuracy may carry over the tolerance is too close to call', () => {
    const { range } = found(judge('plus', '400k | 430k | 432k', { percent: 2 }), 'rail-too-close');
    expect(range?.leastPercent).toBeCloseTo(((432 * 0.98) / (400 * 1.02)) * 100 - 100, 9);
    expect(range?.mostPercent).toBeCloseTo(((432 * 1.02) / (400 * 0.98)) * 100 - 100, 9);
  });

  it('counts of the last digit matter as much as percent', () => {
    expect(outcome('minus', '20k | 21.5k | 21.8k')).toEqual(['pass rail-balanced']);
    expect(outcome('minus', '20k | 21k | 22k', { counts: 3 })).toEqual(['undecided rail-too-close']);
    expect(outcome('minus', '20.00k | 21.00k | 21.50k', { counts: 3 })).toEqual(['pass rail-balanced']);
  });

  it('a disagreement that no accuracy explains fails all the same', () => {
    expect(outcome('plus', '450k | 455k | 300k', { percent: 2, counts: 3 })).toEqual(['fail rail-unbalanced']);
  });
});

describe('missing readings', () => {
  it.each([
    ['450k | 455k | ', ['minusW']],
    ['450k |  | ', ['minusV', 'minusW']],
    [' |  | ', ['minusU', 'minusV', 'minusW']],
    ['OL | OL | ', ['minusW']],
  ])('%s are named and bar every pass', (readings, absent) => {
    const findings = judge('minus', readings);
    expect(findings.map(({ code }) => code)).toEqual(['rail-incomplete']);
    expect(findings[0]?.readings).toEqual(absent);
  });
});
