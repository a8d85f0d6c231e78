import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';
import { hasEnded } from '../browser/support/ended.ts';
import { patience } from './browser.ts';
import { root } from './paths.ts';

/** Tests of pure code, which leave nothing behind: the files of a worker share what they import. */
const project = (name: string) => ({
  extends: true as const,
  test: { name, include: [`tests/${name}/**/*.test.{ts,tsx}`], setupFiles: 'tests/support/seed.ts', isolate: false },
});

export default defineConfig({
  root,
  test: {
    environment: 'node',
    // A few thousand cases of a property take longer than the default five seconds on a small machine.
    testTimeout: 120_000,
    // Vitest keeps one processor for itself, which on a machine of two is half of it.
    maxWorkers: availableParallelism(),
    projects: [
      project('unit'),
      project('reference'),
      project('content'),
      {
        extends: true,
        test: {
          name: 'browser',
          // A test waits for a quarter of its time: one more worker uses the processors that are idle meanwhile.
          maxWorkers: availableParallelism() + 1,
          sequence: { groupOrder: 1 },
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: 'tests/browser/support/site.ts',
          // Longer than what a test waits for, so that a test that fails says why.
          testTimeout: 5 * patience,
          hookTimeout: 5 * patience,
          expect: { poll: { timeout: patience } },
          // A browser sometimes crashes, and on the loaded machine of CI one is sometimes late, which is no fault of the
          // site. `npm test` names each test that needed a second attempt.
          retry: process.env.CI ? 1 : { count: 1, condition: hasEnded },
        },
      },
    ],
  },
});
