import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assessAbsorption } from '../../../../../src/calculators/absorption/rule/assess.ts';
import { type AbsorptionInput, absorptionTimes } from '../../../../../src/calculators/absorption/rule/input.ts';
import { parseReading } from '../../../../../src/kernel/reading/parse-reading.ts';
import { celsius, missing, ohms, overOhms, type Reading } from '../../../../../src/kernel/reading/reading.ts';
import { figures, found } from '../../../../support/found.ts';
import { runs } from '../../../../support/runs.ts';
import { meetsAllVerdicts, rank, tally } from '../../../../support/verdict-rank.ts';

const typed = (text: string): Reading => {
  const result = parseReading(text, 'resistance');
  if (!result.ok) throw new Error(text);
  return result.reading;
};

/** A form-wound winding of class F at 25 °C, by texts at their times. */
const test = (texts: Record<number, string>, changes: Partial<AbsorptionInput> = {}): AbsorptionInput => ({
  readings: Object.fromEntries(Object.entries(texts).map(([time, text]) => [time, typed(text)])),
  windingKind: 'form-wound',
  thermalClass: 'BFH',
  temperature: celsius(25),
  ...changes,
});
const codes = (input: AbsorptionInput) => assessAbsorption(input).findings.map(({ code }) => code);

it('sees a fall to a figure whose display step is not known', () => {
  const input = test({ 15: '1621M', 60: '2468M', 600: '4960M' });
  const fallen = { ...input, readings: { ...input.readings, 30: ohms(1e9) } };
  expect(codes(input)).not.toContain('curve-breaks');
  expect(codes(fallen)).toContain('curve-breaks');
});

