import { describe, expect, test } from 'vitest';
import { calculator as bridgeForm, bridgeInput } from '../../../../src/calculators/bridge/form.ts';
import { bridgePositions } from '../../../../src/calculators/bridge/positions.ts';
import type { Typed } from '../../../../src/kernel/form/field.ts';
import { readForm } from '../../../../src/kernel/form/read-form.ts';
import { liftVisit } from '../visits.ts';

const input = (changes: Typed) => bridgeInput(readForm(bridgeForm.fields, liftVisit('bridge', changes)));
const errorOf = (id: string, text: string) => readForm(bridgeForm.fields, { [id]: text }).errors[id]?.message;

function states(changes: Typed): Record<string, string> {
  const typed = liftVisit('bridge', changes);
  const outcome = bridgeForm.judge(typed);
  const assessment = outcome.state === 'judged' ? outcome.assessment : undefined;
  const positions = bridgePositions(readForm(bridgeForm.fields, typed), assessment);
  return Object.fromEntries(positions.map(({ id, state }) => [id, state]));
}

describe('the bridge form', () => {
  test('leaves out what was not stated, so that the rule’s own default applies', () => {
    expect(input({})).not.toHaveProperty('tolerancePercent');
    expect(input({}).instrument).toEqual({});
    expect(input({ motorLeads: '' }).motorLeads).toBe('not-stated');
  });

  test('passes on what was stated', () => {
    const stated = input({ tolerance: '5 %', accuracyPercent: '1', accuracyCounts: '3', upperLimit: '72M' });
    expect(stated).toMatchObject({ tolerancePercent: 5, instrument: { percent: 1, counts: 3, upperLimit: 72e6 } });
  });

  test('knows no second reading, no sister and no bus of an old record', () => {
    const ids = [
      'plusAgain',
      'minusAgain',
      'plusExchanged',
      'minusExchanged',
      'worstAgain',
      'dcBus',
      'sister',
      'alsoOnBus',
    ] as const;
    const old = Object.entries(liftVisit('bridge')).filter(([id]) => !ids.some((later) => later === id));
    const read = bridgeInput(readForm(bridgeForm.fields, Object.fromEntries(old)));
    expect(read.dcPlus.U).toMatchObject({ value: 482e3 });
    expect(ids.filter((id) => read[id] !== undefined)).toEqual([]);
    expect(input({ sister: 'not-compared', alsoOnBus: 'not-stated' })).not.toHaveProperty('sister');
  });

  test('passes on what was read once more', () => {
    const read = {
      plusAgain: '452k',
      minusAgain: '45k',
      plusExchanged: '1.2k',
      minusExchanged: '1.3k',
      worstAgain: '4 Ω',
      dcBus: '470k',
    };
    const more = input({ ...read, sister: 'differs', alsoOnBus: 'nothing' });
    expect(more).toMatchObject({ sister: 'differs', alsoOnBus: 'nothing' });
    expect(more).toMatchObject({
      plusAgain: { value: 452e3 },
      minusAgain: { value: 45e3 },
      plusExchanged: { value: 1200 },
      minusExchanged: { value: 1300 },
      worstAgain: { value: 4 },
      dcBus: { value: 470e3 },
    });
    const outcome = bridgeForm.judge(
      liftVisit('bridge', {
        ...read,
        plusExchanged: '',
        minusExchanged: '',
        minusAgain: '',
        plusAgain: '',
        alsoOnBus: 'nothing',
      }),
    );
    expect(outcome.state === 'judged' && outcome.assessment.drive).toBe('convicted');
  });

  test.each(['0', '-3', '101', 'ten', 'OL'])('refuses the tolerance %s', (text) => {
    expect(errorOf('tolerance', text)).toBeTruthy();
  });

  test.each(['0', 'OL', '>72M'])('refuses %s as the highest reading of a meter', (text) => {
    expect(errorOf('upperLimit', text)).toBeTruthy();
  });

  test.each(['0.1', '100', '10 %', ''])('takes the tolerance %s', (text) => {
    expect(errorOf('tolerance', text)).toBeUndefined();
  });
});

describe('the schematic', () => {
  test('marks the shorted position, and the two that agree beside it as sound', () => {
    expect(states({})).toEqual({
      plusU: 'sound',
      plusV: 'sound',
      plusW: 'sound',
      minusU: 'sound',
      minusV: 'suspect',
      minusW: 'sound',
    });
  });

  test('calls nothing sound beside a bad one when there is only one left', () => {
    expect(states({ minusW: '' })).toMatchObject({ minusU: 'unjudged', minusV: 'suspect', minusW: 'missing' });
  });

  test('marks the odd one out of an unbalanced rail', () => {
    expect(states({ minusV: '162k' })).toMatchObject({ minusU: 'sound', minusV: 'suspect', minusW: 'sound' });
  });

  test('judges no position while the bus is charged, the leads are on, or an entry can’t be read', () => {
    for (const changes of [{ busVoltage: '300 V' }, { motorLeads: 'connected' }, { plusU: 'x' }]) {
      const shown = new Set(Object.values(states(changes)));
      shown.delete('missing');
      expect([...shown]).toEqual(['unjudged']);
    }
  });
});
