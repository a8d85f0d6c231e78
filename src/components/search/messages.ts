import type { Answer } from './answer.ts';
import type { KnownTerm } from './nearest.ts';

/** What a page asks its search worker; the first message of all makes it fetch engine and index. */
export interface Question {
  siteRoot: string;
  /** Counts up, so that an answer to older words can be told and dropped. */
  turn: number;
  /** Left out to fetch only. */
  query?: string;
}

/** What the worker says: the best answer as soon as its text is there, then all; or the terms nearest to the query. */
export type Reply = { turn: number } & (
  | { answers: Answer[]; readAs: string | null; complete: boolean }
  | { nearest: KnownTerm[] }
  | { failed: true }
);
