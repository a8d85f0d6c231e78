import { readVisit } from '../../visit/record/read-visit.ts';
import type { Database, VisitRow } from '../../visit/storage/database.ts';
import { headOf, readingsOf, type VisitHead } from '../record/visit-digest.ts';
import type { AxisDatabase, HeadRow } from './axis-database.ts';

/** Visits read in one transaction: thousands at once would fill the memory of an old tablet. */
const batch = 200;

/**
 * Brings heads and readings up to the stored visits, reading only what was saved since, and returns the heads. No order is
 * given twice while visits are stored; once all were deleted they begin at another number, and then all are read again.
 */
export async function syncVisits(visits: Database, axes: AxisDatabase): Promise<VisitHead[]> {
  const [{ keys, last }, known] = await Promise.all([
    visits.run('readonly', async (store) => ({
      keys: await store.getAllKeys(),
      last: Number((await store.index('order').openKeyCursor(null, 'prev'))?.key ?? 0),
    })),
    axes.run('readonly', (tx) => tx.objectStore('heads').getAll()),
  ]);
  const ids = new Set(keys);
  const isOfAnEarlierStorage = highest(known) > last;
  const rows = isOfAnEarlierStorage ? [] : known;
  const heads = new Map(rows.filter(({ id }) => ids.has(id)).map((row) => [row.id, row]));
  const gone = known.filter(({ id }) => !ids.has(id)).map(({ id }) => id);
  if (gone.length > 0) await forget(axes, gone);
  // A newer edition of the site may be able to read them now.
  const unread = rows.filter(({ id, head }) => head.id === '' && ids.has(id)).map(({ id }) => id);
  if (unread.length > 0) {
    const again = await visits.run('readonly', (store) => Promise.all(unread.map((id) => store.get(id))));
    const read = again
      .flatMap((row) => (row === undefined ? [] : [digest(row)]))
      .filter(({ row }) => row.head.id !== '');
    if (read.length > 0) await keep(axes, read);
    for (const { row } of read) heads.set(row.id, row);
  }
  for (let since = highest(heads.values()), full = true; full; ) {
    const changed = await savedSince(visits, since);
    const read = changed.map(digest);
    if (changed.length > 0) await keep(axes, read);
    for (const { row } of read) heads.set(row.id, row);
    since = changed[changed.length - 1]?.order ?? since;
    full = changed.length === batch;
  }
  return [...heads.values()].flatMap(({ head }) => (head.id === '' ? [] : [head]));
}

function highest(rows: Iterable<HeadRow>): number {
  let most = 0;
  for (const { order } of rows) most = Math.max(most, order);
  return most;
}

function savedSince(visits: Database, order: number): Promise<VisitRow[]> {
  return visits.run('readonly', (store) => store.index('order').getAll(IDBKeyRange.lowerBound(order, true), batch));
}

type Digest = ReturnType<typeof digest>;

/** A visit that can't be read has a head without an id, so that it is not read at each visit to the list. */
function digest({ id, order, record }: VisitRow) {
  const read = readVisit(record);
  if (read.ok) return { row: { id, order, head: headOf(read.value) }, readings: readingsOf(read.value) };
  const head = { id: '', machine: '', axis: '', site: '', drive: '', motor: '', at: '', baseline: false };
  return { row: { id, order, head }, readings: { id, sets: [] } };
}

function keep(axes: AxisDatabase, read: readonly Digest[]): Promise<void> {
  return axes.run('readwrite', async (tx) => {
    const [heads, readings] = [tx.objectStore('heads'), tx.objectStore('readings')];
    await Promise.all(read.flatMap(({ row, readings: sets }) => [heads.put(row), readings.put(sets)]));
  });
}

function forget(axes: AxisDatabase, ids: readonly string[]): Promise<void> {
  return axes.run('readwrite', async (tx) => {
    const [heads, readings] = [tx.objectStore('heads'), tx.objectStore('readings')];
    await Promise.all(ids.flatMap((id) => [heads.delete(id), readings.delete(id)]));
  });
}
