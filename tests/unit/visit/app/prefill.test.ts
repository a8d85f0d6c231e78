import { describe, expect, test } from 'vitest';
import { prefill, readAccuracy } from '../../../../src/visit/app/prefill.ts';
import { evaluate } from '../../../../src/visit/evaluate.ts';
import { badInsulation, driveOnly, motorAndCable, visitOf } from '../../../support/marrow-bay-visits.ts';
import { enterStep } from '../../../support/visit-records.ts';

const soon = '2026-03-03T06:50:00+01:00';
const beforeBridge = visitOf(driveOnly.slice(0, 8));
const beforeIsolation = visitOf(motorAndCable.slice(0, 10));

describe('the bridge', () => {
  test('takes the bus voltage of the lockout that holds, and says so', () => {
    const changed = enterStep(
      beforeBridge,
      'lockout-2',
      { ...beforeBridge.steps['lockout-2']?.form, busVoltage: '0.07 V' },
      soon,
    );
    const { start, notes } = prefill(evaluate(changed, soon), 'bridge');
    expect(start).toMatchObject({ busVoltage: '0.07 V', motorLeads: 'off' });
    expect(notes.busVoltage).toContain('Filled in from your last lockout step, measured 2026-03-03, 06:50.');
  });

  test('keeps what was typed, and names the different reading of the lockout step', () => {
    const typed = visitOf([...driveOnly.slice(0, 8), ['bridge', { busVoltage: '0.01 V' }]]);
    const { start, notes } = prefill(evaluate(typed, soon), 'bridge');
    expect(start.busVoltage).toBe('0.01 V');
    expect(notes.busVoltage).toBe('Your last lockout step, measured 2026-03-03, 06:32, says 0.03 V.');
  });

  test.each([
    ['after a long pause', '2026-03-03T07:40:00+01:00'],
    ['the next day', '2026-03-04T06:40:00+01:00'],
    ['where the clock was set back', '2026-03-03T05:00:00+01:00'],
  ])('takes nothing of an earlier stretch of work, and says when that was: %s', (_, now) => {
    const { start, notes } = prefill(evaluate(beforeBridge, now), 'bridge');
    expect(start.busVoltage).toBeUndefined();
    expect(notes.busVoltage).toBe('Last measured 2026-03-03, 06:32. That no longer holds: measure it now.');
  });

  test('does not keep its own bus reading from an earlier stretch', () => {
    const typed = visitOf([...driveOnly.slice(0, 8), ['bridge', { busVoltage: '0.01 V', plusU: '450k' }]]);
    const { start } = prefill(evaluate(typed, '2026-03-04T06:40:00+01:00'), 'bridge');
    expect(start).toMatchObject({ plusU: '450k' });
    expect(start.busVoltage).toBeUndefined();
  });
});

describe('the isolation', () => {
  test('takes the joined stage from the insulation step', () => {
    const { start, notes } = prefill(evaluate(beforeIsolation, soon), 'isolation');
    expect(start).toMatchObject({ joinedU: '1.1M', joinedV: '1.3M', joinedW: '1.2M', joinedPE: '0.2 Ω' });
    expect(start).toMatchObject({ testVoltage: '500 V', windingTemperature: '25 °C' });
    expect(notes.joinedU).toBe('Filled in from the insulation step.');
  });

  test('keeps the entry and adds a note if the insulation step has changed since', () => {
    const whole = visitOf(motorAndCable);
    const changed = enterStep(whole, 'insulation', { ...badInsulation, U: '1.4M' }, soon);
    const { start, notes } = prefill(evaluate(changed, soon), 'isolation');
    expect(start.joinedU).toBe('1.1M');
    expect(notes).toMatchObject({ joinedU: 'The insulation step says 1.4M.' });
    expect(notes.joinedV).toBeUndefined();
  });

  test('fills in a suspicion that a good joined reading does not settle', () => {
    expect(prefill(evaluate(beforeIsolation, soon), 'isolation').start.suspectedAnyway).toBeUndefined();
    const moving = visitOf([['symptom', { when: 'position-or-cable', gravityLoaded: 'no' }]]);
    expect(prefill(evaluate(moving, soon), 'isolation').start.suspectedAnyway).toBe('yes');
  });
});

test('the insulation of a visit is judged as after a trip', () => {
  expect(prefill(evaluate(beforeBridge, soon), 'insulation').start.occasion).toBe('after-trip');
});

test('the accuracy comes from the instrument that the step uses', () => {
  expect(prefill(evaluate(beforeBridge, soon), 'bridge').start).toMatchObject({
    accuracyPercent: '1.2',
    accuracyCounts: '4',
  });
  const insulation = prefill(evaluate(beforeBridge, soon), 'insulation');
  expect(insulation.start).toMatchObject({ accuracyPercent: '3.8', accuracyCounts: '9' });
  expect(insulation.notes.accuracyPercent).toBe('From the accuracy that you noted for the insulation tester.');
  // No milliohm meter is noted: the winding was measured with the multimeter.
  expect(prefill(evaluate(beforeBridge, soon), 'winding').start.accuracyPercent).toBe('1.2');
});

test.each([
  ['±(2.1 % + 6 counts)', '2.1', '6'],
  ['1,2% of reading, 4 digits', '1,2', '4'],
  ['1 % +3d', '1', '3'],
  ['5 %', '5', ''],
  ['class 1', '', ''],
  // Two ranges: it is not known which one was used, so neither is taken.
  ['1 % to 40 MΩ, 5 % above', '', ''],
  ['', '', ''],
])('the accuracy %j is read as %j %% and %j counts', (text, percent, counts) => {
  expect(readAccuracy(text)).toEqual({ percent, counts });
});
