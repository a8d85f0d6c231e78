import { relative } from 'node:path';
import { root } from './paths.ts';

/** The used parts of the test runner's report. */
export interface Report {
  numPassedTests: number;
  numFailedTests: number;
  numTotalTests: number;
  testResults: {
    name: string;
    assertionResults: {
      status: string;
      fullName: string;
      /** Titles of its groups, the outermost first. */
      ancestorTitles: string[];
      failureMessages?: string[] | null;
    }[];
  }[];
}

export interface Counts {
  passed: number;
  failed: number;
  /** A line for each test that failed, even if only at its first attempt, for the end of the output. */
  failures?: string[];
}

/** A run that aborted outside its tests counts as one failure, so that it can't pass unnoticed. */
export function countsOf(report: Report | undefined, exitCode: number): Counts {
  if (report === undefined) return { passed: 0, failed: 1 };
  const broken = report.numTotalTests === 0 || (exitCode !== 0 && report.numFailedTests === 0);
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + (broken ? 1 : 0),
    failures: failuresOf(report),
  };
}

/** A test that passed at its second attempt reports the failure of its first one. */
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
