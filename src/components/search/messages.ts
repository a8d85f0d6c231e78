import type { Answer } from './answer.ts';

/**
 * What a page asks its search worker. `turn` counts up from 1, so that an answer to older words can be told and dropped.
 * `index` asks for the whole index ahead of any word: it lies on the device.
 */
export type FromPage = { turn: number; query: string } | { turn: number; titlesShown: true } | { index: true };

/** What the worker says: the titles of the answers at once, then the answers with their headings; or the terms nearest to the query. */
export type Reply = { turn: number } & (
  | { answers: Answer[]; readAs: string | null; complete: boolean }
  | { nearest: string[] }
  | { failed: true }
);
