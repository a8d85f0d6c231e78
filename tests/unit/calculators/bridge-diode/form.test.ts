import { describe, expect, test } from 'vitest';
import { calculator as bridgeDiodeForm } from '../../../../src/calculators/bridge-diode/form.ts';
import { positionStates } from '../../../../src/calculators/bridge-diode/positions.ts';
import { readForm } from '../../../../src/kernel/form/read-form.ts';

const rows = (way: string, text: string) =>
  Object.fromEntries(
    ['plus', 'minus'].flatMap((rail) => ['U', 'V', 'W'].map((phase) => [`${rail}${way}${phase}`, text])),
  );

const sound: Record<string, string> = {
  busVoltage: '0.02',
  motorLeads: 'off',
  steadiness: 'steady',
  ...rows('Forward', '0.412'),
  ...rows('Reverse', 'OL'),
};

const judged = (changes: Record<string, string> = {}) => bridgeDiodeForm.judge({ ...sound, ...changes });
const verdictOf = (changes: Record<string, string>) => {
  const outcome = judged(changes);
  return outcome.state === 'judged' ? outcome.verdict : outcome.state;
};

describe('the form from text to verdict', () => {
  test.each([
    [{}, 'go'],
    [{ minusForwardV: '3 mV', minusReverseV: '0.003' }, 'no-go'],
    [{ plusReverseU: '1.1' }, 'no-go'],
    [{ plusForwardU: '412 mV' }, 'go'],
    [{ plusForwardU: '' }, 'undecided'],
    [{ steadiness: '' }, 'undecided'],
    [{ steadiness: 'drifting' }, 'stop'],
    [{ plusReverseW: '-0.4' }, 'stop'],
    [{ busVoltage: '311' }, 'stop'],
    // With six resistances, one of them a short: the two tests contradict each other.
    [{ plusU: '480k', plusV: '490k', plusW: '485k', minusU: '46k', minusV: '3.8 Ω', minusW: '46k' }, 'undecided'],
    [{ plusU: '480k', plusV: '490k', plusW: '485k', minusU: '46k', minusV: '45k', minusW: '46k' }, 'go'],
  ])('%j is %s', (changes, verdict) => {
    expect(verdictOf(changes)).toBe(verdict);
  });

  test.each(['0.4 kΩ', '412', '0.4 m'])('%s is not a reading of a diode test', (text) => {
    const outcome = judged({ plusForwardU: text });
    expect(outcome.state).toBe('unreadable');
  });

  test('a danger is reported beside an entry that can’t be read', () => {
    const outcome = judged({ plusForwardU: 'abc', minusForwardU: '-0.4' });
    expect(outcome.state === 'unreadable' && outcome.dangers.length).toBe(1);
  });

  test('a verdict names the limits that it used', () => {
    const outcome = judged();
    expect(outcome.state === 'judged' && outcome.limits).toEqual(
      expect.arrayContaining(['diode-balance', 'diode-blocking']),
    );
  });
});

test('the drawing marks the suspect position, and the others are not called sound beside it', () => {
  const changes = { minusForwardV: '0.003', minusReverseV: '0.003' };
  const outcome = judged(changes);
  const assessment = outcome.state === 'judged' ? outcome.assessment : undefined;
  const positions = positionStates(readForm(bridgeDiodeForm.fields, { ...sound, ...changes }), assessment);
  expect(positions.filter(({ state }) => state === 'suspect').map(({ id }) => id)).toEqual(['minusV']);
  expect(positions.filter(({ state }) => state === 'unjudged')).toHaveLength(5);
});
