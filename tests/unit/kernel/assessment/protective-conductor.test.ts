import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type FrameEarthed,
  isPeProvenBroken,
  judgePe,
  type PeConductor,
  type PeJudgement,
  peLimits,
  peMarks,
  peRemarks,
} from '../../../../src/kernel/assessment/protective-conductor.ts';
import { coreSections } from '../../../../src/kernel/electrics/core-resistance.ts';
import { missing, ohms, overOhms, type Reading, underOhms } from '../../../../src/kernel/reading/reading.ts';
import { peRemarkTexts } from '../../../../src/kernel/words/protective-conductor.ts';
import { sentenceOf } from '../../../../src/kernel/words/sentences.ts';
import { runs } from '../../../support/runs.ts';
import { isClean } from '../../../support/sentences.ts';
import { typed } from '../../../support/typed.ts';

/** A short of one ohm, and three ohms that no length explains: project judgement, no source. */
describe('a protective conductor of unknown length', () => {
  it.each([
    ['0.1 Ω', 'short'],
    ['0,2 Ω', 'short'],
    ['1 Ω', 'short'],
    ['1.0 Ω', 'short'],
    ['300 mΩ', 'short'],
    ['0', 'short'],
    ['0.0 Ω', 'short'],
    ['0 Ω', 'short'],
    ['<1 Ω', 'short'],
    ['<0.5 Ω', 'short'],
  ])('“%s” is a short: %s', (text, judgement) => {
    expect(judgePe(typed(text))).toBe(judgement);
  });

  it.each([
    ['3.1 Ω', 'not-short'],
    ['5 Ω', 'not-short'],
    ['450k', 'not-short'],
    ['700M', 'not-short'],
    ['OL', 'not-short'],
    ['>3 Ω', 'not-short'],
    ['>700M', 'not-short'],
  ])('“%s” is no short: %s', (text, judgement) => {
    expect(judgePe(typed(text))).toBe(judgement);
  });

  it.each(['1.1 Ω', '1.2 Ω', '3 Ω'])('“%s” may be a long thin core: higher than expected', (text) => {
    expect(judgePe(typed(text))).toBe('higher-than-expected');
  });

  it.each([
    ['0 kΩ', 'not-proven'],
    ['0 MΩ', 'not-proven'],
    ['0.00 MΩ', 'not-proven'],
    ['<1 MΩ', 'not-proven'],
    ['<2 Ω', 'not-proven'],
    ['under range', 'not-proven'],
    ['>0.5 Ω', 'not-proven'],
    ['>1 Ω', 'not-proven'],
    ['>0', 'not-proven'],
  ])('“%s” proves neither: %s', (text, judgement) => {
    expect(judgePe(typed(text))).toBe(judgement);
  });

  it('is missing if nothing was read', () => {
    expect(judgePe(typed(''))).toBe('missing');
    expect(judgePe(typed('-'))).toBe('missing');
  });
});

/**
 * Expected by IEC 60228 (13.3, 7.98 and 4.95 Ω/km), a quarter more, and 0.15 Ω of contacts, or 1 Ω, on top: project
 * judgement.
 */
describe('a protective conductor of known length and cross-section', () => {
  it.each([
    // 85 m of 1.5 mm²: 1.131 Ω; up to 1.563 Ω short, above 2.413 Ω broken.
    [85, 1.5, '1.2 Ω', 'short'],
    [85, 1.5, '1.56 Ω', 'short'],
    [85, 1.5, '1.6 Ω', 'higher-than-expected'],
    [85, 1.5, '2.4 Ω', 'higher-than-expected'],
    [85, 1.5, '2.5 Ω', 'not-short'],
    [85, 1.5, '<1.5 Ω', 'short'],
    [85, 1.5, '<1.6 Ω', 'not-proven'],
    [85, 1.5, '>2 Ω', 'not-proven'],
    [85, 1.5, '>2.5 Ω', 'not-short'],
    [85, 1.5, 'OL', 'not-short'],
    // 20 m of 4 mm²: 0.099 Ω; up to 0.274 Ω short, above 1.124 Ω broken.
    [20, 4, '0.1 Ω', 'short'],
    [20, 4, '0.27 Ω', 'short'],
    [20, 4, '0.28 Ω', 'higher-than-expected'],
    [20, 4, '0.9 Ω', 'higher-than-expected'],
    [20, 4, '1.2 Ω', 'not-short'],
    // 10 m of 2.5 mm²: 0.080 Ω; up to 0.250 Ω short, above 1.100 Ω broken.
    [10, 2.5, '0.2 Ω', 'short'],
    [10, 2.5, '0.3 Ω', 'higher-than-expected'],
    [10, 2.5, '0 MΩ', 'not-proven'],
    [10, 2.5, '', 'missing'],
  ] as [number, number, string, PeJudgement][])(
    '%d m of %d mm² that reads “%s” is %s',
    (metres, squareMillimetres, text, judgement) => {
      expect(judgePe(typed(text), { metres, squareMillimetres })).toBe(judgement);
    },
  );

  it('is judged as of unknown length if one of the two is not known, or the cross-section is not listed', () => {
    for (const conductor of [{ metres: 85 }, { squareMillimetres: 1.5 }, { metres: 85, squareMillimetres: 2.08 }]) {
      expect(judgePe(ohms(0.9), conductor)).toBe('short');
      expect(judgePe(ohms(1.2), conductor)).toBe('higher-than-expected');
      expect(peLimits(conductor)).toEqual(['pe-dead-short', 'pe-broken-unknown-length']);
    }
    expect(peLimits({ metres: 85, squareMillimetres: 1.5 })).toEqual([
      'pe-dead-short',
      'pe-core-resistance',
      'pe-core-tolerance',
      'pe-contacts',
    ]);
  });

  it('has its marks where they were worked out by hand', () => {
    const { expected, short, broken } = peMarks({ metres: 40, squareMillimetres: 1 });
    expect(expected).toBeCloseTo(0.78, 12);
    expect(short).toBeCloseTo(1.125, 12);
    expect(broken).toBeCloseTo(1.975, 12);
    expect(peMarks()).toEqual({ expected: undefined, short: 1, broken: 3 });
  });
});

