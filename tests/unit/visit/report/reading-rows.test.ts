import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../../src/visit/evaluate.ts';
import { measuredReports } from '../../../../src/visit/report/measured.ts';
import { limitLetter } from '../../../../src/visit/report/reading-rows.ts';
import type { StepId } from '../../../../src/visit/steps/ids.ts';
import { driveOnly, soundBridge, visitOf } from '../../../support/marrow-bay-visits.ts';

// What the rows say is what the findings of the rule say of each reading; the readings are invented.

function rowsOf(id: StepId, form: Record<string, string>) {
  const visit = visitOf([[id, form]]);
  return measuredReports(evaluate(visit, visit.changedAt), [id])[0]?.rows ?? [];
}

const verdicts = (rows: { id: string; verdict: string }[]) =>
  Object.fromEntries(rows.map(({ id, verdict }) => [id, verdict]));

describe('the verdict of one reading', () => {
  test('a shorted transistor: only its reading fails, and the others of its rail have no verdict of their own', () => {
    expect(verdicts(rowsOf('bridge', { ...soundBridge, minusV: '0.4 Ω' }))).toEqual({
      busVoltage: 'Passes',
      plusU: 'Passes',
      plusV: 'Passes',
      plusW: 'Passes',
      minusU: '–',
      minusV: 'Fails',
      minusW: '–',
    });
  });

  test('a charged bus: nothing passes', () => {
    const rows = rowsOf('bridge', { ...soundBridge, busVoltage: '310 V' });
    expect(rows[0]).toMatchObject({ id: 'busVoltage', verdict: 'Stop' });
    expect(rows.map(({ verdict }) => verdict)).not.toContain('Passes');
  });

  test('a residual voltage: it stays open', () => {
    expect(rowsOf('bridge', { ...soundBridge, busVoltage: '2 V' })[0]).toMatchObject({ verdict: 'Open' });
  });

  test('no passing finding hides a failing one of the same reading', () => {
    const visit = visitOf(driveOnly);
    const all = evaluate(visit, visit.changedAt);
    const { outcome } = all.steps.bridge;
    if (outcome?.state !== 'judged') throw new Error('not judged');
    const rows = measuredReports(all, ['bridge'])[0]?.rows ?? [];
    for (const { severity, readings } of outcome.assessment.findings) {
      if (severity === 'fail') for (const id of readings) expect(verdicts(rows)[id]).toBe('Fails');
    }
    expect(rows.some(({ verdict }) => verdict === 'Fails')).toBe(true);
  });
});

describe('a reading in words', () => {
  test.each([
    ['OL', 'OL'],
    ['>72M', '>72 MΩ'],
    ['2,2 MΩ', '2.2 MΩ'],
    ['450k', '450 kΩ'],
  ])('%s: %s', (typed, shown) => {
    expect(rowsOf('bridge', { ...soundBridge, plusU: typed }).find(({ id }) => id === 'plusU')?.reading).toBe(shown);
  });

  test('one that was not taken has no row', () => {
    expect(rowsOf('bridge', { ...soundBridge, plusU: '' }).map(({ id }) => id)).not.toContain('plusU');
  });
});

test('the letters of the limits never repeat', () => {
  const letters = Array.from({ length: 800 }, (_, index) => limitLetter(index));
  expect(new Set(letters).size).toBe(800);
  expect([letters[0], letters[25], letters[26], letters[27]]).toEqual(['a', 'z', 'aa', 'ab']);
});
