import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { missing, volts } from '../../../../src/kernel/reading/reading.ts';
import type { Form } from '../../../../src/visit/steps/fields.ts';
import { stepIds } from '../../../../src/visit/steps/ids.ts';
import { type AskedStepId, isMeasured, questions } from '../../../../src/visit/steps/questions.ts';
import { runs } from '../../../support/runs.ts';

const lockedOut = { lockedOut: 'yes', waited: 'yes', meterProved: 'yes', peProved: 'yes' };
const nothingMeasured = { supplyVoltage: missing, outputVoltage: missing, busVoltage: missing };
const seen = { seenDrive: 'nothing', seenMotor: 'wet', seenMotorCable: 'chafed', seenFeedbackCable: 'burnt' };

describe('a complete form gives its answer', () => {
  const rows: [AskedStepId, Form, unknown][] = [
    [
      'find-drive',
      { observation: 'looked', axesOnDrive: '2', indicatedAxis: ' 1 ' },
      { observation: 'looked', axesOnDrive: 2, indicatedAxis: 1 },
    ],
    // The guide must see an indication that the drive can't have.
    [
      'find-drive',
      { observation: 'looked', axesOnDrive: '2', indicatedAxis: '3' },
      { observation: 'looked', axesOnDrive: 2, indicatedAxis: 3 },
    ],
    [
      'find-drive',
      { observation: 'looked', axesOnDrive: '2', indicatedAxis: '0' },
      { observation: 'looked', axesOnDrive: 2, indicatedAxis: 0 },
    ],
    ['find-drive', { observation: 'known', axesOnDrive: '3' }, { observation: 'known', axesOnDrive: 3 }],
    // A person who may not look may not know the number either, and can continue without it.
    [
      'find-drive',
      { observation: 'looked', axesOnDrive: '1', indicatedAxis: '' },
      { observation: 'looked', axesOnDrive: 1, indicatedAxis: 1 },
    ],
    [
      'find-drive',
      { observation: 'looked', axesOnDrive: '1', indicatedAxis: '2' },
      { observation: 'looked', axesOnDrive: 1, indicatedAxis: 2 },
    ],
    ['find-drive', { observation: 'not-permitted', axesOnDrive: '' }, { observation: 'not-permitted', axesOnDrive: 1 }],
    ['symptom', { when: 'when-hot', gravityLoaded: 'unknown' }, { when: 'when-hot', gravityLoaded: 'unknown' }],
    ...(['nothing', 'something', 'unknown'] as const).map((changed): [AskedStepId, Form, unknown] => [
      'symptom',
      { when: 'on-enable', gravityLoaded: 'no', changed },
      { when: 'on-enable', gravityLoaded: 'no', changed },
    ]),
    [
      'symptom',
      { when: 'on-enable', gravityLoaded: 'no', changed: 'motor' },
      { when: 'on-enable', gravityLoaded: 'no', changed: 'something', changedThing: 'motor' },
    ],
    ['after-change', { found: 'wrong' }, { found: 'wrong' }],
    [
      'symptom',
      { when: 'on-enable', gravityLoaded: 'no', recorded: 'yes' },
      { when: 'on-enable', gravityLoaded: 'no', recorded: 'yes' },
    ],
    ['recording', { speaksFor: 'mechanics feedback' }, { speaksFor: ['feedback', 'mechanics'], read: true }],
    ['recording', { speaksFor: 'nothing' }, { speaksFor: [], read: true }],
    ['recording', { speaksFor: 'not-read' }, { speaksFor: [], read: false }],
    [
      'lockout-1',
      { ...lockedOut, supplyVoltage: '0.4 V', outputVoltage: '1.2 V', busVoltage: '0.03 V' },
      {
        lockedOut: true,
        waited: true,
        meterProved: true,
        peProved: true,
        supplyVoltage: volts(0.4, 0.1),
        outputVoltage: volts(1.2, 0.1),
        busVoltage: volts(0.03, 0.01),
      },
    ],
    [
      'lockout-3',
      { lockedOut: 'yes', waited: '', busVoltage: '' },
      { lockedOut: true, waited: false, meterProved: false, peProved: false, ...nothingMeasured },
    ],
    [
      'lockout-2',
      { busVoltage: 'OL' },
      {
        lockedOut: false,
        waited: false,
        meterProved: false,
        peProved: false,
        ...nothingMeasured,
        busVoltage: { kind: 'over', unit: 'V' },
      },
    ],
    ['bus-again', { meterProved: 'yes', busVoltage: '0.2 V' }, { meterProved: true, busVoltage: volts(0.2, 0.1) }],
    [
      'inspect',
      { reseated: 'none', ...seen },
      { reseated: 'none', seen: { drive: 'nothing', motor: 'wet', motorCable: 'chafed', feedbackCable: 'burnt' } },
    ],
    // Of several damages the gravest counts; a part that nobody could look at is not known to be sound.
    [
      'inspect',
      {
        reseated: 'none',
        seenDrive: 'unseen',
        seenMotor: 'wet loose',
        seenMotorCable: 'bent chafed',
        seenFeedbackCable: 'loose',
      },
      { reseated: 'none', seen: { drive: 'unseen', motor: 'wet', motorCable: 'chafed', feedbackCable: 'loose' } },
    ],
    [
      'symptom',
      { when: 'unknown', gravityLoaded: 'no', once: 'yes' },
      { when: 'unknown', gravityLoaded: 'no', once: true },
    ],
    ['unplug-feedback', { done: 'yes' }, { done: true }],
    ['support-axis', { done: 'no' }, { done: false }],
    ['retry-leads-off', { powerAllowed: 'yes', result: 'trips' }, { powerAllowed: true, result: 'trips' }],
    ['retry-all', { powerAllowed: '', result: 'no-trip' }, { powerAllowed: false, result: 'no-trip' }],
    ['mechanics', { found: 'brake-drags' }, { found: 'brake-drags' }],
  ];
  test.each(rows)('%s %j', (id, form, answer) => {
    expect(questions[id].read(form)).toEqual(answer);
  });
});

