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

/** Files of the guide with the tables of just these; a change is tried the faster, the fewer files are loaded for it. */
const ofGuide = (names: string[], tables: string[]): Target => ({
  mutate: names.map((name) => `src/visit/guide/${name}.ts`),
  tests: tables.map((name) => `tests/unit/visit/guide/${name}.test.ts`),
});
const evidence = ['braking', 'causes', 'dead-proofs', 'evidence', 'good-parts', 'idle-cores', 'open-items'];
const decision = ['convictions', 'decision', 'power', 'proofs', 'routes', 'suspicions', 'tries'];
const walk = files('src/visit/guide/*.ts')
  .map((file) => basename(file, '.ts'))
  .filter((name) => ![...evidence, ...decision].includes(name));

export const targets: ReadonlyMap<string, Target> = new Map([
  ...calculators,
  [
    'assessment',
    { mutate: files('src/kernel/assessment/**/*.ts'), tests: ['tests/unit/kernel/assessment/**/*.test.ts'] },
  ],
  [
    'guide-evidence',
    ofGuide(evidence, [
      ...['braking-and-idle-cores', 'causes', 'charged-since', 'evidence', 'explained', 'good-parts', 'open-items'],
      ...['change', 'recording', 'input-circuit'],
    ]),
  ],
  [
    'guide-decision',
    ofGuide(decision, [
      ...['against-power', 'before-any-answer', 'beside-a-verdict', 'decide', 'feedback-proofs', 'measuring-order'],
      ...['proofs-and-suspicions', 'routes', 'tries', 'what-a-decision-lists', 'change', 'recording', 'input-circuit'],
    ]),
  ],
  // The walk is guarded by whole visits.
  ['guide-walk', ofGuide(walk, ['!(state-walk|visits|*.property)'])],
  ['steps', { mutate: files('src/visit/steps/*/rule.ts'), tests: ['tests/unit/visit/steps/*.test.ts'] }],
]);
