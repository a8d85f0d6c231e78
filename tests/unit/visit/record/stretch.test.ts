import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../../src/visit/evaluate.ts';
import { asNewStretch, stretchAt } from '../../../../src/visit/record/stretch.ts';
import { driveOnly, locked, soundBridge, visitOf } from '../../../support/marrow-bay-visits.ts';
import { enterStep } from '../../../support/visit-records.ts';

/** Supported, locked out, inspected, leads off, tried, locked out again at 06:32: the six readings are due. */
const visit = visitOf(driveOnly.slice(0, 8));
const last = '2026-03-03T06:32:00+01:00';
const dueAt = (now: string, of = visit) => evaluate(of, now).guide.due;

describe('a stretch of work', () => {
  test.each([
    ['goes on at once', last, 1],
    ['goes on after a short pause', '2026-03-03T07:02:00+01:00', 1],
    ['goes on by the clock of another place', '2026-03-03T05:50:00+00:00', 1],
    ['ends by a pause longer than the limit', '2026-03-03T07:02:01+01:00', 2],
    ['ends by a clock that was set back', '2026-03-03T06:31:59+01:00', 2],
    ['ends by another day', '2026-03-04T00:05:00+01:00', 2],
  ])('%s', (_, now, stretch) => {
    expect(visit.steps['lockout-2']?.at).toBe(last);
    expect(stretchAt(visit, now)).toBe(stretch);
  });

  test('ends at midnight, however short the pause', () => {
    const steps = { 'lockout-1': { at: '2026-03-03T23:58:00+01:00', stretch: 3 } };
    expect(stretchAt({ stretch: 3, createdAt: last, steps }, '2026-03-04T00:01:00+01:00')).toBe(4);
  });

  test('ends when a visit is imported, even if its numbers were edited by hand', () => {
    expect(dueAt(last, asNewStretch(visit))).toBe('support-again');
    const lockout = { ...visit.steps['lockout-2'], stretch: 40 };
    const edited = { ...visit, steps: { ...visit.steps, 'lockout-2': lockout } } as typeof visit;
    expect(asNewStretch(edited).stretch).toBe(41);
  });
});

test('a visit from a device whose clock is ahead needs one new proof, not one for each answer', () => {
  const here = '2026-03-03T05:01:00+01:00';
  const supported = enterStep(asNewStretch(visit), 'support-again', { done: 'yes' }, here);
  const proved = enterStep(supported, 'prove-again', locked, '2026-03-03T05:02:00+01:00');
  expect(dueAt('2026-03-03T05:03:00+01:00', proved)).toBe('bridge');
  // A pause by the clock of this device still ends it.
  expect(dueAt('2026-03-03T05:33:00+01:00', proved)).toBe('support-again');
});

describe('after a break', () => {
  const later = '2026-03-04T08:00:00+01:00';

  test('support and proof are asked for before anything is touched, and then the visit continues', () => {
    expect(dueAt(last)).toBe('bridge');
    expect(dueAt(later)).toBe('support-again');
    const supported = enterStep(visit, 'support-again', { done: 'yes' }, later);
    expect(dueAt(later, supported)).toBe('prove-again');
    const proved = enterStep(supported, 'prove-again', locked, later);
    expect(dueAt(later, proved)).toBe('bridge');
    expect(evaluate(proved, later).guide.path.every(({ status }) => status !== 'check-again')).toBe(true);
  });

  test('a decision still holds: it is about parts, not about voltages', () => {
    const whole = visitOf(driveOnly);
    expect(evaluate(whole, later).guide.decision?.kind).toBe('replace');
  });

  test('what was ticked before it does not count after it', () => {
    const half = enterStep(visit, 'lockout-2', { ...locked, busVoltage: '0.04 V' }, later);
    expect(half.steps['lockout-2']?.form).toEqual({ busVoltage: '0.04 V' });
    expect(half.steps['lockout-2']?.provedBefore).toEqual([{ stretch: 1, at: last, form: locked }]);
  });

  test('a bus reading that was filled in before it is not entered as measured after it', () => {
    const entered = enterStep(visit, 'bridge', { ...soundBridge, busVoltage: locked.busVoltage ?? '' }, later);
    expect(entered.steps.bridge?.readAt).not.toHaveProperty('busVoltage');
    expect(evaluate(entered, later).answers.bridge?.answer.assessment.verdict).toBe('undecided');
    const measured = enterStep(entered, 'bridge', soundBridge, '2026-03-04T08:01:00+01:00');
    expect(measured.steps.bridge?.readAt.busVoltage).toBe('2026-03-04T08:01:00+01:00');
    expect(enterStep(visit, 'bridge', soundBridge, last).steps.bridge?.readAt.busVoltage).toBe(last);
  });

  test('another spelling of an old proof is not a new proof', () => {
    const respelt = enterStep(visit, 'lockout-2', { ...locked, busVoltage: '30 mV' }, later);
    expect(dueAt(later, respelt)).not.toBe('bridge');
  });

  test('each proof keeps the time at which it was given', () => {
    const again = [later, '2026-03-05T08:00:00+01:00'].reduce(
      (one, now) => enterStep(enterStep(one, 'prove-again', {}, now), 'prove-again', locked, now),
      visit,
    );
    const { at, provedBefore } = again.steps['prove-again'] ?? {};
    expect([...(provedBefore ?? []), { at }].map((proof) => proof.at)).toEqual([later, '2026-03-05T08:00:00+01:00']);
  });
});
