import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../../src/visit/evaluate.ts';
import type { Decision } from '../../../../src/visit/guide/decision.ts';
import { partRows } from '../../../../src/visit/report/parts-rows.ts';
import { proofTexts } from '../../../../src/visit/words/evidence.ts';
import { driveOnly, motorAndCable, visitOf } from '../../../support/marrow-bay-visits.ts';

function rowsOf(entries: Parameters<typeof visitOf>[0]) {
  const visit = visitOf(entries);
  const { decision } = evaluate(visit, visit.changedAt).guide;
  if (decision === undefined) throw new Error('no decision');
  return { rows: partRows(decision, visit), decision };
}

describe('the parts desk', () => {
  test('gets what to replace with plate and proof, and what stays', () => {
    const { rows } = rowsOf(driveOnly);
    expect(rows[0]).toEqual({
      part: 'drive',
      name: 'Complete drive',
      what: 'Replace',
      plate: 'Drive 2 of 3, serial number 0417',
      why: expect.stringContaining(proofTexts['bridge-bad']),
    });
    expect(rows.filter(({ what }) => what === 'Replace')).toHaveLength(1);
  });

  test.each([
    ['drive only', driveOnly],
    ['motor and cable', motorAndCable],
  ])('reads “Replace” beside exactly the parts that the decision replaces: %s', (_name, entries) => {
    const { rows, decision } = rowsOf(entries);
    const replaced = rows.filter(({ what }) => what === 'Replace').map(({ part }) => part);
    expect(replaced).toEqual(decision.replace.map(({ part }) => part));
    expect(new Set(rows.map(({ part }) => part)).size).toBe(rows.length);
  });

  test('is not asked to order a part that is only suspect', () => {
    const decision: Decision = {
      ...{ kind: 'undecided', replace: [], excluded: [], possible: [], good: [], open: [], baseline: [] },
      suspect: [{ part: 'motor', reasons: ['isolation-suspect'] }],
    };
    const rows = partRows(decision, visitOf([]));
    expect(rows).toHaveLength(1);
    expect(rows[0]?.what).toMatch(/do not order/);
    expect(rows[0]?.plate).toBe('Motor of the Lift, with brake, serial number 1108');
  });
});
