import fc from 'fast-check';
import { expect, it } from 'vitest';
import { assessWinding } from '../../../../src/calculators/winding/rule/assess.ts';
import { windingFindings, windingSteps } from '../../../../src/calculators/winding/words.ts';
import { ohms } from '../../../../src/kernel/reading/reading.ts';
import { sentenceOf } from '../../../../src/kernel/words/sentences.ts';
import { windingInput } from '../../../support/arbitrary-winding.ts';
import { runs } from '../../../support/runs.ts';
import { sayAll } from '../../../support/sentences.ts';

/** Figures that no form accepts. */
const impossible = { UV: ohms(Number.NaN), VW: ohms(1), WU: ohms(1) };

it('any assessment of a winding has clean sentences, and every code occurs', () => {
  const met = new Set<string>();
  fc.assert(
    fc.property(windingInput, (input) => {
      for (const code of sayAll(assessWinding(input), windingFindings, windingSteps)) met.add(code);
    }),
    { numRuns: Math.max(runs, 5000) },
  );
  for (const code of sayAll(assessWinding({ readings: impossible }), windingFindings, windingSteps)) met.add(code);
  const unmet = [windingFindings, windingSteps].flatMap((one) => Object.keys(one)).filter((code) => !met.has(code));
  expect(unmet).toEqual([]);
});

it('a reading in milliohms with two leads is undecided and asks for a four-wire measurement', () => {
  const readings = { UV: ohms(0.0123, 1e-4), VW: ohms(0.0124, 1e-4), WU: ohms(0.0123, 1e-4) };
  const { verdict, next } = assessWinding({ readings, leads: 'zeroed' });
  expect(verdict).toBe('undecided');
  expect(next.map((step) => sentenceOf(windingSteps, step)).join(' ')).toContain('four-wire measurement');
});
