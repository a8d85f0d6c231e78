import { describe, expect, test } from 'vitest';
import { newAxis, withValues } from '../../../src/axes/record/change-axis.ts';
import { readShopText, writeShop } from '../../../src/shop/file/shop-file.ts';
import { exchange } from '../../../src/shop/merge/exchange.ts';
import { syncFolder } from '../../../src/shop/merge/sync.ts';
import { exportVisit } from '../../../src/visit/record/export-visit.ts';
import { format, PlainFolder, shop } from './support/plain-folder.ts';
import type { Tablet } from './support/tablet.ts';

test('a visit goes to the other tablet as one file, and begins a new stretch of work there', async () => {
  const { a, b, folder, both } = shop();
  a.begin('marrow-bay-1', 'one');
  await both();
  expect([...folder.texts.keys()]).toEqual(['visit-marrow-bay-1.json']);
  expect(b.visits.get('marrow-bay-1')).toMatchObject({ notes: 'one', stretch: 2 });
  expect(a.visits.get('marrow-bay-1')?.stretch).toBe(1);
});

test('without a change nothing is written and nothing is stored again', async () => {
  const { a, b, folder, both } = shop();
  a.begin('marrow-bay-1', 'one');
  await both();
  const [writes, revision] = [folder.writes, b.visits.get('marrow-bay-1')?.revision];
  for (let turn = 0; turn < 3; turn += 1) await both();
  expect(folder.writes).toBe(writes);
  expect(b.visits.get('marrow-bay-1')?.revision).toBe(revision);
});

test('changed on both: each tablet has both versions, and it is said', async () => {
  const { a, b, both } = shop();
  a.begin('marrow-bay-1', 'one');
  await both();
  a.write('marrow-bay-1', 'by-a');
  b.write('marrow-bay-1', 'by-b');
  const { second } = await both();
  expect(second.apart).toHaveLength(1);
  await both();
  expect(a.notes().sort()).toEqual(['one by-a', 'one by-b']);
  expect(b.prints()).toEqual(a.prints());
});

describe('photographs', () => {
  const pictures = (tablet: Tablet) => [...tablet.visits.values()].flatMap((visit) => visit.photographs ?? []);

  test('go over whole, and one that is attached on each tablet is no second version', async () => {
    const { a, b, both } = shop();
    a.begin('marrow-bay-1', 'one');
    a.attach('marrow-bay-1', 'photograph-a');
    await both();
    b.attach('marrow-bay-1', 'photograph-b');
    a.attach('marrow-bay-1', 'photograph-c');
    const { second } = await both();
    await both();
    expect(second.apart).toEqual([]);
    for (const tablet of [a, b]) {
      expect(
        pictures(tablet)
          .map(({ id }) => id)
          .sort(),
      ).toEqual(['photograph-a', 'photograph-b', 'photograph-c']);
      expect(pictures(tablet).every(({ jpeg }) => (jpeg?.length ?? 0) > 0)).toBe(true);
    }
  });

  test('one that was taken away on one tablet is gone on both', async () => {
    const { a, b, both } = shop();
    a.begin('marrow-bay-1', 'one');
    a.attach('marrow-bay-1', 'photograph-a');
    await both();
    const visit = b.visits.get('marrow-bay-1');
    if (visit) b.visits.set(visit.id, { ...visit, photographs: [] });
    await both();
    await both();
    expect([pictures(a), pictures(b)]).toEqual([[], []]);
  });

  test('both versions of a visit that was changed apart keep theirs', async () => {
    const { a, b, both } = shop();
    a.begin('marrow-bay-1', 'one');
    a.attach('marrow-bay-1', 'photograph-a');
    await both();
    a.write('marrow-bay-1', 'by-a');
    b.write('marrow-bay-1', 'by-b');
    b.attach('marrow-bay-1', 'photograph-b');
    await both();
    await both();
    for (const tablet of [a, b])
      expect(
        pictures(tablet)
          .map(({ id }) => id)
          .sort(),
      ).toEqual(['photograph-a', 'photograph-a', 'photograph-b']);
  });
});

