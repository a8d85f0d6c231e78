import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type FieldId, fieldIds } from '../../../../src/axes/record/axis-fields.ts';
import type { AxisRecord } from '../../../../src/axes/record/axis-schema.ts';
import {
  aliasesOf,
  namesOf,
  newAxis,
  renamed,
  textIn,
  withChange,
  withValues,
} from '../../../../src/axes/record/change-axis.ts';
import { rivals } from '../../../../src/axes/record/entries.ts';
import { mergeAxes } from '../../../../src/axes/record/merge-axes.ts';
import { idOfNames, nameKey } from '../../../../src/axes/record/names.ts';
import { readAxis } from '../../../../src/axes/record/read-axis.ts';
import { runs } from '../../../support/runs.ts';

// Common practice of merging records by field, no source.

const lift = { machine: 'Cutting gantry, line 2', axis: 'Lift' };
const morning = '2026-03-02T06:00:00+01:00';
const noon = '2026-03-02T12:00:00+01:00';
const night = '2026-03-02T22:00:00+01:00';

test('the same name in another spelling is the same axis; another hyphen is not', () => {
  expect(nameKey({ machine: ' Cutting  gantry, line 2', axis: 'LIFT ' })).toBe(nameKey(lift));
  expect(idOfNames({ machine: ' Cutting  gantry, line 2', axis: 'LIFT ' })).toBe(idOfNames(lift));
  expect(idOfNames(lift)).toMatch(/^[0-9a-f]{32}$/);
  expect(idOfNames({ machine: 'Saw', axis: '1-2' })).not.toBe(idOfNames({ machine: 'Saw', axis: '12' }));
});

test('the later text holds, and the earlier one stays in the record', () => {
  const noted = withValues(newAxis(lift, morning), { motor: 'SM-40' }, morning);
  const mended = withValues(noted, { motor: 'SM-48' }, noon);
  expect(textIn(mended, 'motor')).toBe('SM-48');
  expect(mended.fields.motor?.map(({ value }) => value)).toEqual(['SM-48', 'SM-40']);
});

test('an edit that saw the other one wins even if its clock is behind', () => {
  const noted = withValues(newAxis(lift, morning), { motor: 'SM-40' }, night);
  const corrected = withValues(noted, { motor: 'SM-48' }, morning);
  expect(textIn(mergeAxes(noted, corrected), 'motor')).toBe('SM-48');
});

test('two texts typed without sight of each other are both kept and shown as rivals', () => {
  const begin = newAxis(lift, morning);
  const merged = mergeAxes(withValues(begin, { brake: '24 V' }, noon), withValues(begin, { brake: '48 V' }, night));
  expect(textIn(merged, 'brake')).toBe('48 V');
  expect(rivals(merged.fields.brake ?? []).map(({ value }) => value)).toEqual(['48 V', '24 V']);
});

test('texts of different fields that two devices typed are both there', () => {
  const begin = newAxis(lift, morning);
  const merged = mergeAxes(withValues(begin, { motor: 'SM-40' }, noon), withValues(begin, { label: 'R12' }, noon));
  expect([textIn(merged, 'motor'), textIn(merged, 'label')]).toEqual(['SM-40', 'R12']);
});

test('a former name stays an alias', () => {
  const axis = renamed(newAxis({ machine: 'Gantry', axis: 'Z' }, morning), lift, noon);
  expect(namesOf(axis)).toEqual(lift);
  expect(aliasesOf(axis)).toEqual([{ machine: 'Gantry', axis: 'Z' }]);
});

test('a change of a part that is taken back stays taken back after a merge with the older record', () => {
  const change = { id: 'c'.repeat(8), part: 'drive', on: '2026-03-02', note: '', dropped: false };
  const noted = withChange(newAxis(lift, morning), change, noon);
  const back = withChange(noted, { ...change, dropped: true }, night);
  expect(mergeAxes(noted, back).changes).toEqual([{ ...change, dropped: true, at: night, count: 2 }]);
});

// Records that several devices made from one beginning, by any edits in any order.

const time = fc
  .integer({ min: 0, max: 300 })
  .map((hours) => `${new Date(Date.UTC(2026, 0, 1, hours)).toISOString().slice(0, 19)}+00:00`);
const short = fc.constantFrom('', 'a', 'b', 'c');
const edit = fc.oneof(
  fc.record({ kind: fc.constant('value' as const), id: fc.constantFrom(...fieldIds), value: short, at: time }),
  fc.record({ kind: fc.constant('name' as const), machine: short, axis: short, at: time }),
  fc.record({ kind: fc.constant('change' as const), id: fc.constantFrom('a', 'b'), dropped: fc.boolean(), at: time }),
);
type Edit = typeof edit extends fc.Arbitrary<infer T> ? T : never;

function edited(axis: AxisRecord, one: Edit): AxisRecord {
  if (one.kind === 'value') return withValues(axis, { [one.id]: one.value } as Record<FieldId, string>, one.at);
  if (one.kind === 'name') return renamed(axis, one, one.at);
  const { id, dropped, at } = one;
  return withChange(axis, { id: id.repeat(8), part: 'motor', on: at.slice(0, 10), note: '', dropped }, at);
}

const begin = newAxis(lift, morning);
const record = fc.array(edit, { maxLength: 8 }).map((edits) => edits.reduce(edited, begin));

test('merging is commutative, associative and idempotent, and loses no entry', () => {
  fc.assert(
    fc.property(record, record, record, (a, b, c) => {
      const ab = mergeAxes(a, b);
      expect(mergeAxes(b, a)).toEqual(ab);
      expect(mergeAxes(mergeAxes(a, b), c)).toEqual(mergeAxes(a, mergeAxes(b, c)));
      expect(mergeAxes(ab, a)).toEqual(ab);
      for (const one of [a, b]) {
        expect(ab.names).toEqual(expect.arrayContaining(one.names));
        for (const id of fieldIds) expect(ab.fields[id] ?? []).toEqual(expect.arrayContaining(one.fields[id] ?? []));
      }
      const read = readAxis(JSON.parse(JSON.stringify(ab)));
      expect(read.ok && read.value).toEqual(ab);
    }),
    { numRuns: runs },
  );
});

test('what is no axis, or of a newer edition, is refused', () => {
  expect(readAxis({ format: 'other' })).toMatchObject({ ok: false, problem: { kind: 'foreign' } });
  expect(readAxis({ ...begin, version: 2 })).toMatchObject({ ok: false, problem: { kind: 'newer' } });
  expect(readAxis({ ...begin, names: 'Lift' })).toMatchObject({ ok: false, problem: { kind: 'does-not-fit' } });
});
