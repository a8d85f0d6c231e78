import { describe, expect, it } from 'vitest';
import { judgeAfterTrip, judgeRoutine } from '../../../../src/kernel/assessment/judge-insulation.ts';
import { type Instrument, intervalOf } from '../../../../src/kernel/reading/interval.ts';
import { typed } from '../../../support/typed.ts';

const point = 100e6;
const exactly = (factor: number) => ({ lo: factor, hi: factor });

function afterTrip(text: string, factor: { lo: number; hi: number }, instrument: Instrument = {}) {
  const reading = typed(text);
  return judgeAfterTrip(reading, intervalOf(reading, instrument), point, factor);
}

function routine(text: string, factor: { lo: number; hi: number }, instrument: Instrument = {}) {
  const reading = typed(text);
  return judgeRoutine(reading, intervalOf(reading, instrument), point, factor);
}

describe('after a trip, at the reference temperature', () => {
  it.each([
    ['100M', 'good'],
    ['101M', 'good'],
    ['20G', 'good'],
    ['>100M', 'good'],
    ['99M', 'bad'],
    ['0', 'bad'],
    ['450k', 'bad'],
    ['<50M', 'bad'],
    ['<100M', 'bound-too-high'],
    ['<1G', 'bound-too-high'],
    ['>99M', 'bound-too-low'],
    ['OL', 'bound-too-low'],
    ['under range', 'bound-too-low'],
  ])('%s is %s', (text, judgement) => {
    expect(afterTrip(text, exactly(1))).toBe(judgement);
  });

  it.each([
    ['95M', 10, 'too-close'],
    ['105M', 10, 'too-close'],
    ['112M', 10, 'good'],
    ['90M', 10, 'bad'],
    ['>105M', 10, 'bound-too-low'],
    ['>112M', 10, 'good'],
  ])('%s with ± %d percent is %s', (text, percent, judgement) => {
    expect(afterTrip(text, exactly(1), { percent })).toBe(judgement);
  });
});

describe('after a trip, at another temperature', () => {
  it.each([
    ['60M', 4, 'hot'],
    ['25M', 4, 'hot'],
    ['24M', 4, 'bad'],
    ['100M', 4, 'good'],
    ['150M', 0.5, 'cold'],
    ['199M', 0.5, 'cold'],
    ['200M', 0.5, 'good'],
    ['99M', 0.5, 'bad'],
    ['>150M', 0.5, 'bound-too-low'],
    ['>200M', 0.5, 'good'],
    ['<60M', 4, 'bound-too-high'],
    ['<20M', 4, 'bad'],
  ])('%s with the factor %d is %s', (text, factor, judgement) => {
    expect(afterTrip(text, exactly(factor))).toBe(judgement);
  });

  it('the accuracy counts at both temperatures', () => {
    expect(afterTrip('26M', exactly(4), { percent: 10 })).toBe('too-close');
    expect(afterTrip('60M', exactly(4), { percent: 10 })).toBe('hot');
    expect(afterTrip('210M', exactly(0.5), { percent: 10 })).toBe('too-close');
  });
});

describe('after a trip, at an unknown temperature', () => {
  const any = { lo: 0.25, hi: 256 };
  it.each([
    ['400M', 'good'],
    ['399M', 'temperature-needed'],
    ['100M', 'temperature-needed'],
    ['1M', 'temperature-needed'],
    ['390k', 'bad'],
    ['0', 'bad'],
    ['OL', 'bound-too-low'],
  ])('%s is %s', (text, judgement) => {
    expect(afterTrip(text, any)).toBe(judgement);
  });

  it('outside the method, only zero is bad and nothing is good', () => {
    const everything = { lo: 0, hi: Number.POSITIVE_INFINITY };
    expect(afterTrip('0', everything)).toBe('bad');
    expect(afterTrip('1 Ω', everything)).toBe('temperature-needed');
    expect(afterTrip('20G', everything)).toBe('temperature-needed');
  });
});

describe('in routine the corrected value alone counts', () => {
  it.each([
    ['25M', 4, 'good'],
    ['24M', 4, 'bad'],
    ['150M', 0.5, 'bad'],
    ['200M', 0.5, 'good'],
    ['>25M', 4, 'good'],
    ['>24M', 4, 'bound-too-low'],
    ['<24M', 4, 'bad'],
    ['<26M', 4, 'bound-too-high'],
  ])('%s with the factor %d is %s', (text, factor, judgement) => {
    expect(routine(text, exactly(factor))).toBe(judgement);
  });

  it('with a guard band and at an unknown temperature as after a trip', () => {
    expect(routine('26M', exactly(4), { percent: 10 })).toBe('too-close');
    expect(routine('26M', { lo: 0.25, hi: 256 })).toBe('temperature-needed');
    expect(routine('400M', { lo: 0.25, hi: 256 })).toBe('good');
    expect(routine('1 k', { lo: 0.25, hi: 256 })).toBe('bad');
  });
});
