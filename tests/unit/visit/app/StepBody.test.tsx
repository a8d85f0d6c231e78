import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { StepBody } from '../../../../src/visit/app/StepBody.tsx';
import { evaluate } from '../../../../src/visit/evaluate.ts';
import type { VisitRecord } from '../../../../src/visit/record/visit-schema.ts';
import type { StepId } from '../../../../src/visit/steps/ids.ts';
import { triesTexts } from '../../../../src/visit/words/visit.ts';
import {
  done,
  driveOnly,
  type Entry,
  locked,
  motorAndCable,
  soundBridge,
  soundInsulation,
  visitOf,
  withBusAgain,
} from '../../../support/marrow-bay-visits.ts';
import { enterStep } from '../../../support/visit-records.ts';

/** Locked out and inspected, no axis can fall: the mechanics are next. */
const visit = visitOf(motorAndCable.slice(0, 4));
const nextDay = '2026-03-04T08:00:00+01:00';
const atOnce = '2026-03-03T06:25:00+01:00';
const dayAfter = '2026-03-05T08:00:00+01:00';

const waits = { running: [], now: 0, start: () => undefined, remove: () => undefined };

function drawn(of: VisitRecord, now: string) {
  const evaluated = evaluate(of, now);
  const id = evaluated.guide.due as StepId;
  const nothing = () => undefined;
  const html = renderToString(
    <StepBody id={id} evaluated={evaluated} waits={waits} onTyped={nothing} onEnter={nothing} onConfirm={nothing} />,
  );
  return { id, html, asks: html.includes('<input'), beginsAgain: html.includes('Begin this step again') };
}

test.each([
  ['untouched', undefined, { asks: true, beginsAgain: false }],
  ['begun again and left', {}, { asks: true, beginsAgain: false }],
  ['left with a voltage that can’t be read', { ...locked, busVoltage: '0.0.3' }, { asks: false, beginsAgain: true }],
  ['left half ticked', { lockedOut: 'yes' }, { asks: false, beginsAgain: true }],
  ['given', locked, { asks: false, beginsAgain: true }],
])('after a break a proof can be given, where it was %s before', (_, form, way) => {
  const before = form === undefined ? visit : enterStep(visit, 'prove-again', form, nextDay);
  expect(drawn(before, dayAfter)).toMatchObject({ id: 'prove-again', ...way });
});

test('what is entered after a break stays, even while it can’t be read', () => {
  const left = enterStep(visit, 'prove-again', {}, nextDay);
  const typed = enterStep(left, 'prove-again', { supplyVoltage: '0.0.1' }, dayAfter);
  expect(drawn(typed, dayAfter)).toMatchObject({ asks: true });
  const whole = enterStep(typed, 'prove-again', locked, dayAfter);
  expect(whole.steps['prove-again']?.form).toEqual(locked);
  expect(evaluate(whole, dayAfter).guide.due).toBe('disconnect-leads');
});

const together: Entry[] = [
  ...withBusAgain(driveOnly).map(
    ([id, form]): Entry =>
      id === 'symptom' ? [id, { when: 'when-hot', gravityLoaded: 'no' }] : [id, id === 'bridge' ? soundBridge : form],
  ),
  ['reconnect', done],
];
const onWay = together.filter(([id]) => !['support-axis', 'retry-leads-off', 'lockout-2'].includes(id));
const found: Entry = ['mechanics', { found: 'free' }];

test.each<[string, Entry[], StepId]>([
  ['leads that were put back on', [['symptom', { when: 'on-enable', gravityLoaded: 'no' }]], 'disconnect-leads'],
  [
    'a PE core that came off again',
    [
      ['insulation', { ...soundInsulation, U: '>600M' }],
      ['bus-again', { meterProved: 'yes', busVoltage: '0.05 V' }],
    ],
    'reconnect',
  ],
])('%s: a word does not confirm it, it is done again', (_, later, due) => {
  const of = visitOf([...onWay.slice(0, 4), found, ...onWay.slice(4), ...later]);
  const { id, html, beginsAgain } = drawn(of, of.changedAt);
  expect({ id, beginsAgain, holds: html.includes('It still holds') }).toEqual({
    id: due,
    beginsAgain: true,
    holds: false,
  });
});

test('a lockout that a later reading contradicts is done again, even if it then reads the same', () => {
  const charged = enterStep(visitOf(onWay.slice(0, 5)), 'bridge', { ...soundBridge, busVoltage: '80 V' }, atOnce);
  expect(drawn(charged, atOnce)).toMatchObject({ id: 'lockout-1', asks: false, beginsAgain: true });
  const again = enterStep(enterStep(charged, 'lockout-1', {}, atOnce), 'lockout-1', locked, atOnce);
  expect(evaluate(again, atOnce).guide.path.find(({ id }) => id === 'lockout-1')?.status).toBe('done');
});

test('what was reported can be confirmed, but no proof of a dead drive or a held axis', () => {
  const begun = visitOf(motorAndCable.slice(0, 1));
  const reported = {
    at: '2026-03-03T05:30:00+01:00',
    steps: {
      symptom: { when: 'on-enable', gravityLoaded: 'no' },
      'lockout-1': locked,
      'support-axis': { done: 'yes' },
    },
  };
  const button = 'Confirmed on site';
  expect(drawn({ ...begun, reported }, atOnce)).toMatchObject({ id: 'symptom', html: expect.stringContaining(button) });
  const next = drawn({ ...visitOf(motorAndCable.slice(0, 2)), reported }, atOnce);
  expect(next.id).toBe('lockout-1');
  expect(next.html).not.toContain(button);
});

test('a trip that happened once is not called unknown, and a try proves nothing until both numbers are noted', () => {
  const tried = (symptom: Record<string, string>) =>
    drawn(
      visitOf([
        ...onWay.filter(([id]) => id !== 'symptom').slice(0, 1),
        ['symptom', { when: 'control-off', gravityLoaded: 'no', ...symptom }],
        ...onWay.slice(2, 4),
        ['unplug-feedback', done],
      ]),
      atOnce,
    );
  expect(tried({ once: 'yes' }).html).toContain(triesTexts.once);
  expect(tried({}).html).toContain(triesTexts.unknown);
  expect(tried({ once: 'yes', came: '1', of: '1' }).html).toContain('so try 5 times');
});
