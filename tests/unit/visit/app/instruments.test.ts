import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { instrumentLine, notedInstruments } from '../../../../src/visit/app/details-fields.ts';
import { prefill } from '../../../../src/visit/app/prefill.ts';
import { evaluate } from '../../../../src/visit/evaluate.ts';
import { evaluateForm } from '../../../../src/visit/evaluate-form.ts';
import type { Instrument } from '../../../../src/visit/record/instrument-schema.ts';
import type { MeasuredStepId } from '../../../../src/visit/steps/questions.ts';
import { motorAndCable, soundInsulation, soundWinding, visitOf } from '../../../support/marrow-bay-visits.ts';
import { runs } from '../../../support/runs.ts';

const now = '2026-03-03T08:00:00+01:00';
const noted = (what: string, rest: Partial<Instrument>): Instrument => ({
  what,
  identification: '',
  accuracy: '',
  ...rest,
});
const begun = motorAndCable.slice(0, 6);

function startOf(id: MeasuredStepId, instruments: Instrument[]) {
  return prefill(evaluate(visitOf(begun, { instruments }), now), id);
}

describe('what is noted of an instrument fills the fields of a blank form', () => {
  test('accuracy and highest figure', () => {
    const meter = noted('Multimeter', { accuracy: '1.2 % + 4 counts', smallest: '0.1 Ω', largest: '60 MΩ' });
    const { start, notes } = startOf('bridge', [meter]);
    expect(start).toMatchObject({ accuracyPercent: '1.2', accuracyCounts: '4', upperLimit: '60 MΩ' });
    expect(notes.upperLimit).toContain('multimeter');
  });

  test.each(['a lot', '>2 GΩ', '0 Ω', '', '500 V'])(
    'a highest figure that is no plain resistance (%j) does not',
    (largest) => {
      expect(startOf('bridge', [noted('Multimeter', { largest })]).start.upperLimit ?? '').toBe('');
    },
  );

  test('the test voltage only if the tester has a single one', () => {
    const one = startOf('insulation', [noted('Insulation tester', { testVoltages: '500 V' })]);
    expect(one.start.testVoltage).toBe('500 V');
    expect(one.notes.testVoltage).toContain('Change it');
    expect(startOf('insulation', [noted('Insulation tester', { testVoltages: '1 kV' })]).start.testVoltage).toBe(
      '1 kV',
    );
  });

  test.each(['250 V, 500 V', '50/100/250/500/1000 V', '50, 100, 250, 500 and 1000 V', '50-1000 V', '50 to 1000 V'])(
    'of several test voltages (%s) none is taken for the one that was set',
    (testVoltages) => {
      expect(startOf('insulation', [noted('Insulation tester', { testVoltages })]).start.testVoltage ?? '').toBe('');
    },
  );

  test('the voltage of the insulation step goes with its readings, whatever the tester has', () => {
    const answers = [...begun, ...motorAndCable.slice(6).filter(([id]) => id === 'insulation')];
    const tester = noted('Insulation tester', { testVoltages: '1000 V' });
    const visit = visitOf(answers, { instruments: [tester] });
    const typed = visit.steps.insulation?.form.testVoltage;
    expect(typed).toBeTruthy();
    expect(prefill(evaluate(visit, now), 'isolation').start.testVoltage).toBe(typed);
  });
});

test('a worse instrument, noted once, never gives a better verdict', () => {
  const rank = { 'No-go': 0, Undecided: 1, Go: 2 } as const;
  const readings: [MeasuredStepId, Record<string, string>, string][] = [
    ['insulation', soundInsulation, 'Insulation tester'],
    ['insulation', { ...soundInsulation, U: '104M' }, 'Insulation tester'],
    ['winding', soundWinding, 'Milliohm meter'],
  ];
  const verdict = (id: MeasuredStepId, form: Record<string, string>, instrument: Instrument) => {
    const { line } = evaluateForm(id, { ...startOf(id, [instrument]).start, ...form });
    return rank[line as keyof typeof rank];
  };
  fc.assert(
    fc.property(
      fc.constantFrom(...readings),
      fc.integer({ min: 0, max: 20 }),
      fc.integer({ min: 0, max: 20 }),
      fc.integer({ min: 0, max: 9 }),
      ([id, form, what], percent, more, counts) => {
        const at = (accuracy: string) => verdict(id, form, noted(what, { accuracy }));
        const [better, worse] = [
          at(`${percent} % + ${counts} counts`),
          at(`${percent + more} % + ${counts + more} counts`),
        ];
        // A wide accuracy may take a no-go back to undecided, but never makes a go.
        if (better < rank.Go) expect(worse).toBeLessThan(rank.Go);
      },
    ),
    { numRuns: Math.min(runs, 200) },
  );
});

test('an instrument in one line, and only what is noted', () => {
  expect(
    instrumentLine(
      noted('Multimeter', { identification: 'M-07', accuracy: '1 %', smallest: '0.1 Ω', largest: '60 MΩ' }),
    ),
  ).toBe('M-07, 1 %, 0.1 Ω to 60 MΩ');
  expect(instrumentLine(noted('Insulation tester', { largest: '2 GΩ', testVoltages: '500 V' }))).toBe(
    'up to 2 GΩ, 500 V',
  );
  expect(notedInstruments([noted('Multimeter', {}), noted('Milliohm meter', { largest: '20 Ω' })])).toHaveLength(1);
});
