/** A browser, or the process of one of its pages, that has ended by itself. Its test is tried once more; no other is. */
export class BrowserEnded extends Error {
  constructor(name: string) {
    super(`${name} has ended by itself`);
  }
}

/** Vitest compares it with the last message of a failed test. */
export const hasEnded = / has ended by itself$/;
