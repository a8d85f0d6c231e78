import { describe, expect, test } from 'vitest';
import { enginesThatRan, reportEngines } from '../../tools/engine-report.ts';
import type { Report } from '../../tools/report.ts';

const report = (tests: [group: string, status: string][]): Report => ({
  numPassedTests: 1,
  numFailedTests: 0,
  numTotalTests: tests.length,
  testResults: [
    {
      name: 'core.test.ts',
      assertionResults: tests.map(([group, status]) => ({ status, fullName: group, ancestorTitles: [group] })),
    },
  ],
});

describe('the engines that the tests ran in', () => {
  test('are those with a test that passed or failed, not those whose tests were all left out', () => {
    const some = report([
      ['Chromium', 'passed'],
      ['Firefox', 'failed'],
      ['WebKitGTK', 'skipped'],
    ]);
    expect(enginesThatRan(some)).toEqual(['Chromium', 'Firefox']);
    expect(enginesThatRan(report([['WebKitGTK, not found: no Xvfb', 'skipped']]))).toEqual([]);
    expect(enginesThatRan(undefined)).toEqual([]);
  });

  test('are missed only if they are required', async () => {
    const none = report([]);
    expect((await reportEngines(none, '')).wanting).toEqual([]);
    expect((await reportEngines(none, 'Chromium  WebKitGTK')).wanting).toEqual([
      'no test ran in Chromium, which was installed for the tests',
      'no test ran in WebKitGTK, which was installed for the tests',
    ]);
    expect((await reportEngines(report([['Firefox', 'failed']]), 'Firefox')).wanting).toEqual([]);
  });

  test('are listed on one line with those that are missing', async () => {
    expect((await reportEngines(report([]))).line).toMatch(/^Browsers: –; .*not found: /);
  });
});
