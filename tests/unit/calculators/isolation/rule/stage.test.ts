import { describe, expect, it } from 'vitest';
import { judgeStage } from '../../../../../src/calculators/isolation/rule/stage.ts';
import { judgeAfterTrip } from '../../../../../src/kernel/assessment/judge-insulation.ts';
import { limitValue } from '../../../../../src/kernel/limits.ts';
import { type Instrument, type Interval, intervalOf } from '../../../../../src/kernel/reading/interval.ts';
import type { Reading } from '../../../../../src/kernel/reading/reading.ts';
import { typedPhases } from '../../../../support/typed.ts';

interface Given {
  instrument?: Instrument;
  factor?: Interval;
  tested?: boolean;
}

function judge(readings: string, given: Given = {}) {
  const { instrument = {}, tested = true, factor = { lo: 1, hi: 1 } } = given;
  const point = limitValue('after-trip-point');
  const judgeOne = (reading: Reading) => judgeAfterTrip(reading, intervalOf(reading, instrument), point, factor);
  return judgeStage('joined', typedPhases(readings), judgeOne, tested);
}
const codes = (...parameters: Parameters<typeof judge>) => judge(...parameters).findings.map(({ code }) => code);
const status = (...parameters: Parameters<typeof judge>) => judge(...parameters).status;

describe('a row of three readings', () => {
  it.each([
    ['600M | 610M | 605M', 'good'],
    ['100M | 100M | 100M', 'good'],
    ['>700M | >700M | 2G', 'good'],
    ['99M | 600M | 600M', 'bad'],
    ['0 | 0 | 0', 'bad'],
    ['<50M | 600M | 600M', 'bad'],
    ['OL | 600M | 600M', 'undecided'],
    ['<1G | 600M | 600M', 'undecided'],
    ['under range | 600M | 600M', 'undecided'],
    ['600M | 600M | ', 'undecided'],
    [' | | ', 'undecided'],
    ['2M | | ', 'bad'],
    ['2M | OL | 600M', 'bad'],
  ])('%s is %s', (readings, expected) => {
    expect(status(readings)).toBe(expected);
  });

  it('groups its terminals by what they show', () => {
    const { findings } = judge('2M | 600M | 3M');
    expect(findings).toHaveLength(2);
    expect(findings[0]).toMatchObject({ code: 'stage-bad', severity: 'fail', readings: ['joinedU', 'joinedW'] });
    expect(findings[1]).toMatchObject({ code: 'stage-good', severity: 'pass', readings: ['joinedV'] });
  });

  it('names its stage, its limit and the figure', () => {
    expect(judge('2M | 2M | 2M').findings[0]).toMatchObject({
      stage: 'joined',
      phases: ['U', 'V', 'W'],
      limits: ['after-trip-point'],
      limitOhms: 100e6,
      lowestOhms: 2e6,
    });
  });
});

describe('what keeps a row from being good', () => {
  it('a test voltage that passes nothing, though it still shows the bad', () => {
    expect(status('600M | 600M | 600M', { tested: false })).toBe('undecided');
    expect(status('2M | 600M | 600M', { tested: false })).toBe('bad');
  });

  it('a hot or a cold winding', () => {
    expect(codes('60M | 60M | 60M', { factor: { lo: 4, hi: 4 } })).toEqual(['stage-hot']);
    expect(codes('150M | 150M | 150M', { factor: { lo: 0.5, hi: 0.5 } })).toEqual(['stage-cold']);
    expect(codes('150M | 60M | 600M', { factor: { lo: 0.25, hi: 256 } })).toEqual([
      'stage-temperature-needed',
      'stage-good',
    ]);
  });

  it('the accuracy of the tester', () => {
    expect(codes('105M | 105M | 105M', { instrument: { percent: 10 } })).toEqual(['stage-too-close']);
    expect(codes('112M | 112M | 112M', { instrument: { percent: 10 } })).toEqual(['stage-good']);
  });

  it('a figure above the limit that was stated for the tester counts as over-range at that limit', () => {
    expect(codes('600M | 600M | 600M', { instrument: { upperLimit: 500e6 } })).toEqual(['stage-good']);
    expect(codes('600M | 600M | 600M', { instrument: { upperLimit: 50e6 } })).toEqual(['stage-bound-too-low']);
    expect(codes('500M | OL | 500M', { instrument: { upperLimit: 500e6 } })).toEqual(['stage-good']);
    expect(codes('OL | OL | OL', { instrument: { upperLimit: 50e6 } })).toEqual(['stage-bound-too-low']);
  });
});
