import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { reportEngines } from './engine-report.ts';
import { reportFolder } from './paths.ts';
import { type Counts, countsOf, type Report } from './report.ts';
import { run } from './run.ts';

interface StepResult extends Counts {
  name: string;
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
  const file = reportFile(name);
  rmSync(file, { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
  const code = await run('npm', ['run', '--silent', script, '--', ...reporters]);
  return { name, ...countsOf(reportOf(name), code) };
}

const reportFile = (name: string) => join(reportFolder, `${name}.json`);

function reportOf(name: string): Report | undefined {
  return existsSync(reportFile(name)) ? JSON.parse(readFileSync(reportFile(name), 'utf8')) : undefined;
}

mkdirSync(reportFolder, { recursive: true });
const results: StepResult[] = [];
for (const step of steps) {
  const result = await runStep(step);
  results.push(result);
  console.log(`--- ${step.name}: ${result.passed} passed, ${result.failed} failed`);
}
const told = await reportEngines(reportOf('browser'));
results.push({ name: 'engines', passed: 0, failed: told.wanting.length, failures: told.wanting });

console.log('\nAll steps:');
for (const { name, passed, failed, failures = [] } of results) {
  console.log(`  ${failed === 0 ? 'ok    ' : 'FAILED'} ${name}: ${passed} passed, ${failed} failed`);
  for (const failure of failures) console.log(`         ${failure}`);
}
console.log(told.line);
const sum = (of: 'passed' | 'failed') => results.reduce((total, result) => total + result[of], 0);
console.log(`${sum('passed')} passed, ${sum('failed')} failed`);
process.exitCode = sum('failed') === 0 ? 0 : 1;
