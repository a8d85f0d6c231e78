import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { root } from '../tools/paths.ts';

/** Files that are changed one place at a time, and the only tests that are run against each change. */
export interface Target {
  mutate: string[];
  tests: string[];
  /** Only one change of so many is tried, the same ones each time, unless files are named. */
  oneOf?: number;
}

const withRule = readdirSync(join(root, 'src/calculators')).filter((name) =>
  existsSync(join(root, 'src/calculators', name, 'rule')),
);

/**
 * A rule has to be guarded by the tables of its own folder. Properties and walks are left out: they take seconds a
 * change, and one that fails says that something is wrong, not what.
 */
const calculators = withRule.map((name): [string, Target] => [
  name,
  {
    mutate: [`src/calculators/${name}/rule/**/*.ts`],
    tests: [`tests/unit/calculators/${name}/rule/**/!(*.property).test.ts`],
  },
]);

const ofGuide = ['tests/unit/visit/guide/!(state-walk|*.property).test.ts'];

export const targets: ReadonlyMap<string, Target> = new Map([
  ...calculators,
  ['assessment', { mutate: ['src/kernel/assessment/**/*.ts'], tests: ['tests/unit/kernel/assessment/**/*.test.ts'] }],
  ['guide', { mutate: ['src/visit/guide/**/*.ts'], tests: ofGuide, oneOf: 4 }],
  ['steps', { mutate: ['src/visit/steps/*/rule.ts'], tests: [...ofGuide, 'tests/unit/visit/steps/*.test.ts'] }],
]);