describe('assessAbsorption', () => {
  it.each<[string, AbsorptionInput, string, string]>([
    ['an index of 3', test({ 60: '400M', 600: '1200M' }), 'go', 'index-meets'],
    ['an index of 1.25', test({ 60: '400M', 600: '500M' }), 'no-go', 'index-below'],
    ['1.75, class F', test({ 60: '400M', 600: '700M' }), 'no-go', 'index-below'],
    ['1.75, class A', test({ 60: '400M', 600: '700M' }, { thermalClass: 'A' }), 'go', 'index-meets'],
    ['exactly 2, by rounded digits', test({ 60: '400M', 600: '800M' }), 'undecided', 'index-too-close'],
    [
      '3 with a tester of ± 30 %',
      test({ 60: '400M', 600: '1200M' }, { instrument: { percent: 30 } }),
      'undecided',
      'index-too-close',
    ],
    ['digits too coarse', test({ 60: '2 GΩ', 600: '4 GΩ' }), 'undecided', 'index-too-close'],
    ['over-range at ten minutes proves a bound', test({ 60: '400M', 600: '>1G' }), 'go', 'index-meets'],
    ['over-range without a range', test({ 60: '400M', 600: 'OL' }), 'undecided', 'index-too-close'],
    ['over-range at one minute', test({ 60: '>1G', 600: '>5G' }), 'undecided', 'index-says-nothing'],
    ['above 5 GΩ at one minute', test({ 60: '6.2G', 600: '20.5G' }), 'undecided', 'index-says-nothing'],
    [
      '5 GΩ by accuracy',
      test({ 60: '4.8G', 600: '20.5G' }, { instrument: { percent: 5 } }),
      'undecided',
      'index-says-nothing',
    ],
    ['a rising curve of a low level', test({ 60: '2.0M', 600: '9.0M' }), 'undecided', 'one-minute-low'],
    ['a low level and a low index', test({ 60: '2.0M', 600: '2.1M' }), 'no-go', 'index-below'],
    [
      'random-wound, high index',
      test({ 60: '400M', 600: '1200M' }, { windingKind: 'random-wound' }),
      'undecided',
      'index-not-for-random-wound',
    ],
    [
      'random-wound, low index',
      test({ 60: '400M', 600: '410M' }, { windingKind: 'random-wound' }),
      'undecided',
      'index-not-for-random-wound',
    ],
    ['no ten minutes', test({ 30: '300M', 60: '400M' }), 'undecided', 'index-incomplete'],
    ['nothing', test({}), 'undecided', 'index-incomplete'],
    [
      'an index of 2.5 in a curve that fell before',
      test({ 15: '1000M', 60: '200M', 600: '500M' }),
      'undecided',
      'curve-breaks',
    ],
    [
      'an index of 2.5 in a curve that broke in between',
      test({ 60: '200M', 300: '50M', 600: '500M' }),
      'undecided',
      'curve-breaks',
    ],
    [
      'the same with a coarse tester',
      test({ 60: '200M', 300: '110M', 600: '900M' }, { instrument: { percent: 30 } }),
      'undecided',
      'curve-breaks',
    ],
    ['a low index of a curve that falls', test({ 60: '400M', 600: '300M' }), 'no-go', 'curve-falls'],
    ['above 8', test({ 60: '400M', 600: '4.00G' }), 'go', 'index-dry'],
    ['zero at one minute', test({ 60: '0', 600: '0' }), 'undecided', 'index-too-close'],
    ['no temperature', test({ 60: '400M', 600: '1200M' }, { temperature: missing }), 'go', 'temperature-missing'],
  ])('%s', (_name, input, verdict, code) => {
    expect(assessAbsorption(input).verdict).toBe(verdict);
    expect(codes(input)).toContain(code);
  });

  it.each<[string, Record<number, string>]>([
    ['below the borders of any publication', { 30: '400M', 60: '402M' }],
    ['between them', { 30: '400M', 60: '500M' }],
    ['above them', { 30: '400M', 60: '680M' }],
  ])('an absorption ratio %s is stated and decides nothing', (_name, texts) => {
    const { findings, verdict } = assessAbsorption(test(texts));
    expect(findings.find((f) => f.code === 'ratio-stated')?.severity).toBe('note');
    expect(verdict).toBe('undecided');
  });

  it('an absorption ratio of any size changes no verdict', () => {
    for (const text of ['100M', '250M', '380M', '399M'])
      expect(assessAbsorption(test({ 30: text, 60: '400M', 600: '1200M' })).verdict).toBe('go');
  });

  it.each<[string, Record<number, string>, string | undefined]>([
    ['falls', { 15: '500M', 60: '400M', 600: '300M' }, 'curve-falls'],
    ['goes up and down', { 15: '300M', 60: '500M', 120: '350M', 600: '600M' }, 'curve-uneven'],
    ['stays level', { 60: '400M', 600: '410M' }, 'curve-flat'],
    ['rises', { 15: '300M', 60: '500M', 600: '900M' }, 'curve-rises'],
    ['is level over a few seconds only', { 15: '400M', 30: '400M' }, undefined],
    ['falls by less than its digits', { 60: '0.40G', 600: '0.39G' }, 'curve-flat'],
  ])('the curve %s', (_name, texts, code) => {
    expect(codes(test(texts)).find((one) => one.startsWith('curve'))).toBe(code);
  });

  it('asks for a discharge of four times the test, first of all', () => {
    const { findings, next } = assessAbsorption(test({ 60: '400M', 600: '1200M' }));
    expect(found(findings, 'discharge-after-test').minutes).toBe(40);
    expect(next[0]?.code).toBe('discharge-winding');
  });

  it('reads at 15 s, 30 s and each minute up to the tenth', () => {
    expect(absorptionTimes).toEqual([15, 30, 60, 120, 180, 240, 300, 360, 420, 480, 540, 600]);
  });
});

/** A curve of any shape around the limit, with readings that may be missing or bounds. */
const reading = (least: number, most: number) =>
  fc.oneof(
    { weight: 12, arbitrary: fc.double({ min: least, max: most, noNaN: true }).map((power) => ohms(10 ** power, 1e4)) },
    { weight: 1, arbitrary: fc.constant(missing as Reading) },
    { weight: 1, arbitrary: fc.double({ min: least, max: most, noNaN: true }).map((power) => overOhms(10 ** power)) },
  );
