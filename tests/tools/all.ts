import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join, relative } from 'node:path';
import { reportFolder, root } from './paths.ts';
import { run } from './run.ts';

interface StepResult {
  name: string;
  passed: number;
  failed: number;
  /** A line for each test that failed, also at a first attempt, for the end of the output: that is what is kept of it. */
  failures?: string[];
}

/** What is used of the test runner's report. */
interface Report {
  numPassedTests: number;
  numFailedTests: number;
  numTotalTests: number;
  testResults: {
    name: string;
    assertionResults: { status: string; fullName: string; failureMessages?: string[] | null }[];
  }[];
}

/** Other steps count as one; a vitest step counts the tests of its report. */
const steps = [
  { name: 'types', script: 'check:types', counted: false },
  { name: 'style', script: 'check:style', counted: false },
  { name: 'audit', script: 'audit', counted: false },
  { name: 'build', script: 'build', counted: false },
  { name: 'unit', script: 'test:unit', counted: true },
  { name: 'reference', script: 'test:reference', counted: true },
  { name: 'content', script: 'test:content', counted: true },
  { name: 'browser', script: 'test:browser', counted: true },
];

type Step = (typeof steps)[number];

async function runStep({ name, script, counted }: Step): Promise<StepResult> {
  console.log(`\n--- ${name} (npm run ${script})`);
  if (!counted) {
    const passed = (await run('npm', ['run', '--silent', script])) === 0;
    return { name, passed: passed ? 1 : 0, failed: passed ? 0 : 1 };
  }
  const report = join(reportFolder, `${name}.json`);
  rmSync(report, { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const code = await run('npm', ['run', '--silent', script, '--', ...reporters], {
    FIELDBOOK_RUNS: process.env.FIELDBOOK_RUNS ?? '10000',
  });
  return { name, ...countsOf(report, code) };
}

/** A run that broke off before or beside its tests counts as one failure, so that it can't pass unseen. */
function countsOf(report: string, code: number): Omit<StepResult, 'name'> {
  if (!existsSync(report)) return { passed: 0, failed: 1 };
  const told: Report = JSON.parse(readFileSync(report, 'utf8'));
  const broken = told.numTotalTests === 0 || (code !== 0 && told.numFailedTests === 0);
  return { passed: told.numPassedTests, failed: told.numFailedTests + (broken ? 1 : 0), failures: failuresOf(told) };
}

/** A test that passed at a second attempt brings the failure of its first one with it. */
function failuresOf({ testResults }: Report): string[] {
  return testResults.flatMap(({ name: file, assertionResults }) =>
    assertionResults.flatMap(({ status, fullName, failureMessages }) => {
      const [first] = failureMessages ?? [];
      if (first === undefined) return [];
      const why = first.split('\n').slice(0, 3).join(' ').slice(0, 300);
      return `${status === 'failed' ? 'failed' : 'passed at the second attempt'}: ${relative(root, file)}: ${fullName}: ${why}`;
    }),
  );
}

mkdirSync(reportFolder, { recursive: true });
const results: StepResult[] = [];
for (const step of steps) {
  const result = await runStep(step);
  results.push(result);
  console.log(`--- ${step.name}: ${result.passed} passed, ${result.failed} failed`);
}

console.log('\nAll steps:');
for (const { name, passed, failed, failures = [] } of results) {
  console.log(`  ${failed === 0 ? 'ok    ' : 'FAILED'} ${name}: ${passed} passed, ${failed} failed`);
  for (const failure of failures) console.log(`         ${failure}`);
}
const sum = (of: 'passed' | 'failed') => results.reduce((total, result) => total + result[of], 0);
console.log(`${sum('passed')} passed, ${sum('failed')} failed`);
process.exitCode = sum('failed') === 0 ? 0 : 1;
