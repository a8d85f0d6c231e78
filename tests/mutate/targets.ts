import { existsSync, globSync, readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import { root } from '../tools/paths.ts';

/** Files that are changed one place at a time, and the only tests that are run against each change. */
export interface Target {
  /** From the root of the repository. */
  mutate: string[];
  /** Patterns. */
  tests: string[];
}

const files = (pattern: string) => globSync(pattern, { cwd: root }).sort();

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
    mutate: files(`src/calculators/${name}/rule/**/*.ts`),
    tests: [`tests/unit/calculators/${name}/rule/**/!(*.property).test.ts`],
  },
]);

/** The walk through the steps is guarded by whole visits, everything else of the guide by tables of its own. */
const walk = ['way', 'path', 'next-step', 'baseline'];
const isOfWalk = (file: string) => walk.includes(basename(file, '.ts'));
const guide = files('src/visit/guide/*.ts');
const tables = [
  ...['against-power', 'ahead', 'before-any-answer', 'beside-a-verdict', 'braking-and-idle-cores', 'causes'],
  ...['charged-since', 'decide', 'evidence', 'feedback-proofs', 'good-parts', 'open-items', 'proofs-and-suspicions'],
  ...['routes', 'tries', 'what-a-decision-lists'],
];
const ofGuide = 'tests/unit/visit/guide';

export const targets: ReadonlyMap<string, Target> = new Map([
  ...calculators,
  [
    'assessment',
    { mutate: files('src/kernel/assessment/**/*.ts'), tests: ['tests/unit/kernel/assessment/**/*.test.ts'] },
  ],
  [
    'guide',
    { mutate: guide.filter((file) => !isOfWalk(file)), tests: tables.map((name) => `${ofGuide}/${name}.test.ts`) },
  ],
  ['guide-walk', { mutate: guide.filter(isOfWalk), tests: [`${ofGuide}/!(state-walk|visits|*.property).test.ts`] }],
  ['steps', { mutate: files('src/visit/steps/*/rule.ts'), tests: ['tests/unit/visit/steps/*.test.ts'] }],
]);