const anyTest: fc.Arbitrary<AbsorptionInput> = fc.record({
  readings: fc
    .tuple(reading(7, 9), reading(7.9, 9.6), reading(8, 10), reading(8, 10.2))
    .map(([r30, r60, r180, r600]) => ({ 30: r30, 60: r60, 180: r180, 600: r600 })),
  windingKind: fc.constantFrom(
    'form-wound' as const,
    'form-wound' as const,
    'form-wound' as const,
    'random-wound' as const,
  ),
  thermalClass: fc.constantFrom('A' as const, 'BFH' as const),
  temperature: fc.constantFrom<Reading>(celsius(25), missing),
});

describe('properties', () => {
  it('a go has no reading that is lower by a tenth than one before it', () => {
    fc.assert(
      fc.property(anyTest, (input) => {
        if (assessAbsorption(input).verdict !== 'go') return;
        const shown = absorptionTimes.flatMap((time) => {
          const one = input.readings[time] ?? missing;
          return one.kind === 'value' ? [one.value] : [];
        });
        // Half a step of the display, 5 kΩ, at the most at each end.
        shown.forEach((value, index) => {
          for (const before of shown.slice(0, index)) expect(value + 5e3).toBeGreaterThanOrEqual((before - 5e3) / 1.1);
        });
      }),
      { numRuns: runs },
    );
  });

  it('a flatter curve never raises the verdict', () => {
    const met = tally();
    fc.assert(
      fc.property(anyTest, fc.double({ min: 0.1, max: 1, noNaN: true }), (input, factor) => {
        const before = assessAbsorption(input).verdict;
        met.add(before);
        const last = input.readings[600] ?? missing;
        fc.pre(last.kind === 'value');
        const flatter = { ...input.readings, 600: ohms(last.kind === 'value' ? last.value * factor : 0, 1e4) };
        expect(rank[assessAbsorption({ ...input, readings: flatter }).verdict]).toBeLessThanOrEqual(rank[before]);
      }),
      { numRuns: runs },
    );
    meetsAllVerdicts(met, 0.05);
  });

  it('weaker evidence never makes a go: a wider accuracy, a reading removed, an index for random-wound machines', () => {
    fc.assert(
      fc.property(
        anyTest,
        fc.integer({ min: 1, max: 50 }),
        fc.constantFrom(30, 60, 180, 600),
        (input, percent, time) => {
          const { verdict, findings } = assessAbsorption(input);
          // A reading that spoke against go may be left out unseen: nobody can judge what was not noted.
          if (verdict === 'go' || findings.some(({ code }) => code === 'curve-breaks')) return;
          const weaker = [
            { ...input, instrument: { percent } },
            { ...input, readings: { ...input.readings, [time]: missing } },
            { ...input, windingKind: 'random-wound' as const },
          ];
          for (const one of weaker) expect(assessAbsorption(one).verdict).not.toBe('go');
        },
      ),
      { numRuns: runs },
    );
  });

  it('no accuracy makes a go of a curve that broke', () => {
    fc.assert(
      fc.property(anyTest, fc.integer({ min: 1, max: 50 }), (input, percent) => {
        if (!codes(input).includes('curve-breaks')) return;
        expect(assessAbsorption({ ...input, instrument: { percent } }).verdict).not.toBe('go');
      }),
      { numRuns: runs },
    );
  });

  it('a wider accuracy never makes a no-go either', () => {
    fc.assert(
      fc.property(anyTest, fc.integer({ min: 1, max: 50 }), (input, percent) => {
        if (assessAbsorption(input).verdict === 'no-go') return;
        expect(assessAbsorption({ ...input, instrument: { percent } }).verdict).not.toBe('no-go');
      }),
      { numRuns: runs },
    );
  });

  it('no number is NaN, and each ratio has its ends in order', () => {
    fc.assert(
      fc.property(anyTest, (input) => {
        const { findings, index, ratio } = assessAbsorption(input);
        expect(findings.flatMap(figures).filter(Number.isNaN)).toEqual([]);
        for (const one of [index, ratio]) if (one) expect(one.lo).toBeLessThanOrEqual(one.hi);
      }),
      { numRuns: runs },
    );
  });
});
