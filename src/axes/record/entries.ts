import { limitValue } from '../../kernel/limits.ts';

interface Typed {
  at: string;
  count: number;
}

/**
 * The order of entries: by count, then by time, then by content. The count goes first: who typed with the other entry in
 * sight was later, whatever the clocks of two devices say. The last step makes the order the same on every device.
 */
export function newestFirst<E extends Typed>(entries: readonly E[]): E[] {
  return [...entries].sort(
    (a, b) => b.count - a.count || Date.parse(b.at) - Date.parse(a.at) || (contentOf(a) < contentOf(b) ? 1 : -1),
  );
}

export function newest<E extends Typed>(entries: readonly E[]): E | undefined {
  return newestFirst(entries)[0];
}

/** Both lists as one, the newest first, without doubles; beyond the longest list the oldest go. */
export function united<E extends Typed>(a: readonly E[], b: readonly E[]): E[] {
  const byContent = new Map([...a, ...b].map((entry) => [contentOf(entry), entry]));
  return newestFirst([...byContent.values()]).slice(0, limitValue('record-items'));
}

/** The list with one more entry, typed at `at` with all others in sight. */
export function withEntry<E extends Typed>(entries: readonly E[], value: Omit<E, keyof Typed>, at: string): E[] {
  const count = Math.max(0, ...entries.map((entry) => entry.count)) + 1;
  return united(entries, [{ ...value, at, count } as E]);
}

/** The entries that were typed on different devices without sight of each other; more than one: somebody should look. */
export function rivals<E extends Typed>(entries: readonly E[]): E[] {
  const ordered = newestFirst(entries);
  return ordered.filter(({ count }) => count === ordered[0]?.count);
}

/** Text that does not depend on the order of the keys. */
function contentOf(entry: object): string {
  return JSON.stringify(Object.entries(entry).sort(([a], [b]) => (a < b ? -1 : 1)));
}
