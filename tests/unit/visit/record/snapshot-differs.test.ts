import { expect, test } from 'vitest';
import { snapshotDiffers } from '../../../../src/visit/record/snapshot-differs.ts';
import type { Snapshot } from '../../../../src/visit/record/snapshot-schema.ts';
import { failed, typicalVisit } from './support/typical-visit.ts';

const visit = typicalVisit();
const asStored = (step: string): Snapshot =>
  step === 'isolation'
    ? { ...failed, parts: { protectiveConductor: 'proven-good', motor: 'proven-bad', cable: 'proven-good' } }
    : failed;

test('nothing differs while the readings give what was stored, in any order of keys', () => {
  expect(snapshotDiffers(visit, asStored)).toEqual([]);
});

test('only steps with a snapshot are computed, from their typed texts', () => {
  const asked: [string, string | undefined][] = [];
  snapshotDiffers(visit, (step, form) => {
    asked.push([step, form.minusV ?? form.U ?? form.joinedU]);
    return asStored(step);
  });
  expect(asked).toEqual([
    ['bridge', '3.8 Ω'],
    ['insulation', '3.1 MΩ'],
    ['isolation', '3.1 MΩ'],
  ]);
});

test.each([
  ['verdict', { verdict: 'go' as const }],
  ['sentences', { sentences: ['Go.'] }],
  ['limits', { limits: failed.limits.map((limit) => ({ ...limit, value: `${limit.value} or so` })) }],
  ['parts', { parts: { cable: 'undecided', motor: 'proven-bad', protectiveConductor: 'proven-good' } }],
])('a different %s is named with both sides', (part, change) => {
  const today = { ...failed, ...change };
  const differences = snapshotDiffers(visit, (step) => (step === 'bridge' ? today : asStored(step)));
  expect(differences).toEqual([{ step: 'bridge', differs: [part], stored: failed, today }]);
});

test('readings that no longer give a verdict are named', () => {
  const differences = snapshotDiffers(visit, (step) => (step === 'bridge' ? undefined : asStored(step)));
  expect(differences).toEqual([{ step: 'bridge', differs: ['unreadable'], stored: failed, today: undefined }]);
});

test('more or fewer limits are not a difference: the words and rules of a verdict may grow', () => {
  const today = { ...failed, limits: failed.limits.slice(1) };
  expect(snapshotDiffers(visit, (step) => (step === 'bridge' ? today : asStored(step)))).toEqual([]);
});
