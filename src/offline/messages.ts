/** What a page asks of the worker. */
export type FromPage = 'mend' | 'take-over';

/** What the worker answers to `take-over`: `held` where an open visit or practice would be interrupted. */
export type FromWorker = 'held' | 'taking-over';

/** Pages, below the base path, that a change of version never interrupts. */
export const heldPaths = ['visit/', 'practice/'] as const;
