import { picturesOf } from './content.ts';
import type { Shared } from './merge-visit.ts';

/** What files hold that was deleted or taken off after they were written: reading them does not bring it back. */
export interface TakenAway {
  visits: number;
  /** How many photographs of each visit, by its id. */
  photographs: [id: string, count: number][];
}

/** `states`: of every visit after the exchange. A photograph of a version beside is not away. */
export function takenAway(theirs: readonly Shared[], states: ReadonlyMap<string, Shared>): TakenAway {
  const deleted = new Set<string>();
  const off = new Map<string, Set<string>>();
  const there = new Map<string, Set<string>>();
  for (const { visit } of states.values()) {
    if (visit === undefined) continue;
    const of = visit.secondVersionOf ?? visit.id;
    const ids = picturesOf(visit).map(({ id }) => id);
    for (const id of new Set([of, visit.id])) there.set(id, new Set([...(there.get(id) ?? []), ...ids]));
  }
  for (const { id, visit } of theirs) {
    const after = states.get(id);
    if (visit === undefined || after === undefined) continue;
    if (after.visit === undefined) {
      deleted.add(id);
      continue;
    }
    const gone = picturesOf(visit).filter((picture) => !there.get(id)?.has(picture.id));
    if (gone.length > 0) off.set(id, new Set([...(off.get(id) ?? []), ...gone.map((picture) => picture.id)]));
  }
  return { visits: deleted.size, photographs: [...off].map(([id, ids]) => [id, ids.size]) };
}
