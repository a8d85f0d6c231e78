import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { reportEngines } from './engine-report.ts';
import { reportFolder } from './paths.ts';
import { type Counts, countsOf, type Report } from './report.ts';
import { run, runBeside } from './run.ts';

interface StepResult extends Counts {
  name: string;
}

interface Step {
  name: string;
  script: string;
}

/**
 * Each counts as one. Those of a row come one after the other, beside the other row: none uses more than one processor
 * for long, and those with Astro write the same generated types.
 */
const checks: Step[][] = [
  [
    { name: 'types', script: 'check:types' },
    { name: 'build', script: 'build' },
  ],
  [
    { name: 'style', script: 'check:style' },
    { name: 'audit', script: 'audit' },
  ],
];

/** One after the other, each on all processors; what counts is the tests of its report. */
const tests: Step[] = [
  { name: 'unit', script: 'test:unit' },
  { name: 'reference', script: 'test:reference' },
  { name: 'content', script: 'test:content' },
  { name: 'browser', script: 'test:browser' },
];

async function inTurn(steps: Step[], runOne: (step: Step) => Promise<StepResult>): Promise<StepResult[]> {
  const results: StepResult[] = [];
  for (const step of steps) results.push(await runOne(step));
  return results;
}

async function runCheck({ name, script }: Step): Promise<StepResult> {
  const { code, printed } = await runBeside('npm', ['run', '--silent', script]);
  console.log(`\n--- ${name} (npm run ${script})\n${printed}`);
  return toldOf({ name, passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1 });
}

async function runTests({ name, script }: Step): Promise<StepResult> {
  console.log(`\n--- ${name} (npm run ${script})`);
  const file = reportFile(name);
  rmSync(file, { force: true });
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
  const code = await run('npm', ['run', '--silent', script, '--', ...reporters]);
  return toldOf({ name, ...countsOf(reportOf(name), code) });
}

function toldOf(result: StepResult): StepResult {
  console.log(`--- ${result.name}: ${result.passed} passed, ${result.failed} failed`);
  return result;
}

const reportFile = (name: string) => join(reportFolder, `${name}.json`);

function reportOf(name: string): Report | undefined {
  return existsSync(reportFile(name)) ? JSON.parse(readFileSync(reportFile(name), 'utf8')) : undefined;
}

mkdirSync(reportFolder, { recursive: true });
const checked = await Promise.all(checks.map((row) => inTurn(row, runCheck)));
const results = [...checked.flat(), ...(await inTurn(tests, runTests))];
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
