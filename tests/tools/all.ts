import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { reportFolder } from './paths.ts';
import { run } from './run.ts';

interface StepResult {
  name: string;
  passed: number;
  failed: number;
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
  const { numPassedTests, numFailedTests, numTotalTests } = JSON.parse(readFileSync(report, 'utf8'));
  const broken = numTotalTests === 0 || (code !== 0 && numFailedTests === 0);
  return { passed: numPassedTests, failed: numFailedTests + (broken ? 1 : 0) };
}

mkdirSync(reportFolder, { recursive: true });
const results: StepResult[] = [];
for (const step of steps) {
  const result = await runStep(step);
  results.push(result);
  console.log(`--- ${step.name}: ${result.passed} passed, ${result.failed} failed`);
}

console.log('\nAll steps:');
for (const { name, passed, failed } of results) {
  console.log(`  ${failed === 0 ? 'ok    ' : 'FAILED'} ${name}: ${passed} passed, ${failed} failed`);
}
const sum = (of: 'passed' | 'failed') => results.reduce((total, result) => total + result[of], 0);
console.log(`${sum('passed')} passed, ${sum('failed')} failed`);
process.exitCode = sum('failed') === 0 ? 0 : 1;