describe('the register of axes', () => {
  const names = { machine: 'Marrow Bay line 2 (invented)', axis: 'Lift' };
  const noted = (drive: string, now: string) => withValues(newAxis(names, '2026-03-03T06:00:00Z'), { drive }, now);
  const drives = ({ register }: Tablet) =>
    [...register.values()].map(({ fields }) => (fields.drive ?? []).map(({ value }) => value).sort());

  test('each tablet has what was noted on either, one file an axis, and then nothing more is written', async () => {
    const { a, b, folder, both } = shop();
    const [first, second] = [noted('0417', '2026-03-03T06:10:00Z'), noted('0418', '2026-03-03T06:20:00Z')];
    a.register.set(first.id, first);
    b.register.set(second.id, second);
    await both();
    await both();
    expect([drives(a), drives(b)]).toEqual([[['0417', '0418']], [['0417', '0418']]]);
    expect([...folder.texts.keys()]).toEqual([`axis-${first.id}.json`]);
    const { writes } = folder;
    await both();
    expect(folder.writes).toBe(writes);
  });

  test('a half-written file of an axis is left as it is', async () => {
    const { a, b, folder, both } = shop();
    const axis = noted('0417', '2026-03-03T06:10:00Z');
    a.register.set(axis.id, axis);
    folder.texts.set(`axis-${axis.id}.json`, '{"format":"overcurrent-fieldbook-shop-rec');
    const { first } = await both();
    expect(first.problems).toHaveLength(1);
    expect(folder.texts.get(`axis-${axis.id}.json`)).toBe('{"format":"overcurrent-fieldbook-shop-rec');
    expect(drives(b)).toEqual([['0417']]);
  });

  test('goes into the file with everything, and reads back the same', () => {
    const axis = noted('0417', '2026-03-03T06:10:00Z');
    expect(readShopText(writeShop([], [axis], '2026-03-03T08:00:00Z'))).toEqual({
      ok: true,
      value: { states: [], axes: [axis], problems: [] },
    });
  });
});

describe('a deleted visit', () => {
  async function deleted() {
    const parts = shop();
    parts.a.begin('marrow-bay-1', 'one');
    await parts.both();
    parts.a.visits.delete('marrow-bay-1');
    return parts;
  }
  test('stays deleted on every tablet', async () => {
    const { a, b, both } = await deleted();
    const { second } = await both();
    expect(second.removed.map(({ notes }) => notes)).toEqual(['one']);
    await both();
    expect([a.visits.size, b.visits.size]).toEqual([0, 0]);
  });
  test('that was changed on the other tablet meanwhile is kept, and it is said', async () => {
    const { a, b, both } = await deleted();
    b.write('marrow-bay-1', 'more');
    const { second } = await both();
    expect(second.keptAfterDeletion).toEqual(['marrow-bay-1']);
    await both();
    expect([a.notes(), b.notes()]).toEqual([['one more'], ['one more']]);
  });
  test('that is put back comes back on both', async () => {
    const { a, b, both } = await deleted();
    const before = b.visits.get('marrow-bay-1');
    await both();
    if (before) a.put(before);
    await both();
    expect(b.notes()).toEqual(['one']);
  });
});

