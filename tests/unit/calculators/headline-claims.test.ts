import { describe, expect, it } from 'vitest';
import { absorptionHeadline } from '../../../src/calculators/absorption/headline.ts';
import { assessAbsorption } from '../../../src/calculators/absorption/rule/assess.ts';
import { bendHeadline } from '../../../src/calculators/bend-test/headline.ts';
import { assessBendTest } from '../../../src/calculators/bend-test/rule/assess.ts';
import { brakeHeadline } from '../../../src/calculators/brake/headline.ts';
import { assessBrake } from '../../../src/calculators/brake/rule/assess.ts';
import { brakingHeadline } from '../../../src/calculators/braking-circuit/headline.ts';
import { assessBrakingCircuit } from '../../../src/calculators/braking-circuit/rule/assess.ts';
import { bridgeHeadline } from '../../../src/calculators/bridge/headline.ts';
import { assessBridge } from '../../../src/calculators/bridge/rule/assess.ts';
import { bridgeDiodeHeadline } from '../../../src/calculators/bridge-diode/headline.ts';
import { assessBridgeDiode } from '../../../src/calculators/bridge-diode/rule/assess.ts';
import { cableLengthHeadline } from '../../../src/calculators/cable-length/headline.ts';
import { assessCableLength } from '../../../src/calculators/cable-length/rule/assess.ts';
import { coreHeadline } from '../../../src/calculators/core-resistance/headline.ts';
import { assessCore } from '../../../src/calculators/core-resistance/rule/assess.ts';
import { dischargeHeadline } from '../../../src/calculators/discharge/headline.ts';
import { assessDischarge } from '../../../src/calculators/discharge/rule/assess.ts';
import { inputHeadline } from '../../../src/calculators/input-circuit/headline.ts';
import { assessInputCircuit } from '../../../src/calculators/input-circuit/rule/assess.ts';
import { insulationHeadline } from '../../../src/calculators/insulation/headline.ts';
import { assessInsulation } from '../../../src/calculators/insulation/rule/assess.ts';
import { isolationHeadline } from '../../../src/calculators/isolation/headline.ts';
import { assessIsolation } from '../../../src/calculators/isolation/rule/assess.ts';
import { testVoltageHeadline } from '../../../src/calculators/test-voltage/headline.ts';
import { assessTestVoltage } from '../../../src/calculators/test-voltage/rule/assess.ts';
import { trendHeadline } from '../../../src/calculators/trend/headline.ts';
import { assessTrend } from '../../../src/calculators/trend/rule/assess.ts';
import { windingHeadline } from '../../../src/calculators/winding/headline.ts';
import { assessWinding } from '../../../src/calculators/winding/rule/assess.ts';
import type { Assessment } from '../../../src/kernel/assessment/assessment.ts';
import { absorption } from '../../oracle/absorption.ts';
import { bendTest } from '../../oracle/bend-test.ts';
import { brake } from '../../oracle/brake.ts';
import { brakingCircuit } from '../../oracle/braking-circuit.ts';
import { bridge } from '../../oracle/bridge.ts';
import { bridgeDiode } from '../../oracle/bridge-diode.ts';
import { cableLength } from '../../oracle/cable-length.ts';
import { coreResistance } from '../../oracle/core-resistance.ts';
import { Dice } from '../../oracle/dice.ts';
import { discharge } from '../../oracle/discharge.ts';
import { inputCircuit } from '../../oracle/input-circuit.ts';
import { insulation } from '../../oracle/insulation.ts';
import { isolation } from '../../oracle/isolation.ts';
import { testVoltage } from '../../oracle/test-voltage.ts';
import { trend } from '../../oracle/trend.ts';
import { winding } from '../../oracle/winding.ts';
import { runs } from '../../support/runs.ts';

interface Judged {
  verdict: Assessment['verdict'];
  headline: string;
  assessment: Assessment & {
    drive?: string;
    parts?: Record<string, string>;
    cause?: string;
  };
}

/** Sets of input as the oracle makes them: often near the limits, some of them absurd. */
function judged<Input extends object, A extends Assessment>(
  { make }: { make: (dice: Dice) => Input },
  assess: (input: Input) => A,
  headline: (assessment: A) => string,
  sets = Math.min(runs * 2, 4000),
): () => Judged[] {
  return () => {
    const dice = new Dice(11);
    return Array.from({ length: sets }, () => {
      const assessment = assess(make(dice));
      return {
        verdict: assessment.verdict,
        headline: headline(assessment),
        assessment,
      };
    });
  };
}

