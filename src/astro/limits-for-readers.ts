import type { Plugin } from 'vite';

/** What only the tables and the search show, which are made at build: `LimitData` of kernel/limits.ts has none of it. */
const forPagesOnly = ['when', 'note', 'otherWords', 'formerIds'];

/** The limits without the sentences that no script of a page uses. */
export const limitsForReaders: Plugin = {
  name: 'limits-for-readers',
  enforce: 'pre',
  applyToEnvironment: ({ name }) => name === 'client',
  transform: {
    filter: { id: /\/content\/limits\/[^/]+\.json$/ },
    handler: (code) => ({ code: withoutSentences(code), map: null }),
  },
};

/** The same file of limits, with figures, labels and sources alone. */
export function withoutSentences(json: string): string {
  const { limits } = JSON.parse(json) as { limits: Record<string, Record<string, unknown>> };
  const short = Object.entries(limits).map(([id, limit]) => [
    id,
    Object.fromEntries(Object.entries(limit).filter(([key]) => !forPagesOnly.includes(key))),
  ]);
  return JSON.stringify({ limits: Object.fromEntries(short) });
}
