import { describe, expect, test } from 'vitest';
import type { Outcome } from '../../../../src/kernel/form/calculator-form.ts';
import { announcement, findingsShown, shownVerdict, whyEmpty } from '../../../../src/kernel/form/verdict-words.ts';
import { forms, liftVisit } from '../../calculators/visits.ts';

const bridge = (changes = {}) => forms.bridge.judge(liftVisit('bridge', changes));

function judged(outcome: Outcome) {
  if (outcome.state !== 'judged') throw new Error(`not judged: ${outcome.state}`);
  return outcome;
}

describe('the verdict panel', () => {
  test('has the weightiest findings first', () => {
    const severities = judged(bridge({ minusW: '44k' })).findings.map(({ severity }) => severity);
    expect(severities[0]).toBe('fail');
    expect(severities.at(-1)).toBe('note');
    expect(severities.indexOf('pass')).toBeGreaterThan(severities.lastIndexOf('fail'));
  });

  test('shows stop as a state of its own', () => {
    const outcome = bridge({ busVoltage: '320 V' });
    expect(shownVerdict(outcome)).toBe('stop');
    expect(announcement(outcome)).toMatch(/^Verdict: Stop\. Up to 320 V/);
  });

  test('shows stop also beside an entry that can’t be read', () => {
    const outcome = bridge({ busVoltage: '320 V', plusU: 'x' });
    expect(outcome.state).toBe('unreadable');
    expect(shownVerdict(outcome)).toBe('stop');
    expect(findingsShown(outcome).map(({ severity }) => severity)).toEqual(['stop']);
    expect(shownVerdict(bridge({ plusU: 'x' }))).toBe('empty');
  });

  test('names each limit once', () => {
    const { limits } = judged(bridge());
    expect(limits).toContain('bridge-short');
    expect(new Set(limits).size).toBe(limits.length);
  });

  test('says what to do while there is no verdict', () => {
    expect(whyEmpty(bridge({ plusU: 'x' }))).toMatch(/^Mend the field that/);
    expect(whyEmpty(bridge({ plusU: 'x', plusV: 'y' }))).toMatch(/^Mend the fields that/);
    expect(announcement(forms.bridge.judge({}))).toBe('');
  });

  test('asks for the occasion before it judges an insulation', () => {
    const outcome = forms.insulation.judge(liftVisit('insulation', { occasion: '' }));
    expect(outcome).toMatchObject({ state: 'unchosen', questions: ['Why do you measure?'] });
    expect(whyEmpty(outcome)).toContain('Why do you measure?');
  });
});