const all = {
  absorption: judged(absorption, assessAbsorption, absorptionHeadline),
  bridge: judged(bridge, assessBridge, bridgeHeadline),
  'bridge-diode': judged(bridgeDiode, assessBridgeDiode, bridgeDiodeHeadline),
  'cable-length': judged(cableLength, assessCableLength, cableLengthHeadline),
  discharge: judged(discharge, assessDischarge, dischargeHeadline),
  insulation: judged(insulation, assessInsulation, insulationHeadline),
  isolation: judged(isolation, assessIsolation, isolationHeadline),
  'test-voltage': judged(testVoltage, assessTestVoltage, testVoltageHeadline),
  trend: judged(trend, assessTrend, trendHeadline, 400),
  'braking-circuit': judged(brakingCircuit, assessBrakingCircuit, brakingHeadline),
  'input-circuit': judged(inputCircuit, assessInputCircuit, inputHeadline),
  'core-resistance': judged(coreResistance, assessCore, coreHeadline),
  'bend-test': judged(bendTest, assessBendTest, bendHeadline),
  brake: judged(brake, assessBrake, brakeHeadline),
  winding: judged(winding, assessWinding, windingHeadline),
};

/** What only a go may be called. Undecided may say that something passed and is not enough. */
const passes =
  /\bpasses, and|\bare alike$|no short, and|conduct alike|both proven good|test may be made|stays above it|voltage fit, and it opens|read as they should|section let expect|nothing opened or leaked/i;

/** What takes a conviction. */
const convicts = /\bproven bad\b|\bis shorted\b|\bproven broken\b/;

describe.each(Object.entries(all))('%s', (name, sets) => {
  const made = sets();

  it('has words of its own for every finding that decides', () => {
    const without = made.filter(({ headline }) => /^$|^; |; $|not enough|undefined|NaN/i.test(headline));
    expect(without.map(({ headline, assessment }) => [headline, assessment.findings]).slice(0, 2)).toEqual([]);
    expect(made.every(({ headline }) => /^[\p{Lu}\d∞−-]/u.test(headline) && !headline.endsWith('.'))).toBe(true);
  });

  it('says of nothing but a go that it passes', () => {
    const wrong = made.filter(({ verdict, headline }) => verdict !== 'go' && passes.test(headline));
    expect(wrong.map(({ verdict, headline }) => [verdict, headline]).slice(0, 3)).toEqual([]);
  });

  it('calls nothing bad without a no-go, and nothing proven that is only suspect', () => {
    const wrong = made.filter(({ verdict, headline, assessment: { drive, parts } }) => {
      const said = headline.replace(/not proven bad/g, '');
      if (!convicts.test(said)) return false;
      if (verdict !== 'no-go') return true;
      if (drive !== undefined) return drive !== 'convicted';
      if (parts === undefined) return true;
      return (
        (/cable proven bad/i.test(said) && parts.cable !== 'proven-bad') ||
        (/motor proven bad/i.test(said) && parts.motor !== 'proven-bad') ||
        (/PE core proven broken/.test(said) && parts.protectiveConductor !== 'proven-bad')
      );
    });
    expect(wrong.map(({ verdict, headline }) => [verdict, headline]).slice(0, 3)).toEqual([]);
  });

  it('calls a part good only if it is proven good', () => {
    const wrong = made.filter(({ headline, assessment: { parts } }) => {
      if (parts === undefined) return false;
      const both = headline === 'Cable and motor both proven good';
      const said = (part: string) => both || new RegExp(`${part} proven good`, 'i').test(headline);
      return (said('cable') && parts.cable !== 'proven-good') || (said('motor') && parts.motor !== 'proven-good');
    });
    expect(wrong.map(({ headline, assessment }) => [headline, assessment.parts]).slice(0, 3)).toEqual([]);
  });

  it('meets every verdict that it can give', () => {
    const verdicts = new Set(made.map(({ verdict }) => verdict));
    expect([...verdicts].sort()).toEqual(name === 'discharge' ? ['no-go', 'undecided'] : ['go', 'no-go', 'undecided']);
  });
});
