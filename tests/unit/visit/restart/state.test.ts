import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Part } from '../../../../src/kernel/vocabulary.ts';
import { answerOf, type RowId, restartRows, wantedRows } from '../../../../src/visit/restart/rows.ts';
import { leadsBackToService, restartState } from '../../../../src/visit/restart/state.ts';
import { restartHeadline, restartNext } from '../../../../src/visit/restart/words.ts';
import { partNames } from '../../../../src/visit/words/parts.ts';
import { runs } from '../../../support/runs.ts';

// What is asked for and in which order: common practice, no source; the drive's manual and the site's release come first.

const replacing = (...parts: Part[]) => ({ replace: parts.map((part) => ({ part, proofs: [] })) });
const rowIds = Object.keys(restartRows) as RowId[];

/** Every row in order, as after a new drive. */
const allInOrder = { ...Object.fromEntries(rowIds.map((id) => [id, 'ok'])), runs: 'yes' };
const without = (form: Record<string, string>, ...ids: string[]) =>
  Object.fromEntries(Object.entries(form).filter(([id]) => !ids.includes(id)));

describe('what is asked for', () => {
  it.each<[string, Part[], RowId[]]>([
    ['nothing was replaced', [], ['connected', 'closed', 'firstEnable', 'brake', 'safetyFunctions', 'baseline']],
    ['a drive', ['drive'], rowIds],
    ['a motor', ['motor'], rowIds],
    ['a motor cable', ['motor-cable'], rowIds.filter((id) => id !== 'settings')],
    ['a feedback cable', ['feedback-cable'], rowIds.filter((id) => !['settings', 'joined'].includes(id))],
    ['a feedback device', ['feedback-device'], rowIds.filter((id) => id !== 'joined')],
    ['a braking resistor', ['braking-resistor'], rowIds.filter((id) => !['joined', 'direction'].includes(id))],
    ['PE mended', ['protective-conductor'], rowIds.filter((id) => !['joined', 'settings', 'direction'].includes(id))],
  ])('%s', (_, parts, rows) => {
    expect(wantedRows(replacing(...parts))).toEqual(rows);
  });

  it.each([
    ['replace', true],
    ['no-fault-found', true],
    ['mechanical', true],
    ['undecided', false],
    ['inconclusive', false],
  ] as const)('after the decision %s: %s', (kind, leads) => {
    expect(leadsBackToService({ kind })).toBe(leads);
  });
});

describe('how it stands after a new drive', () => {
  it.each<[string, Record<string, string>, string, RowId[], string]>([
    ['nothing answered', {}, 'open', rowIds, 'Open: 10 to do'],
    ['all in order, and it runs', allInOrder, 'closed', [], 'Closed: it runs, and everything is in order'],
    ['all in order, not tried', { ...allInOrder, runs: 'no' }, 'open', [], 'Open: it has not run yet'],
    [
      'no brake and no safety functions',
      { ...allInOrder, brake: 'not-needed', safetyFunctions: 'not-needed' },
      'closed',
      [],
      'Closed',
    ],
    [
      'a new part is never beyond measuring',
      { ...allInOrder, newPart: 'not-needed' },
      'too-early',
      ['newPart'],
      'Running before its checks',
    ],
    ['a bad motor at the new drive', { joined: 'fault' }, 'fault', ['joined'], 'Not in order. Do not enable'],
    [
      'a brake that does not hold, running',
      { ...allInOrder, brake: 'fault' },
      'fault',
      ['brake'],
      'Not in order. Switch off',
    ],
    [
      'enabled before the motor was measured',
      without(allInOrder, 'joined', 'runs'),
      'too-early',
      ['joined'],
      'Enabled before its checks. Switch off',
    ],
    [
      'enabled with foreign settings',
      { newPart: 'ok', joined: 'ok', connected: 'ok', closed: 'ok', firstEnable: 'ok' },
      'too-early',
      ['settings'],
      'Enabled before its checks',
    ],
    ['a wrong direction seen before the covers are on', { direction: 'fault' }, 'fault', ['direction'], 'Not in order'],
    [
      'running without the safety functions',
      without(allInOrder, 'safetyFunctions'),
      'too-early',
      ['safetyFunctions'],
      'Running before its checks. Switch off',
    ],
    ['the baseline alone is missing', without(allInOrder, 'baseline'), 'open', ['baseline'], 'Open: 1 to do'],
    ['trips again', { ...allInOrder, runs: 'trips' }, 'trips-again', [], 'It trips again. Switch off and lock out'],
    [
      'trips again, with a cable never measured',
      { ...without(allInOrder, 'joined'), runs: 'trips' },
      'trips-again',
      ['joined'],
      'It trips again',
    ],
  ])('%s', (_, form, kind, rows, headline) => {
    const state = restartState(form, replacing('drive'));
    expect(state).toMatchObject({ kind, rows });
    expect(restartHeadline(state)).toContain(headline);
    // What is missing or bad is named.
    if (kind !== 'open')
      for (const id of rows) expect(restartNext(state).join(' ')).toContain(restartRows[id].field.name);
  });
});

const parts = fc.subarray(Object.keys(partNames) as Part[]);
const answers = fc.record({
  ...Object.fromEntries(rowIds.map((id) => [id, fc.constantFrom('', 'ok', 'fault', 'not-needed', 'x')])),
  runs: fc.constantFrom('', 'yes', 'trips', 'no', 'x'),
}) as fc.Arbitrary<Record<string, string>>;

describe('of any answers', () => {
  it('it is closed only if it runs and every row that is asked for is answered without a fault', () => {
    fc.assert(
      fc.property(answers, parts, (form, replaced) => {
        const decision = replacing(...replaced);
        const sound = wantedRows(decision).every((id) => ['ok', 'not-needed'].includes(answerOf(form, id) ?? ''));
        expect(restartState(form, decision).kind === 'closed').toBe(sound && form.runs === 'yes');
      }),
      { numRuns: runs },
    );
  });

  it('an answer taken away, or a fault instead of it, never closes it and never hides that it trips', () => {
    fc.assert(
      fc.property(
        answers,
        parts,
        fc.constantFrom(...rowIds),
        fc.constantFrom('', 'fault'),
        (form, replaced, id, worse) => {
          const decision = replacing(...replaced);
          const before = restartState(form, decision).kind;
          const after = restartState({ ...form, [id]: worse }, decision).kind;
          if (before !== 'closed') expect(after).not.toBe('closed');
          if (before === 'trips-again') expect(after).toBe('trips-again');
        },
      ),
      { numRuns: runs },
    );
  });
});
