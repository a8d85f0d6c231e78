import { expect, it } from 'vitest';
import { calculatorNames } from '../../../src/calculators/registry.ts';
import { evaluate } from '../../../src/visit/evaluate.ts';
import { newVisit } from '../../../src/visit/record/change-visit.ts';
import { stepsFor, takenAlong, withReadings } from '../../../src/visit/start-with-readings.ts';

// No source: how a visit takes over readings.

const now = '2026-11-28T08:00:00+01:00';
const bridge = {
  ...{ busVoltage: '0.03 V', motorLeads: 'off', plusU: '450k', plusV: '455k', plusW: '452k', plusAgain: '450k' },
  ...{ minusU: '460k', minusV: '458k', minusW: '461k', minusAgain: '460k' },
};

it('knows the steps of the calculators that are one', () => {
  const steps = calculatorNames.map((name) => [name, stepsFor(name)]).filter(([, ids]) => ids?.length !== 0);
  expect(steps).toEqual([
    ['bridge', ['bridge']],
    ['insulation', ['insulation']],
    ['isolation', ['isolation']],
    ['winding', ['winding', 'winding-motor']],
    ['input-circuit', ['input-circuit']],
    ['bend-test', ['bend-test']],
  ]);
});

it('takes readings, and neither the bus voltage nor the state of the leads', () => {
  const taken = takenAlong('bridge', { ...bridge, foreign: 'x', dcBus: '' });
  expect(taken).not.toHaveProperty('busVoltage');
  expect(taken).not.toHaveProperty('motorLeads');
  expect(taken).not.toHaveProperty('foreign');
  expect(taken).toMatchObject({ plusU: '450k', minusAgain: '460k' });
});

it('takes of an input neither the bus voltage nor what is off it', () => {
  const typed = { busVoltage: '0.03 V', supplyLeads: 'off', others: 'off', fuseL1: '0.2 Ω', climb: 'climbs' };
  expect(takenAlong('input-circuit', typed)).toMatchObject({ fuseL1: '0.2 Ω', climb: 'climbs' });
  for (const field of ['busVoltage', 'supplyLeads', 'others'])
    expect(takenAlong('input-circuit', typed)).not.toHaveProperty(field);
});

it('proves nothing besides: the visit begins at its first step, and six sound readings are no go', () => {
  const fresh = evaluate(newVisit('one', now), now);
  const visit = withReadings(newVisit('one', now), 'bridge', bridge, now);
  const { guide, steps, answers } = evaluate(visit, now);
  expect(guide.due).toBe(fresh.guide.due);
  expect(guide.path).toEqual(fresh.guide.path);
  expect(Object.keys(visit.steps)).toEqual(['bridge']);
  expect(answers.bridge?.answer.assessment.verdict ?? 'undecided').toBe('undecided');
  expect(steps.bridge.onWay).toBeUndefined();
});

it('keeps what the visit has', () => {
  const begun = withReadings(newVisit('one', now), 'bridge', bridge, now);
  const both = withReadings(begun, 'insulation', { together: '320k', PE: '0.2 Ω' }, now);
  expect(both.steps.bridge?.form).toEqual(begun.steps.bridge?.form);
  expect(both.steps.insulation?.form).toEqual({ together: '320k', PE: '0.2 Ω' });
});
