import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fingerprint, secondId } from '../../../src/shop/merge/content.ts';
import { exchange } from '../../../src/shop/merge/exchange.ts';
import { mergeStates, printOf, type Shared, stateHere } from '../../../src/shop/merge/merge-visit.ts';
import { compareVersions, joined, type Versions } from '../../../src/shop/merge/versions.ts';
import { newVisit } from '../../../src/visit/record/change-visit.ts';
import type { VisitRecord } from '../../../src/visit/record/visit-schema.ts';

const visit = (notes: string, seq = 0): VisitRecord => ({
  ...newVisit('marrow-bay-1', '2026-03-03T06:00:00+01:00', { machine: 'Marrow Bay line 2 (invented)' }),
  notes,
  seq,
});
const state = (versions: Versions, content: VisitRecord | undefined): Shared => ({
  id: 'marrow-bay-1',
  versions,
  visit: content,
});
const ids = fc.constantFrom('tablet-a', 'tablet-b', 'tablet-c');
const versions = fc.dictionary(ids, fc.nat(3));

describe('versions', () => {
  test.each<[Versions, Versions, string]>([
    [{}, {}, 'same'],
    [{ 'tablet-a': 1 }, {}, 'after'],
    [{}, { 'tablet-a': 1 }, 'before'],
    [{ 'tablet-a': 2, 'tablet-b': 1 }, { 'tablet-a': 1, 'tablet-b': 1 }, 'after'],
    [{ 'tablet-a': 2 }, { 'tablet-a': 1, 'tablet-b': 1 }, 'apart'],
    [{ 'tablet-a': 0 }, {}, 'same'],
  ])('%j to %j: %s', (a, b, order) => {
    expect(compareVersions(a, b)).toBe(order);
  });

  test('joined has the changes of both, and no more', () => {
    fc.assert(
      fc.property(versions, versions, (a, b) => {
        const both = joined(a, b);
        expect(['same', 'after']).toContain(compareVersions(both, a));
        expect(['same', 'after']).toContain(compareVersions(both, b));
        expect(compareVersions(both, joined(b, a))).toBe('same');
      }),
    );
  });
});