describe('files that can’t be read', () => {
  test.each([
    ['half-written', (text: string) => text.slice(0, 200), 'damaged or was cut off'],
    ['empty', () => '', 'damaged or was cut off'],
    ['foreign', () => '{"shopping":["lamp"]}', 'not a visit of this handbook'],
    ['of a newer edition', (text: string) => text.replace('"version": 1', '"version": 9'), 'newer edition'],
    ['with a visit that does not fit', (text: string) => text.replace('"machine": "', '"machines": "'), 'does not fit'],
  ])('%s: said, left as it is, and nothing is lost', async (_kind, spoil, message) => {
    const { a, folder, both } = shop();
    a.begin('marrow-bay-1', 'one');
    await both();
    const name = 'visit-marrow-bay-1.json';
    const spoilt = spoil(folder.texts.get(name) ?? '');
    folder.texts.set(name, spoilt);
    a.write('marrow-bay-1', 'two');
    const { first, second } = await both();
    expect(first.problems.map(({ name: file, problem }) => `${file}: ${problem.message}`).join()).toContain(message);
    expect(folder.texts.get(name)).toBe(spoilt);
    expect(second.stored.map(({ notes }) => notes)).toEqual(['one two']);
  });

  test('a visit here that this edition can’t read is not touched', async () => {
    const { a, b, both } = shop();
    a.begin('marrow-bay-1', 'one');
    await both();
    b.unreadable.add('marrow-bay-1');
    b.visits.delete('marrow-bay-1');
    a.write('marrow-bay-1', 'two');
    const { second } = await both();
    expect([second.stored, second.written, second.removed]).toEqual([[], 0, []]);
  });
});

test('a visit that changes while the exchange runs is left alone and comes the next time', async () => {
  const { a, b, both } = shop();
  a.begin('marrow-bay-1', 'one');
  await both();
  a.write('marrow-bay-1', 'by-a');
  b.meanwhile = () => b.write('marrow-bay-1', 'by-b');
  const { second } = await both();
  expect(second.busy).toBe(1);
  expect(b.notes()).toEqual(['one by-b']);
  b.meanwhile = () => undefined;
  await both();
  await both();
  expect(a.notes().sort()).toEqual(['one by-a', 'one by-b']);
});

test('if a version can’t be stored beside, the visit is not replaced', async () => {
  const { a, b, both } = shop();
  a.begin('marrow-bay-1', 'one');
  await both();
  a.write('marrow-bay-1', 'by-a');
  b.write('marrow-bay-1', 'by-b');
  b.store = async () => false;
  await both();
  expect(b.notes()).toEqual(['one by-b']);
});

test('everything of a device in one file: the other device merges it', async () => {
  const { a, b } = shop();
  a.begin('marrow-bay-1', 'one');
  a.begin('marrow-bay-2', 'two');
  await syncFolder(a, new PlainFolder(), format);
  a.visits.delete('marrow-bay-2');
  const { states } = exchange(await a.read(), []);
  const folder = new PlainFolder();
  folder.texts.set('fieldbook-shop.json', writeShop([...states.values()], [], '2026-03-03T08:00:00Z'));
  await syncFolder(b, folder, format);
  expect(b.notes()).toEqual(['one']);
});

test('one record of a shop file that does not fit costs no other', () => {
  const { a } = shop();
  a.begin('marrow-bay-1', 'one');
  a.begin('marrow-bay-2', 'two');
  const states = [...a.visits.values()].map((visit) => ({ id: visit.id, versions: {}, visit }));
  const text = writeShop(states, [], '2026-03-03T08:00:00Z').replace('"machine": "', '"machines": "');
  const read = readShopText(text);
  expect(read.ok && read.value.states.map(({ id }) => id)).toEqual(['marrow-bay-2']);
  expect(read.ok && read.value.problems.map(({ id }) => id)).toEqual(['marrow-bay-1']);
});

test('a visit that was exported by itself is taken once: known content changes nothing', async () => {
  const { a, b, folder, both } = shop();
  a.begin('marrow-bay-1', 'one');
  const visit = a.visits.get('marrow-bay-1');
  if (visit) folder.texts.set('from mail.json', exportVisit(visit).text);
  await both();
  await both();
  b.write('marrow-bay-1', 'two');
  const { second } = await both();
  await both();
  expect(second.apart).toEqual([]);
  expect([a.notes(), b.notes()]).toEqual([['one two'], ['one two']]);
});
