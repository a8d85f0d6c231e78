import type { LimitId } from '../../calc/index.ts';

/** What is said of a limit beside its figure. */
export interface LimitWords {
  label: string;
  status: string;
  source: string | null;
  clause?: string;
  recalled: boolean;
}

// In a browser, src/calc has the figures alone (src/build/limit-parts.ts): the words come only when a limit is named.
const topics = import.meta.glob<string>('../../../content/limits/*.json', {
  eager: true,
  query: '?raw',
  import: 'default',
});

const all: Record<string, LimitWords> = Object.assign(
  {},
  ...Object.values(topics).map((topic) => JSON.parse(topic).limits),
);

export function limitWords(id: LimitId): LimitWords {
  const words = all[id];
  if (words === undefined) throw new Error(`no words for the limit ${id}`);
  return words;
}