describe('an incomplete or unreadable form gives undefined', () => {
  const rows: [AskedStepId, Form][] = [
    ['find-drive', { axesOnDrive: '2', indicatedAxis: '1' }],
    ['find-drive', { observation: 'looked', axesOnDrive: '2', indicatedAxis: '' }],
    ['find-drive', { observation: 'looked', axesOnDrive: '', indicatedAxis: '1' }],
    ['find-drive', { observation: 'looked', axesOnDrive: '1', indicatedAxis: 'X' }],
    ['find-drive', { observation: 'looked', axesOnDrive: 'two', indicatedAxis: '1' }],
    ['find-drive', { observation: 'looked', axesOnDrive: '0', indicatedAxis: '0' }],
    ['find-drive', { observation: 'looked', axesOnDrive: '2.0', indicatedAxis: '1' }],
    ['find-drive', { observation: 'looked', axesOnDrive: '-2', indicatedAxis: '1' }],
    ['find-drive', { observation: 'looked', axesOnDrive: '9999', indicatedAxis: '1' }],
    ['find-drive', { observation: 'guessed', axesOnDrive: '2', indicatedAxis: '1' }],
    ['symptom', { when: 'on-enable', gravityLoaded: '' }],
    ['symptom', { when: 'sometimes', gravityLoaded: 'no' }],
    ['recording', { speaksFor: '' }],
    ['recording', { speaksFor: 'nothing tuning' }],
    ['recording', { speaksFor: 'the motor' }],
    ['lockout-1', { ...lockedOut, busVoltage: '3 ohms' }],
    ['lockout-1', { ...lockedOut, busVoltage: 'dead' }],
    ['lockout-1', { lockedOut: '', waited: 'no', meterProved: 'true', busVoltage: ' ' }],
    ['inspect', { reseated: 'yes', ...seen, seenMotor: '' }],
    ['inspect', { reseated: '', ...seen }],
    ['inspect', { reseated: 'yes', ...seen, seenMotor: 'nothing wet' }],
    ['inspect', { reseated: 'yes', ...seen, seenMotor: 'wet dusty' }],
    ['reconnect', { done: '' }],
    ['reconnect', { done: 'YES' }],
    ['retry-all', { powerAllowed: 'yes', result: '' }],
    ['mechanics', { found: 'loose' }],
  ];
  test.each(rows)('%s %j', (id, form) => {
    expect(questions[id].read(form)).toBeUndefined();
  });

  test('an empty form gives undefined, for every step', () => {
    for (const id of stepIds) if (!isMeasured(id)) expect(questions[id].read({})).toBeUndefined();
  });
});

test('an inherited property is not an answer', () => {
  expect(questions.reconnect.read(Object.create({ done: 'yes' }))).toBeUndefined();
});

test('no text in any field makes it throw, and only a listed answer is accepted', () => {
  const plain = stepIds.filter((id): id is AskedStepId => !isMeasured(id));
  const word = fc.oneof(
    fc.string(),
    fc.constantFrom('yes', 'no', 'looked', '2', 'nothing', 'trips', '0.03 V', 'toString'),
  );
  fc.assert(
    fc.property(fc.constantFrom(...plain), fc.infiniteStream(word), (id, words) => {
      const form = Object.fromEntries(
        questions[id].fields.map(({ id: field }) => [field, words.next().value as string]),
      );
      const answer = questions[id].read(form);
      if (answer !== undefined && 'result' in answer) expect(['trips', 'no-trip', 'not-done']).toContain(answer.result);
      if (answer !== undefined && 'done' in answer) expect(form.done).toBe(answer.done ? 'yes' : 'no');
    }),
    { numRuns: runs },
  );
});
