import { describe, expect, it } from 'vitest';
import type { IsolationFinding } from '../../../../../src/calculators/isolation/rule/input.ts';
import { lowestOf } from '../../../../../src/calculators/isolation/rule/part-readings.ts';
import { missing } from '../../../../../src/kernel/reading/reading.ts';
import { typed } from '../../../../support/typed.ts';
import { assess, type Change, cable, celsius, find, goodMotor, joined, linesOf, motor, steps } from './separated.ts';

const again = (text: string): Change => ({ moreOfCable: { again: typed(text), dried: 'yes' } });
const length = (metres: string): Change => ({
  cableMetres: typed(metres, 'length'),
  cableMaterial: 'pvc',
  cableTemperature: celsius('20'),
  filter: 'none',
});

describe('the length of the cable', () => {
  const low = cable('60M | 60M | 60M', '60M | 60M | 60M');
  const change = { ...joined('30M | 30M | 30M'), ...low, ...goodMotor };

  it('that explains its readings leaves it undecided, and no longer no-go', () => {
    expect(assess(change)).toMatchObject({ verdict: 'no-go', parts: { cable: 'suspect' } });
    expect(assess({ ...change, ...length('500 m') })).toMatchObject({
      verdict: 'undecided',
      parts: { cable: 'undecided' },
    });
    expect(linesOf({ ...change, ...length('500 m') }, ['stage-length-explains'])).toEqual([
      'stage-length-explains undecided cableU cableV cableW',
      'stage-length-explains undecided bondedU bondedV bondedW',
    ]);
    expect(steps({ ...change, ...length('500 m') })).toEqual(['complete-cable', 'compare-cable']);
  });

  it('explains its PE core as well', () => {
    const pe = { ...change, ...cable('5G | 5G | 5G', '5G | 5G | 5G', '60M'), ...length('500 m') };
    expect(linesOf(pe, ['cable-pe-length-explains'])).toEqual(['cable-pe-length-explains undecided cablePE']);
    expect(assess(pe).verdict).toBe('undecided');
    expect(steps(pe)).toContain('compare-cable');
  });

  it('is unknown without the material', () => {
    const { cableMaterial: _material, ...rest } = length('500 m');
    expect(assess({ ...change, ...rest }).verdict).toBe('no-go');
  });

  it('uses the temperature of the cable', () => {
    const warm = { ...change, ...length('500 m'), cableTemperature: missing };
    expect(assess(warm).verdict).toBe('no-go');
  });

  it('proves no core bad that is below what a sound cable of this length has: an earlier reading does', () => {
    const core = {
      ...joined('2M | 2M | 2M'),
      ...cable('2M | 60M | 60M', '2M | 60M | 60M'),
      ...goodMotor,
    };
    const known = { ...core, ...again('2M'), ...length('100 m') };
    expect(assess(known)).toMatchObject({ verdict: 'no-go', parts: { cable: 'suspect' } });
    expect(find(known, 'part-suspect')).toMatchObject({ part: 'cable', lacks: 'comparison' });
    expect(steps(known)).toContain('compare-cable');
    const before = (sister: string): Change => ({
      ...known,
      moreOfCable: { again: typed('2M'), dried: 'yes', sister: typed(sister) },
    });
    expect(assess(before('19M')).parts.cable).toBe('suspect');
    expect(find(before('20M'), 'part-convicted')).toMatchObject({ ground: 'far-below-own', limits: ['far-below-own'] });
    expect(assess(before('20M')).parts.cable).toBe('proven-bad');
  });

  it('is not needed below the minimum of the machine, where two dry readings convict', () => {
    const at = (text: string) => ({
      ...joined('0.9M | 0.9M | 0.9M'),
      ...cable(`${text} | 5G | 5G`, `${text} | 5G | 5G`),
      ...again(text),
    });
    expect(find(at('0.99M'), 'part-convicted')).toMatchObject({
      ground: 'below-minimum',
      limits: ['machine-minimum-60204'],
      limitOhms: 1e6,
    });
    expect(linesOf(at('1.00M'), ['again-bad', 'part-suspect', 'part-convicted'])).toEqual([
      'again-bad fail cableAgain',
      'part-suspect caution',
    ]);
  });
});

describe('the findings of a part alone', () => {
  const high = '5G | 5G | 5G';
  const rows: [Change, IsolationFinding['code'], string, limits: string[]][] = [
    [cable(high, high, ''), 'cable-pe-missing', 'cable-pe-missing undecided cablePE', ['after-trip-point']],
    [cable(high, high, 'OL'), 'cable-pe-unclear', 'cable-pe-unclear undecided cablePE', ['after-trip-point']],
    [cable(high, high, '2M'), 'cable-pe-low', 'cable-pe-low undecided cablePE', ['after-trip-point']],
    [cable(high, high), 'cable-pe-isolated', 'cable-pe-isolated pass cablePE', ['after-trip-point']],
    [cable(high, undefined), 'bonded-row-missing', 'bonded-row-missing undecided', []],
    [
      motor('0.1 Ω | 5G | 5G', '0.1 Ω'),
      'motor-two-shorts',
      'motor-two-shorts fail motorU motorV motorW',
      ['pe-dead-short'],
    ],
    [motor('0.1 Ω | 5G | 5G', '5G'), 'motor-pins-mistaken', 'motor-pins-mistaken undecided motorU motorV motorW', []],
  ];
  it.each(rows)('case %#: %s', (change, code, text, limits) => {
    expect(linesOf(change, [code])).toEqual([text]);
    expect(find(change, code).limits).toEqual(limits);
  });

  it('two shorts need the short of PE', () => {
    expect(linesOf(motor('0.1 Ω | 0.1 Ω | 5G', '5G'), ['motor-two-shorts'])).toEqual([]);
  });
});

describe('the lowest of several readings', () => {
  it('is the one that can be least high, and leaves everything open if none was taken', () => {
    expect(lowestOf([typed('5G'), missing, typed('2M'), typed('OL')], {})).toEqual({ lo: 2e6, hi: 2e6 });
    expect(lowestOf([missing], {})).toEqual({ lo: 0, hi: Number.POSITIVE_INFINITY });
  });
});
