import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assessBridge } from '../../../src/calculators/bridge/rule/assess.ts';
import { bridgeFindings, bridgeSteps } from '../../../src/calculators/bridge/words.ts';
import { assessInsulation } from '../../../src/calculators/insulation/rule/assess.ts';
import { insulationFindings, insulationSteps } from '../../../src/calculators/insulation/words.ts';
import { assessIsolation } from '../../../src/calculators/isolation/rule/assess.ts';
import { isolationFindings, isolationSteps } from '../../../src/calculators/isolation/words.ts';
import { volts } from '../../../src/kernel/reading/reading.ts';
import { sentenceOf } from '../../../src/kernel/words/sentences.ts';
import * as bridge from '../../support/arbitrary-bridge.ts';
import * as insulation from '../../support/arbitrary-insulation.ts';
import * as isolation from '../../support/arbitrary-isolation.ts';
import { found } from '../../support/found.ts';
import {
  bridgeCases,
  bridgeInput,
  insulationCases,
  insulationInput,
  isolationCases,
  isolationInput,
} from '../../support/hand-worked.ts';
import { runs } from '../../support/runs.ts';
import { isClean, sayAll } from '../../support/sentences.ts';

describe('the hand-worked cases have clean sentences', () => {
  it.each(bridgeCases)('bridge: $title', (one) => {
    sayAll(assessBridge(bridgeInput(one)), bridgeFindings, bridgeSteps);
  });

  it.each(insulationCases)('insulation: $title', (one) => {
    sayAll(assessInsulation(insulationInput(one)), insulationFindings, insulationSteps);
  });

  it.each(isolationCases)('isolation: $title', (one) => {
    sayAll(assessIsolation(isolationInput(one)), isolationFindings, isolationSteps);
  });
});

/** Figures that no form accepts. */
const impossible = volts(Number.NaN);

/** Every code with a sentence must occur, except those listed with the reason why no input gives it. */
function meetsAllCodes(met: Set<string>, texts: object[], except: string[] = []) {
  const unmet = texts.flatMap((one) => Object.keys(one)).filter((code) => !met.has(code));
  expect(unmet.sort()).toEqual(except.sort());
}

describe('any assessment has clean sentences, and every code occurs', () => {
  it('of a bridge', () => {
    const met = new Set<string>();
    fc.assert(
      fc.property(bridge.bridgeInput, (input) => {
        for (const code of sayAll(assessBridge(input), bridgeFindings, bridgeSteps)) met.add(code);
      }),
      { numRuns: Math.max(runs, 2000) },
    );
    for (const one of bridgeCases) {
      for (const code of sayAll(assessBridge(bridgeInput(one)), bridgeFindings, bridgeSteps)) met.add(code);
      const hostile = { ...bridgeInput(one), busVoltage: impossible };
      for (const code of sayAll(assessBridge(hostile), bridgeFindings, bridgeSteps)) met.add(code);
    }
    meetsAllCodes(met, [bridgeFindings, bridgeSteps]);
  });

  it('of an insulation', () => {
    const met = new Set<string>();
    fc.assert(
      fc.property(insulation.insulationInput, (input) => {
        for (const code of sayAll(assessInsulation(input), insulationFindings, insulationSteps)) met.add(code);
      }),
      { numRuns: Math.max(runs, 3000) },
    );
    for (const one of insulationCases) {
      for (const code of sayAll(assessInsulation(insulationInput(one)), insulationFindings, insulationSteps))
        met.add(code);
      const hostile = { ...insulationInput(one), testVoltage: impossible };
      for (const code of sayAll(assessInsulation(hostile), insulationFindings, insulationSteps)) met.add(code);
    }
    meetsAllCodes(met, [insulationFindings, insulationSteps]);
  });

  it('of an isolation', () => {
    const met = new Set<string>();
    fc.assert(
      fc.property(isolation.isolationInput, (input) => {
        for (const code of sayAll(assessIsolation(input), isolationFindings, isolationSteps)) met.add(code);
      }),
      { numRuns: Math.max(runs, 5000) },
    );
    for (const one of isolationCases) {
      for (const code of sayAll(assessIsolation(isolationInput(one)), isolationFindings, isolationSteps)) met.add(code);
      const hostile = { ...isolationInput(one), testVoltage: impossible };
      for (const code of sayAll(assessIsolation(hostile), isolationFindings, isolationSteps)) met.add(code);
    }
    // The codes of a test voltage come as one type; isolation asks for no rated voltage.
    meetsAllCodes(met, [isolationFindings, isolationSteps], ['rated-voltage-missing', 'test-voltage-unsuited']);
  });
});

describe('what must be said', () => {
  const say = (index: number) => {
    const one = bridgeCases[index];
    if (one === undefined) throw new Error('no such case');
    const { findings, next } = assessBridge(bridgeInput(one));
    const found = findings.map((one) => sentenceOf(bridgeFindings, one));
    return [...found, ...next.map((one) => sentenceOf(bridgeSteps, one))].join(' ');
  };
  const titled = (title: string) => say(bridgeCases.findIndex((one) => one.title === title));

  it('a pass of the bridge does not prove the drive sound', () => {
    expect(titled('a sound stage')).toContain('does not prove the drive sound');
  });

  it('a failed stage: the complete drive, the control board, motor and cable first', () => {
    const text = titled('a short read twice');
    expect(text).toContain('Replace the complete drive');
    expect(text).toContain('control board');
    expect(text).toContain('before the new drive is connected');
    expect(text).toContain('lower transistor of V');
  });

  it('a stage that failed once gets no power, and nothing is ordered yet', () => {
    const text = titled('one switch short');
    expect(text).toContain('Put no power on this drive');
    expect(text).toContain('not proven bad');
    expect(text).not.toContain('Replace the complete drive');
  });

  it('a spread just over the tolerance is not shown as the tolerance', () => {
    expect(titled('just over the tolerance, read again')).toContain('10.2 %');
  });

  it('the insulation tester is never used on the drive, and the winding is discharged four times as long', () => {
    const [one] = insulationCases;
    if (one === undefined) throw new Error('no case');
    const { findings } = assessInsulation(insulationInput(one));
    const text = findings.map((finding) => sentenceOf(insulationFindings, finding)).join(' ');
    expect(text).toContain('Never put an insulation tester on the terminals of a drive');
    expect(text).toContain('at least 4 minutes (4 times the test)');
  });

  it('a reading just below the after-trip limit is not shown as the point', () => {
    const [one] = insulationCases;
    if (one === undefined) throw new Error('no case');
    const { findings } = assessInsulation(insulationInput({ ...one, phases: '99.96M | 200M | 200M' }));
    const text = insulationFindings['phase-bad'](found(findings, 'phase-bad'));
    expect(text).toContain('99.96 MΩ');
    isClean(text);
  });
});
