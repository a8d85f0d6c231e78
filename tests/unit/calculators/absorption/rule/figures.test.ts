import { describe, expect, it } from 'vitest';
import { ohms, overOhms, type Reading } from '../../../../../src/kernel/reading/reading.ts';
import { assess, find, megohms, said } from './curve.ts';

const pair = (first: Reading, last: Reading) => ({ readings: { 60: first, 600: last } });
const codes = (first: Reading, last: Reading) => said({}, pair(first, last)).map((text) => text.split(' ')[0]);

describe('the figures of the ratios', () => {
  // Each reading may be off by half a step of its last digit.
  const index = { lo: 1199.5 / 400.5, hi: 1200.5 / 399.5 };
  const ratio = { lo: 399.5 / 300.5, hi: 400.5 / 299.5 };

  it('are kept, with both errors at their worst', () => {
    const { index: kept, ratio: second } = assess({ 30: '300M', 60: '400M', 600: '1200M' });
    expect([kept?.lo, kept?.hi, second?.lo, second?.hi]).toEqual(
      [index.lo, index.hi, ratio.lo, ratio.hi].map((figure) => expect.closeTo(figure, 9)),
    );
  });

  it('are absent without both readings', () => {
    expect(Object.keys(assess({ 60: '400M' }))).toEqual(['verdict', 'findings', 'next']);
    expect(Object.keys(assess({ 30: '300M', 60: '400M' }))).toEqual(['verdict', 'findings', 'next', 'ratio']);
    expect(Object.keys(assess({ 60: '400M', 600: '1200M' }))).toEqual(['verdict', 'findings', 'next', 'index']);
  });

  it('stand beside the limit: 2 for today’s insulation, 1.5 for old', () => {
    const texts = { 60: '400M', 600: '1200M' };
    const { index: shown, wanted } = find(texts, 'index-meets');
    expect([shown.lo, wanted]).toEqual([expect.closeTo(index.lo, 9), 2]);
    expect(find(texts, 'index-meets', { thermalClass: 'A' }).wanted).toBe(1.5);
    expect(find({ 60: '400M', 600: '500M' }, 'index-below').wanted).toBe(2);
    expect(find({ 60: '6.00G', 600: '20.00G' }, 'index-says-nothing').highOhms).toBe(5e9);
    expect(find({ 60: '6.00G', 600: '20.00G' }, 'index-says-nothing').index.lo).toBeCloseTo(19.995 / 6.005, 9);
    expect(find({ 60: '50M', 600: '200M' }, 'one-minute-low').floorOhms).toBe(100e6);
  });

  it('of the first minute stand beside the span of the published limits', () => {
    const stated = find({ 30: '300M', 60: '400M' }, 'ratio-stated');
    expect([stated.ratio.lo, stated.from, stated.to]).toEqual([expect.closeTo(ratio.lo, 9), 1, 1.6]);
  });

  it('of two zeros without digits can be anything, and are no figures', () => {
    expect(assess({}, pair(ohms(0), ohms(0))).index).toEqual({ lo: 0, hi: Number.POSITIVE_INFINITY });
  });

  it('of two bounds can be anything', () => {
    expect(assess({}, pair(overOhms(1e9), overOhms(5e9))).index).toEqual({ lo: 0, hi: Number.POSITIVE_INFINITY });
  });
});

describe('exactly at a limit, with half a step of the last digit at its worst', () => {
  it.each<[string, Reading, Reading, string]>([
    ['2.0 at least passes', megohms(400), megohms(801.5), 'index-meets'],
    ['2.0 at most is not below', megohms(400), megohms(798.5), 'index-too-close'],
  ])('an index of %s', (_, first, last, code) => {
    expect(codes(first, last)[0]).toBe(code);
  });

  it('8 is not above 8', () => {
    expect(codes(megohms(400), megohms(3204.5))).not.toContain('index-dry');
    expect(codes(megohms(400), megohms(3205))).toContain('index-dry');
  });

  it('5 GΩ after a minute is not above 5 GΩ: the index counts', () => {
    expect(codes(megohms(4999.5), megohms(15_000))[0]).toBe('index-meets');
    expect(codes(megohms(5000), megohms(15_000))[0]).toBe('index-says-nothing');
  });

  it('100 MΩ after a minute is not low', () => {
    expect(codes(megohms(100.5), megohms(300))[0]).toBe('index-meets');
    expect(codes(megohms(100), megohms(300))[0]).toBe('one-minute-low');
  });
});

describe('the shape of the curve at its borders', () => {
  const shape = (readings: Record<number, Reading>) =>
    said({}, { readings }).filter((text) => text.startsWith('curve'));

  it('a rise of a tenth is no longer level', () => {
    expect(shape({ 60: megohms(400.5), 600: megohms(439.5) })).toEqual(['curve-rises note t60 t600']);
  });

  it('a difference that the last digit explains is no rise', () => {
    expect(shape({ 30: megohms(400), 60: megohms(401) })).toEqual([]);
    expect(shape({ 30: megohms(400), 60: megohms(402) })).toEqual(['curve-rises note t30 t60']);
  });

  it('level counts from ten times the first time', () => {
    expect(shape({ 30: megohms(400), 240: megohms(400) })).toEqual([]);
    expect(shape({ 30: megohms(400), 300: megohms(400) })[0]).toContain('curve-flat');
  });

  it('a fall of as much as a level curve may rise is no break yet', () => {
    const breaks = (low: number) => shape({ 60: megohms(440.5), 120: megohms(low), 600: megohms(1200) }).slice(1);
    expect(breaks(399.5)).toEqual([]);
    expect(breaks(399)).toEqual(['curve-breaks undecided t120: curve-level-change']);
  });

  it('is described with its first and last time, and the time of the first fall', () => {
    const fall = find({ 15: '500M', 60: '400M', 600: '300M' }, 'curve-falls');
    expect([fall.fromSeconds, fall.toSeconds]).toEqual([15, 600]);
    const level = find({ 60: '400M', 600: '410M' }, 'curve-flat');
    expect([level.fromSeconds, level.toSeconds]).toEqual([60, 600]);
    const uneven = { 15: '300M', 60: '500M', 120: '350M', 180: '340M', 600: '600M' };
    expect(find(uneven, 'curve-uneven').atSeconds).toBe(120);
    expect(find(uneven, 'curve-breaks').atSeconds).toBe(120);
  });
});
