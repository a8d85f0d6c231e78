import { defineConfig } from 'vitest/config';
import { root } from '../tools/paths.ts';

/** The tests that guard the rules and the guide, without browsers and content, for `npm run mutate`. */
export default defineConfig({
  root,
  test: {
    environment: 'node',
    testTimeout: 120_000,
    include: ['tests/unit/{calculators,kernel,visit/guide}/**/*.test.{ts,tsx}', 'tests/unit/visit/*.test.{ts,tsx}'],
  },
});
