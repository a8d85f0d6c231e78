import { expect, it } from 'vitest';
import { missing, volts } from '../../../../src/kernel/reading/reading.ts';
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

const found: VisitAnswers = { 'find-drive': { seq: 1, answer: { observation: 'known', axesOnDrive: 1 } } };

it.each(['yes', 'unknown'] as const)('an axis that may fall (%s) is supported before anything is touched', (may) => {
  const visit: VisitAnswers = { ...found, symptom: { seq: 2, answer: { when: 'control-off', gravityLoaded: may } } };
  expect(nextStep(visit).due).toBe('support-axis');
  const supported: VisitAnswers = { ...visit, 'support-axis': { seq: 3, answer: { done: true } } };
  expect(nextStep(supported).due).toBe('lockout-1');
});

/** Windings that were found alike. */
const alike = { verdict: 'go', cause: 'none', joint: 'not-measured' } as const;

it('after the insulation test, with the PE core off, nothing is switched on for the feedback device', () => {
  const visit: VisitAnswers = {
    ...found,
    symptom: { seq: 2, answer: { when: 'control-off', gravityLoaded: 'no' } },
    'lockout-1': { seq: 3, answer: lockedOut },
    inspect: {
      seq: 4,
      answer: {
        reseated: 'yes',
        seen: { drive: 'nothing', motor: 'nothing', motorCable: 'chafed', feedbackCable: 'nothing' },
      },
    },
    'disconnect-leads': { seq: 5, answer: { done: true } },
    'unplug-feedback': { seq: 6, answer: { done: true } },
    'retry-feedback-off': { seq: 7, answer: { powerAllowed: true, result: 'no-trip' } },
    'lockout-2': { seq: 8, answer: lockedOut },
    'unplug-device-end': { seq: 9, answer: { done: true } },
    'retry-device-end': { seq: 10, answer: { powerAllowed: true, result: 'no-trip' } },
    'lockout-3': { seq: 11, answer: lockedOut },
    bridge: {
      seq: 12,
      answer: { assessment: { verdict: 'go', findings: [], next: [], drive: 'sound' }, leftOpen: false },
    },
    winding: { seq: 12.2, answer: { assessment: { ...alike, findings: [], next: [] }, leftOpen: false } },
    'idle-cores': { seq: 12.5, answer: { cores: 'none', lowest: missing } },
    insulation: { seq: 13, answer: { assessment: { verdict: 'go', findings: [], next: [] }, leftOpen: false } },
    isolation: {
      seq: 14,
      answer: {
        assessment: {
          verdict: 'no-go',
          findings: [],
          next: [],
          parts: { cable: 'proven-bad', motor: 'proven-good', protectiveConductor: 'proven-good' },
        },
        leftOpen: false,
      },
    },
    'winding-motor': { seq: 15, answer: { assessment: { ...alike, findings: [], next: [] }, leftOpen: false } },
  };
  const { due, decision } = nextStep(visit);
  expect(due).toBeUndefined();
  expect(decision?.replace.map(({ part }) => part)).toEqual(['motor-cable']);
  expect(decision?.open).toContain('feedback-device-open');
});

it('feedback that was unplugged, even on a way that was left since, is plugged in before the axis is tried', () => {
  const passed = {
    assessment: { verdict: 'go' as const, findings: [], next: [], drive: 'sound' as const },
    leftOpen: false,
  };
  const seen = { drive: 'nothing', motor: 'nothing', motorCable: 'nothing', feedbackCable: 'nothing' } as const;
  const visit: VisitAnswers = {
    ...found,
    'unplug-feedback': { seq: 2, answer: { done: true } },
    symptom: { seq: 3, answer: { when: 'now-and-then', gravityLoaded: 'no' } },
    'lockout-1': { seq: 4, answer: lockedOut },
    inspect: { seq: 5, answer: { reseated: 'yes', seen } },
    mechanics: { seq: 6, answer: { found: 'free' } },
    'disconnect-leads': { seq: 7, answer: { done: true } },
    bridge: { seq: 7.1, answer: passed },
    'bus-again': { seq: 8, answer: { meterProved: true, busVoltage: volts(0.02) } },
    'idle-cores': { seq: 8.5, answer: { cores: 'none', lowest: missing } },
    insulation: { seq: 9, answer: passed },
    winding: { seq: 10, answer: { ...passed, assessment: { ...passed.assessment, ...alike } } },
  };
  expect(nextStep(visit).due).toBe('plug-feedback');
  const plugged: VisitAnswers = { ...visit, 'plug-feedback': { seq: 11, answer: { done: true } } };
  expect(nextStep(plugged).due).toBe('reconnect');
  const outAgain: VisitAnswers = { ...plugged, 'unplug-feedback': { seq: 12, answer: { done: true } } };
  expect(nextStep(outAgain).due).toBe('plug-feedback');
});
