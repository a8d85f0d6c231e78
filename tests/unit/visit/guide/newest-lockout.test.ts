import { expect, it } from 'vitest';
import { volts } from '../../../../src/kernel/reading/reading.ts';
import { nextStep } from '../../../../src/visit/guide/next-step.ts';
import type { VisitAnswers } from '../../../../src/visit/steps/questions.ts';

const lockedOut = {
  lockedOut: true,
  waited: true,
  meterProved: true,
  peProved: true,
  supplyVoltage: volts(0.1),
  outputVoltage: volts(0.05),
  busVoltage: volts(0.02),
};
const seen = { drive: 'nothing', motor: 'nothing', motorCable: 'nothing', feedbackCable: 'nothing' } as const;

// Found by random corrections: the retry is taken back, and with it the lockout that found the bus charged.
const retryTakenBack: VisitAnswers = {
  'find-drive': { seq: 1, answer: { observation: 'known', axesOnDrive: 1 } },
  symptom: { seq: 2, answer: { when: 'on-enable', gravityLoaded: 'no' } },
  'lockout-1': { seq: 3, answer: lockedOut },
  inspect: { seq: 4, answer: { reseated: 'yes', seen } },
  'disconnect-leads': { seq: 5, answer: { done: true } },
  'lockout-2': { seq: 7, answer: { ...lockedOut, busVoltage: volts(565) } },
  'retry-leads-off': { seq: 8, answer: { powerAllowed: false, result: 'not-done' } },
};

it('an older lockout does not hold after a later one that found the bus charged', () => {
  const { due, path } = nextStep(retryTakenBack);
  expect(due).toBe('lockout-1');
  expect(path.at(-1)).toEqual({ id: 'lockout-1', status: 'check-again' });
});

it('it holds once it is done again', () => {
  const again = { ...retryTakenBack, 'lockout-1': { seq: 9, answer: lockedOut } };
  // What was done under it before must be confirmed first.
  expect(nextStep(again).due).toBe('inspect');
});
