import { expect, test } from 'vitest';
import { evaluateForm } from '../../../src/visit/evaluate-form.ts';
import type { Form } from '../../../src/visit/steps/fields.ts';
import type { StepId } from '../../../src/visit/steps/ids.ts';
import { badInsulation, bothBad, locked, nothingSeen, retried, soundBridge } from '../../support/marrow-bay-visits.ts';

const lines: [StepId, Form, string][] = [
  ['find-drive', { observation: 'looked', axesOnDrive: '3', indicatedAxis: '2' }, 'output 2 of 3, looked at'],
  ['find-drive', { observation: 'not-permitted' }, 'from the drawings'],
  [
    'find-drive',
    { observation: 'known', axesOnDrive: '2', indicatedAxis: '1' },
    'output 1 of 2, from an earlier record',
  ],
  ['find-drive', { observation: 'looked', axesOnDrive: '3' }, ''],
  [
    'find-drive',
    { observation: 'looked', axesOnDrive: '2', indicatedAxis: '1', outputLabel: ' X7 ' },
    'output 1 of 2, labelled X7, looked at',
  ],
  ['symptom', { when: 'on-acceleration', gravityLoaded: '' }, 'On acceleration or in motion'],
  ['symptom', { when: '__proto__', gravityLoaded: 'no' }, '__proto__, no axis can fall'],
  ['symptom', { when: 'when-hot', gravityLoaded: 'yes' }, 'When it is hot, an axis can fall'],
  ['symptom', { when: 'now-and-then', gravityLoaded: 'unknown' }, 'Now and then, an axis may fall'],
  ['lockout-1', locked, 'Locked out, waited, meter proved, PE proved, supply 0.1 V, U V W 0.05 V, bus 0.03 V'],
  ['lockout-2', { lockedOut: 'yes' }, 'Locked out'],
  ['inspect', nothingSeen, 'Nothing seen'],
  ['inspect', { ...nothingSeen, seenMotorCable: 'chafed', remark: 'at the clamp' }, 'Motor cable: chafed'],
  [
    'inspect',
    { ...nothingSeen, seenMotor: 'corroded loose', seenFeedbackCable: 'unseen' },
    'Motor and its connector: corroded and loose, Feedback cable: not looked at',
  ],
  [
    'symptom',
    { when: 'unknown', gravityLoaded: 'no', once: 'yes' },
    'At a moment that nobody saw, no axis can fall, happened once',
  ],
  [
    'symptom',
    { when: 'on-enable', gravityLoaded: 'no', changed: 'motor' },
    'When the axes are enabled, no axis can fall, changed before: Motor',
  ],
  ['after-change', { found: 'corrected', remark: 'offset 12 was 0' }, 'Something was wrong, and it is put right'],
  ['retry-all', retried('no-trip'), 'No trip'],
  ['retry-leads-off', retried('not-done'), 'Not done'],
  ['mechanics', { found: 'brake-drags', remark: 'warm' }, 'The brake drags'],
  ['disconnect-leads', { done: 'no' }, 'Not yet'],
  ['bridge', soundBridge, 'Go'],
  ['bridge', { ...soundBridge, busVoltage: '60 V' }, 'Stop'],
  ['bridge', { ...soundBridge, plusU: '' }, 'Undecided'],
  ['bridge', { ...soundBridge, plusU: '', leftOpen: 'yes' }, 'Undecided, left open'],
  ['bridge', { ...soundBridge, plusU: 'what' }, 'No verdict'],
  ['insulation', badInsulation, 'No-go'],
  // A visit is after a trip, even if the record was edited.
  ['insulation', { ...badInsulation, occasion: 'routine' }, 'No-go'],
  ['isolation', bothBad, 'No-go'],
  ['winding', {}, ''],
  ['winding', { UV: '' }, ''],
];

test.each(lines)('%s %j reads “%s”', (id, form, line) => {
  expect(evaluateForm(id, form).line).toBe(line);
});

test('a bus reading is shown with its day and time', () => {
  const readAt = { busVoltage: '2026-03-03T06:20:00+01:00' };
  const { line } = evaluateForm('bus-again', { meterProved: 'yes', busVoltage: '0.2 V' }, readAt);
  expect(line).toBe('meter proved, bus 0.2 V, measured 2026-03-03, 06:20');
});
