import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../../src/visit/evaluate.ts';
import { asTripVisit, newVisit } from '../../../../src/visit/record/change-visit.ts';
import type { VisitRecord } from '../../../../src/visit/record/visit-schema.ts';
import type { StepId } from '../../../../src/visit/steps/ids.ts';
import { isMeasured } from '../../../../src/visit/steps/questions.ts';
import { rules } from '../../../../src/visit/steps/rules.ts';
import { enterStep } from '../../../support/visit-records.ts';
import { soundForms } from './support/sound-forms.ts';

// Readings of a sound servo axis, recalled from memory; the order is project judgement.

const begin = newVisit('baseline-visit', '2026-03-02T08:00:00+01:00', {
  machine: 'Gantry 2',
  axis: 'Lift',
  purpose: 'baseline',
});

/** Answers whatever is due until nothing is, one minute after the other. */
function walked(change: Partial<Record<StepId, Record<string, string>>> = {}): { visit: VisitRecord; asked: StepId[] } {
  let visit: VisitRecord = begin;
  const asked: StepId[] = [];
  for (let minute = 1; minute < 40; minute++) {
    const now = `2026-03-02T08:${String(minute).padStart(2, '0')}:00+01:00`;
    const { due } = evaluate(visit, now).guide;
    if (due === undefined || asked.includes(due)) break;
    asked.push(due);
    visit = enterStep(visit, due, { ...soundForms[due], ...change[due] }, now);
  }
  return { visit, asked };
}

const state = (visit: VisitRecord) => evaluate(visit, visit.changedAt).guide;

test('support and lockout come first, then the readings; no step gives power', () => {
  const { visit, asked } = walked();
  expect(asked.slice(0, 2)).toEqual(['support-axis', 'lockout-1']);
  expect(asked.filter(isMeasured)).toEqual(['bridge', 'winding', 'insulation']);
  expect(asked.map((id) => ('energy' in rules[id] ? rules[id].energy : 'none'))).toEqual(asked.map(() => 'none'));
  expect(asked[asked.length - 1]).toBe('reconnect');
  expect(state(visit)).toMatchObject({ baseline: 'complete', due: undefined, decision: undefined });
});

test.each<[string, StepId, Record<string, string>]>([
  ['a shorted transistor', 'bridge', { minusV: '0.4 Ω' }],
  ['insulation below the after-trip limit', 'insulation', { together: '20 MΩ', leftOpen: 'yes' }],
  ['a winding that is open', 'winding', { UV: 'OL' }],
  ['idle cores not measured', 'idle-cores', { cores: 'not-done', lowest: '' }],
  ['a chafed cable', 'inspect', { seenMotorCable: 'chafed' }],
])('%s: no baseline, and nothing is connected again', (_, step, form) => {
  const { visit, asked } = walked({ [step]: { ...form, leftOpen: 'yes' } });
  expect(asked).not.toContain('reconnect');
  expect(state(visit).baseline).not.toBe('complete');
});

describe('a baseline that found something', () => {
  test('goes on as a visit and keeps what was measured', () => {
    const { visit } = walked({ bridge: { minusV: '0.4 Ω' } });
    const trip = asTripVisit(visit, visit.changedAt);
    const guide = state(trip);
    expect(guide.baseline).toBeUndefined();
    expect(guide.due).toBe('find-drive');
    expect(trip.steps).toEqual(visit.steps);
  });
});

test('a baseline that is not sound says so, and one that is under way does not', () => {
  expect(state(walked({ bridge: { minusV: '0.4 Ω' } }).visit).baseline).toBe('not-sound');
  expect(state(begin).baseline).toBe('open');
});

test('after a break the lockout is asked for again before the next reading', () => {
  const { visit } = walked({ winding: { UV: '', VW: '', WU: '' } });
  const { path } = evaluate(visit, '2026-03-02T14:00:00+01:00').guide;
  expect(path.some(({ id, status }) => id === 'support-again' && status !== 'done')).toBe(true);
});
