import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';
import { root } from './paths.ts';

const project = (name: string) => ({
  extends: true as const,
  test: { name, include: [`tests/${name}/**/*.test.{ts,tsx}`] },
});

export default defineConfig({
  root,
  test: {
    environment: 'node',
    // A few thousand cases of a property take longer than the default five seconds on a small machine.
    testTimeout: 120_000,
    // A loaded machine takes longer than the usual second to show what a test waits for.
    expect: { poll: { timeout: 15_000 } },
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
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: 'tests/browser/support/site.ts',
          hookTimeout: 120_000,
          // A browser on a loaded machine is sometimes late. `npm test` names each test that needed a second attempt.
          retry: process.env.CI ? 1 : 0,
        },
      },
    ],
  },
});
