import { describe, expect, test } from 'vitest';
import { writeShop } from '../../../src/shop/file/shop-file.ts';
import { picturesOf } from '../../../src/shop/merge/content.ts';
import { exchange } from '../../../src/shop/merge/exchange.ts';
import { syncFolder, withStoredPictures } from '../../../src/shop/merge/sync.ts';
import { takenAwayNotices } from '../../../src/shop/words.ts';
import { format, PlainFolder, shop } from './support/plain-folder.ts';
import { Tablet } from './support/tablet.ts';

// Project judgement: what was taken away after a file was written is newer than the file.

describe('an old file of the whole shop', () => {
  const exported = async (tablet: Tablet) => {
    const { states } = exchange(await tablet.read(), []);
    const whole = await Promise.all([...states.values()].map((state) => withStoredPictures(tablet, state)));
    const file = new PlainFolder();
    file.texts.set('fieldbook-shop.json', writeShop(whole, [], '2026-03-03T08:00:00Z'));
    return file;
  };
  const ids = (tablet: Tablet) =>
    [...tablet.visits.values()].flatMap((visit) => picturesOf(visit).map(({ id }) => id)).sort();

  async function withOldFile() {
    const { a, b, both } = shop();
    a.begin('marrow-bay-1', 'one');
    a.attach('marrow-bay-1', 'photograph-a');
    a.attach('marrow-bay-1', 'photograph-b');
    a.begin('marrow-bay-2', 'two');
    await both();
    return { a, b, both, file: await exported(a) };
  }

  test('does not bring back a photograph that was taken off since, and it is said', async () => {
    const { a, file } = await withOldFile();
    a.detach('marrow-bay-1', 'photograph-a');
    const report = await syncFolder(a, file, format);
    expect(ids(a)).toEqual(['photograph-b']);
    expect(report.takenAway).toEqual({ visits: 0, photographs: [['marrow-bay-1', 1]] });
    expect(takenAwayNotices(report, a.visits)).toEqual([
      'Marrow Bay line 2 (invented): 1 photograph of the files was taken off after they were written. It stays off.',
    ]);
  });

  test('neither on the other tablet, which heard of it over the folder', async () => {
    const { a, b, both, file } = await withOldFile();
    a.detach('marrow-bay-1', 'photograph-a');
    await both();
    const report = await syncFolder(b, file, format);
    expect(ids(b)).toEqual(['photograph-b']);
    expect(report.takenAway.photographs).toEqual([['marrow-bay-1', 1]]);
  });

  test('does not bring back a visit that was deleted since, and it is said', async () => {
    const { a, file } = await withOldFile();
    a.visits.delete('marrow-bay-2');
    const report = await syncFolder(a, file, format);
    expect([...a.visits.keys()]).toEqual(['marrow-bay-1']);
    expect(takenAwayNotices(report, a.visits)).toEqual([
      '1 visit of the files was deleted after they were written, and stays deleted.',
    ]);
  });

  test('brings what this tablet never had, and then nothing is away', async () => {
    const { file } = await withOldFile();
    const c = new Tablet('tablet-c');
    const report = await syncFolder(c, file, format);
    expect(ids(c)).toEqual(['photograph-a', 'photograph-b']);
    expect(takenAwayNotices(report, c.visits)).toEqual([]);
  });

  test('nothing is away that was put back, or that stands in the version beside', async () => {
    const { a, b, both, file } = await withOldFile();
    a.detach('marrow-bay-1', 'photograph-a');
    await both();
    a.attach('marrow-bay-1', 'photograph-a');
    expect((await syncFolder(a, file, format)).takenAway.photographs).toEqual([]);
    await both();
    a.write('marrow-bay-1', 'by-a');
    b.write('marrow-bay-1', 'by-b');
    b.attach('marrow-bay-1', 'photograph-c');
    const apart = await syncFolder(a, await exported(b), format);
    expect(apart.apart).toHaveLength(1);
    expect(apart.takenAway).toEqual({ visits: 0, photographs: [] });
  });
});
