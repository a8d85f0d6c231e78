/** What a page asks the worker. */
export type FromPage = 'mend' | 'take-over';

/** What the worker answers to `take-over`: `held` if it would interrupt an open visit or practice. */
export type FromWorker = 'held' | 'taking-over';

/** Pages, below the base path, that a change of version never interrupts. */
export const heldPaths = ['visit/', 'practice/'] as const;
