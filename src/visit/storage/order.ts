import type { Visits } from './database.ts';

/** An empty storage begins anywhere below this, so that it gives no number that it gave before it was emptied. */
const beginnings = 2 ** 40;

/** Higher than the number of every save of any visit since the storage was last empty. */
export async function nextOrder(visits: Visits<'readwrite'>): Promise<number> {
  const last = await visits.index('order').openKeyCursor(null, 'prev');
  return last === null ? 1 + Math.floor(Math.random() * beginnings) : Number(last.key) + 1;
}

/**
 * Deletes a visit. If it was the last saved one the visit before takes over its number: a number that is given twice would
 * hide a save from the register of axes, which reads only what was saved after the highest number that it knows.
 */
export async function deleteKeepingOrder(visits: Visits<'readwrite'>, id: string): Promise<void> {
  const last = await visits.index('order').openKeyCursor(null, 'prev');
  const order = Number(last?.key);
  // The same object, moved on.
  const before = last?.primaryKey === id ? await last.continue() : null;
  const row = before === null ? undefined : await visits.get(before.primaryKey);
  await visits.delete(id);
  if (row !== undefined) await visits.put({ ...row, order });
}
