import { describe, expect, it } from 'vitest';
import { assessBridge } from '../../../src/calculators/bridge/rule/assess.ts';
import { suspectPositions } from '../../../src/calculators/bridge/rule/suspect-positions.ts';
import { assessInsulation } from '../../../src/calculators/insulation/rule/assess.ts';
import { assessIsolation } from '../../../src/calculators/isolation/rule/assess.ts';
import type { Assessment } from '../../../src/kernel/assessment/assessment.ts';
import {
  bridgeCases,
  bridgeInput,
  insulationCases,
  insulationInput,
  isolationCases,
  isolationInput,
} from '../../support/hand-worked.ts';

interface Expected {
  verdict: string;
  codes?: string[];
  absent?: string[];
  steps?: string[];
  absentSteps?: string[];
}

/** The verdict, the codes that matter among the findings, none of those that must not be there, and the steps. */
function agrees({ verdict, findings, next }: Assessment, expected: Expected) {
  const codes = findings.map(({ code }) => code);
  const steps = next.map(({ code }) => code);
  expect(verdict).toBe(expected.verdict);
  expect(codes).toEqual(expect.arrayContaining(expected.codes ?? []));
  expect(steps).toEqual(expect.arrayContaining(expected.steps ?? []));
  expect(codes.filter((code) => expected.absent?.includes(code))).toEqual([]);
  expect(steps.filter((code) => expected.absentSteps?.includes(code))).toEqual([]);
}

describe('bridge, worked by hand', () => {
  it.each(bridgeCases)('$title: $verdict, since $why', (one) => {
    const assessment = assessBridge(bridgeInput(one));
    agrees(assessment, one);
    if (one.suspects) expect(suspectPositions(assessment.findings)).toEqual(one.suspects);
  });
});

describe('insulation, worked by hand', () => {
  it.each(insulationCases)('$title: $verdict, since $why', (one) => {
    agrees(assessInsulation(insulationInput(one)), one);
  });
});

describe('isolation, worked by hand', () => {
  it.each(isolationCases)('$title: $verdict, since $why', (one) => {
    const assessment = assessIsolation(isolationInput(one));
    agrees(assessment, one);
    expect(assessment.parts).toMatchObject(one.parts ?? {});
  });
});

describe('the table of cases', () => {
  const all = [...bridgeCases, ...insulationCases, ...isolationCases];

  it('has at least sixty, each with its own title and a reason', () => {
    expect(all.length).toBeGreaterThanOrEqual(60);
    expect(all.every(({ why }) => why.length > 10)).toBe(true);
    for (const cases of [bridgeCases, insulationCases, isolationCases]) {
      expect(new Set(cases.map(({ title }) => title)).size).toBe(cases.length);
    }
  });

  it.each([
    ['bridge', bridgeCases],
    ['insulation', insulationCases],
    ['isolation', isolationCases],
  ])('of %s meets every verdict at least five times', (_, cases) => {
    for (const verdict of ['go', 'no-go', 'undecided']) {
      expect(cases.filter((one) => one.verdict === verdict).length).toBeGreaterThanOrEqual(5);
    }
  });
});
