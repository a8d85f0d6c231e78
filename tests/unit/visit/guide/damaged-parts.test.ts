import { describe, expect, it } from 'vitest';
import { judgeDischarge } from '../../../../src/kernel/assessment/bus-discharge.ts';
import { volts } from '../../../../src/kernel/reading/reading.ts';
import type { Damage, InspectedPart } from '../../../../src/kernel/vocabulary.ts';
import { nextStep } from '../../../../src/visit/guide/next-step.ts';
import type { Answers, VisitAnswers } from '../../../../src/visit/steps/questions.ts';

const lockedOut = {
  lockedOut: true,
  waited: true,
  meterProved: true,
  peProved: true,
  supplyVoltage: volts(0.1),
  outputVoltage: volts(0.05),
  busVoltage: volts(0.02),
};

function inspected(part: InspectedPart, damage: Damage): VisitAnswers {
  const seen = { drive: 'nothing', motor: 'nothing', motorCable: 'nothing', feedbackCable: 'nothing' } as const;
  const answers: Partial<Answers> = {
    'find-drive': { observation: 'known', axesOnDrive: 1 },
    symptom: { when: 'control-off', gravityLoaded: 'no' },
    'lockout-1': lockedOut,
    inspect: { reseated: 'yes', seen: { ...seen, [part]: damage } },
  };
  return Object.fromEntries(Object.entries(answers).map(([id, answer], index) => [id, { seq: index + 1, answer }]));
}

const answered = (visit: VisitAnswers, id: string, seq: number, answer: unknown): VisitAnswers => ({
  ...visit,
  [id]: { seq, answer },
});

describe('trips at once, control off', () => {
  it('goes to the feedback first if nothing looks damaged', () => {
    expect(nextStep(inspected('motor', 'nothing')).due).toBe('unplug-feedback');
  });

  it.each([
    ['motor', 'burnt'],
    ['motor', 'wet'],
    ['motorCable', 'chafed'],
  ] as const)('takes the leads off before the drive is switched on with a %s that is %s', (part, damage) => {
    let visit = inspected(part, damage);
    expect(nextStep(visit).due).toBe('disconnect-leads');
    visit = answered(visit, 'disconnect-leads', 5, { done: true });
    expect(nextStep(visit).due).toBe('unplug-feedback');
    visit = answered(visit, 'unplug-feedback', 6, { done: true });
    expect(nextStep(visit).due).toBe('retry-feedback-off');
    visit = answered(visit, 'retry-feedback-off', 7, { powerAllowed: true, result: 'trips' });
    visit = answered(visit, 'lockout-2', 8, lockedOut);
    // The leads are off already and are not asked for twice.
    expect(nextStep(visit).due).toBe('bridge');
  });

  it.each(['burnt', 'wet', 'chafed'] as const)('never switches a drive on that is %s', (damage) => {
    const visit = answered(inspected('drive', damage), 'disconnect-leads', 5, { done: true });
    expect(nextStep(visit).due).toBe('bridge');
  });
});

it('a negative bus voltage is as dangerous as a positive one', () => {
  expect(judgeDischarge(volts(-565)).code).toBe('bus-not-discharged');
  expect(judgeDischarge(volts(-0.02)).code).toBe('bus-discharged');
});
