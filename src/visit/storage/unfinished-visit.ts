import { isObject } from '../../kernel/link/parse-json.ts';
import { shownTime } from '../../kernel/time/iso-time.ts';
import { type Database, database, type VisitRow } from './database.ts';

/** A visit that has no decision yet, and is no complete baseline, as far as a link to it needs. */
export interface UnfinishedVisit {
  id: string;
  /** Machine and axis, or that the visit has no name. */
  title: string;
  /** Its last change, such as `2026-03-02, 05:58`; empty if the record does not say. */
  changed: string;
}

/**
 * The visit without a decision that was saved last; undefined if there is none or the storage refuses. It reads a few
 * fields by itself: the record's schema and the steps would be a hundred kilobytes more for the front page.
 */
export async function unfinishedVisit(db: Database = database()): Promise<UnfinishedVisit | undefined> {
  try {
    return await db.run('readonly', async (visits) => {
      let cursor = await visits.index('order').openCursor(null, 'prev');
      while (cursor) {
        const found = unfinished(cursor.value);
        if (found !== undefined) return found;
        cursor = await cursor.continue();
      }
      return undefined;
    });
  } catch {
    return undefined;
  } finally {
    db.close();
  }
}

function unfinished({ id, record }: VisitRow): UnfinishedVisit | undefined {
  if (!isObject(record)) return undefined;
  const fields = record;
  if (fields.decision !== undefined || !isObject(fields.steps)) return undefined;
  // A baseline comes to no decision. The axis is connected again only at its end.
  if (fields.purpose === 'baseline' && isDone(fields.steps.reconnect)) return undefined;
  const named = [fields.machine, fields.axis].map(textOf).filter(Boolean);
  const changedAt = textOf(fields.changedAt);
  return {
    id,
    title: named.join(', ') || 'Visit without a name',
    changed: changedAt === '' ? '' : shownTime(changedAt),
  };
}

const isDone = (step: unknown) => isObject(step) && isObject(step.form) && step.form.done === 'yes';

const textOf = (value: unknown) => (typeof value === 'string' ? value.trim() : '');