describe('two states of a visit', () => {
  const [old, mine, theirs] = [visit('old'), visit('mine', 2), visit('theirs', 1)];
  test.each<[string, Shared, Shared, VisitRecord | undefined, string[]]>([
    ['newer here', state({ a: 2 }, mine), state({ a: 1 }, old), mine, []],
    ['newer there', state({ a: 1 }, old), state({ a: 1, b: 1 }, theirs), theirs, []],
    [
      'changed apart: the one with more answers keeps the id',
      state({ a: 2 }, mine),
      state({ a: 1, b: 1 }, theirs),
      mine,
      ['theirs'],
    ],
    ['changed apart in the same way', state({ a: 2 }, mine), state({ a: 1, b: 1 }, mine), mine, []],
    [
      'the same version with another content, from a device set back',
      state({ a: 2 }, mine),
      state({ a: 2 }, theirs),
      mine,
      ['theirs'],
    ],
    ['deleted there, not changed here', state({ a: 1 }, old), state({ a: 1, b: 1 }, undefined), undefined, []],
    ['deleted there, changed here', state({ a: 2 }, mine), state({ a: 1, b: 1 }, undefined), mine, []],
    ['deleted here, changed there', state({ a: 2 }, undefined), state({ a: 1, b: 1 }, theirs), theirs, []],
    ['deleted on both', state({ a: 2 }, undefined), state({ a: 1, b: 1 }, undefined), undefined, []],
  ])('%s', (_name, a, b, kept, second) => {
    for (const merged of [mergeStates([a, b]), mergeStates([b, a])]) {
      expect(printOf(merged.state.visit)).toBe(printOf(kept));
      expect(merged.second.map(({ notes }) => notes)).toEqual(second);
      expect(merged.state.versions).toEqual(joined(a.versions, b.versions));
    }
  });

  test('a deletion that was outvoted is no content: whoever has seen the content may delete it', () => {
    // Deleted on b, changed on a meanwhile: kept. Then a, which has not heard of that, deletes all that it has written.
    const kept = mergeStates([state({ a: 2 }, mine), state({ a: 1, b: 1 }, undefined)]).state;
    expect(kept).toEqual({ ...state({ a: 2, b: 1 }, mine), contentVersions: { a: 2 } });
    const deleted = state({ a: 3 }, undefined);
    const gone = state({ a: 3, b: 1 }, undefined);
    for (const all of [[kept, deleted] as const, [deleted, kept] as const]) {
      expect(mergeStates(all)).toEqual({ state: gone, second: [], keptAfterDeletion: false });
    }
    // A later text of a takes its place too, without a version beside.
    expect(mergeStates([kept, state({ a: 3 }, theirs)])).toMatchObject({ state: { visit: theirs }, second: [] });
    // One that had not seen it yields, as ever.
    expect(mergeStates([kept, state({ a: 1, c: 1 }, undefined)]).state.visit).toBe(mine);
    // A text that b writes on the kept visit is newer than what a knew.
    const later = state({ a: 2, b: 2 }, theirs);
    expect(mergeStates([kept, later, deleted]).state.visit).toBe(theirs);
  });

  test('what was outvoted is known until the next change here', () => {
    const known = { versions: { a: 2, b: 1 }, contentVersions: { a: 2 }, print: printOf(mine) };
    expect(stateHere('b', 'marrow-bay-1', mine, known)).toEqual({
      ...state({ a: 2, b: 1 }, mine),
      contentVersions: { a: 2 },
    });
    expect(stateHere('b', 'marrow-bay-1', theirs, known)).toEqual(state({ a: 2, b: 2 }, theirs));
  });

  test('a change after a deletion elsewhere is said', () => {
    expect(mergeStates([state({ a: 2 }, mine), state({ b: 1 }, undefined)]).keptAfterDeletion).toBe(true);
    expect(mergeStates([state({ a: 1 }, mine), state({ a: 1, b: 1 }, undefined)]).keptAfterDeletion).toBe(false);
  });

  test('the version beside has the same id on every device, names its visit, and begins a new stretch of work', () => {
    const [second] = mergeStates([state({ a: 1 }, mine), state({ b: 1 }, theirs)]).second;
    expect(second).toMatchObject({
      id: secondId(theirs),
      secondVersionOf: 'marrow-bay-1',
      stretch: theirs.stretch + 1,
    });
  });

  test('any states in any order: the same result, and every content in it', () => {
    const content = fc.constantFrom(visit('x'), visit('y', 1), visit('z', 2), undefined);
    const states = fc.array(fc.tuple(versions, content), { minLength: 2, maxLength: 5 });
    // Of each second one a deletion on tablet-c was outvoted.
    const lower = (each: Shared): Shared | undefined => {
      const { 'tablet-c': outvoted, ...contentVersions } = each.versions;
      return outvoted === 2 ? { ...each, contentVersions } : undefined;
    };
    const outcome = (all: readonly Shared[]) => {
      const here = { device: 'tablet-x', visits: new Map(), known: new Map(), unreadable: new Set<string>() };
      const { states: after } = exchange(here, all);
      return [...after.values()].map((one) => `${one.id} ${printOf(one.visit)}`).sort();
    };
    fc.assert(
      fc.property(states, (drawn) => {
        // One device never gives the same version to two contents.
        const one = new Map(drawn.map(([at, what]) => [JSON.stringify(joined(at, {})), state(at, what)]));
        const all = [...one.values()].map((each) => (each.visit && lower(each)) ?? each);
        expect(outcome([...all].reverse())).toEqual(outcome(all));
        // Nothing goes away unless a deletion or a later text has seen it.
        if (all.every(({ visit: held }) => held !== undefined)) {
          expect(outcome(all).some((line) => line.startsWith('marrow-bay-1 ') && !line.endsWith(' '))).toBe(true);
        }
        expect(outcome([...all, ...all])).toEqual(outcome(all));
      }),
    );
  });
});

describe('what counts as a change of this device', () => {
  const known = { versions: { 'tablet-b': 3 }, print: printOf(visit('old')) };
  test('nothing: the version stays', () => {
    expect(stateHere('tablet-a', 'marrow-bay-1', visit('old'), known)?.versions).toEqual({ 'tablet-b': 3 });
  });
  test('a text, a deletion, and a visit that was never exchanged are each one more', () => {
    const next = { 'tablet-b': 3, 'tablet-a': 1 };
    expect(stateHere('tablet-a', 'marrow-bay-1', visit('new'), known)?.versions).toEqual(next);
    expect(stateHere('tablet-a', 'marrow-bay-1', undefined, known)).toEqual(state(next, undefined));
    expect(stateHere('tablet-a', 'marrow-bay-1', visit('new'), undefined)?.versions).toEqual({ 'tablet-a': 1 });
  });
  test('a save without a change, or a new stretch of work, is none', () => {
    expect(fingerprint({ ...visit('old'), revision: 9, stretch: 4 })).toBe(fingerprint(visit('old')));
    expect(fingerprint(visit('other'))).not.toBe(fingerprint(visit('old')));
  });
});