const order: PeJudgement[] = ['not-short', 'higher-than-expected', 'short'];
const conductors = fc.record(
  { metres: fc.double({ min: 0.5, max: 300, noNaN: true }), squareMillimetres: fc.constantFrom(...coreSections) },
  { requiredKeys: [] },
);
const known = (one: { metres?: number | undefined; squareMillimetres?: number | undefined }): PeConductor => ({
  ...(one.metres !== undefined && { metres: one.metres }),
  ...(one.squareMillimetres !== undefined && { squareMillimetres: one.squareMillimetres }),
});

describe('a worse reading of PE never looks better', () => {
  it('a higher one', () => {
    const some = fc.double({ min: 0.001, max: 10, noNaN: true });
    fc.assert(
      fc.property(conductors, some, fc.double({ min: 1, max: 100, noNaN: true }), (conductor, value, factor) => {
        const rank = (figure: number) => order.indexOf(judgePe(ohms(figure), known(conductor)));
        expect(rank(value * factor)).toBeLessThanOrEqual(rank(value));
      }),
      { numRuns: runs },
    );
  });

  it('and what a length explains is never called broken without it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 100, noNaN: true }),
        fc.constantFrom(...coreSections.slice(1)),
        (metres, squareMillimetres) => {
          const { short } = peMarks({ metres, squareMillimetres });
          expect(judgePe(ohms(short))).not.toBe('not-short');
        },
      ),
      { numRuns: runs },
    );
  });
});

describe('what is said beside a protective conductor', () => {
  const codes = (...of: Parameters<typeof peRemarks>) => peRemarks(...of).map(({ code }) => code);
  const long = { metres: 85, squareMillimetres: 1.5 };

  it.each([
    [ohms(0.1, 0.1), {}, 'also-otherwise', ['pe-by-multimeter']],
    [ohms(0.1, 0.1), { amperes: 0.1 }, 'also-otherwise', ['pe-by-multimeter']],
    [ohms(0.1, 0.1), { amperes: 0.2 }, 'also-otherwise', []],
    [ohms(1.2, 0.01), { ...long, amperes: 10 }, 'also-otherwise', []],
    [ohms(0.5, 0.01), { ...long, amperes: 10 }, 'also-otherwise', ['pe-lower-than-expected']],
    // A step of the display more, and it may be half of what is expected.
    [ohms(0.5, 0.1), { ...long, amperes: 10 }, 'also-otherwise', []],
    [underOhms(1), { ...long, amperes: 10 }, 'also-otherwise', []],
    [ohms(2), long, 'also-otherwise', ['pe-above-expected']],
    [ohms(2), {}, 'also-otherwise', ['pe-above-expected']],
    [overOhms(), {}, 'not-stated', ['pe-frame-not-stated']],
    [overOhms(), {}, 'only-pe', ['pe-frame-only-by-pe']],
    [overOhms(), {}, 'also-otherwise', []],
    [missing, {}, 'not-stated', []],
  ] as [Reading, PeConductor, FrameEarthed, string[]][])(
    '%j of %j, frame earthed %s: %j',
    (reading, conductor, frame, said) => {
      expect(codes(reading, conductor, frame)).toEqual(said);
      for (const remark of peRemarks(reading, conductor, frame, 'joinedPE')) {
        expect(remark.readings).toEqual(['joinedPE']);
        expect(['note', 'caution']).toContain(remark.severity);
        isClean(sentenceOf(peRemarkTexts, remark));
      }
    },
  );

  it('names what was expected and what passes', () => {
    const [remark] = peRemarks(ohms(2), long);
    expect(remark && sentenceOf(peRemarkTexts, remark)).toContain('about 1.1 Ω, with its contacts 1.6 Ω at most');
  });
});

it.each([
  ['not-short', 'not-short', 'also-otherwise', true],
  ['not-short', 'not-short', 'only-pe', false],
  ['not-short', 'not-short', 'not-stated', false],
  ['not-short', 'missing', 'also-otherwise', false],
  ['not-short', 'short', 'also-otherwise', false],
  ['not-short', 'higher-than-expected', 'also-otherwise', false],
  ['higher-than-expected', 'not-short', 'also-otherwise', false],
] as const)(
  'a PE that reads %s, then %s, with a frame earthed %s is proven broken: %s',
  (first, again, frame, proven) => {
    expect(isPeProvenBroken(first, again, frame)).toBe(proven);
  },
);
