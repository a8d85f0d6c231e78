import { describe, expect, it } from 'vitest';
import { assessInsulation } from '../../../../src/calculators/insulation/rule/assess.ts';
import type { InsulationInput } from '../../../../src/calculators/insulation/rule/input.ts';
import { assessIsolation } from '../../../../src/calculators/isolation/rule/assess.ts';
import type { IsolationInput } from '../../../../src/calculators/isolation/rule/input.ts';
import type { Verdict } from '../../../../src/kernel/assessment/assessment.ts';
import { factorAt, judgeWinding } from '../../../../src/kernel/assessment/winding-insulation.ts';
import { type CorrectionMethod, correctionMethods } from '../../../../src/kernel/electrics/correction-validity.ts';
import type { Phases } from '../../../../src/kernel/electrics/phases.ts';
import { limitRange } from '../../../../src/kernel/limits.ts';
import type { Instrument } from '../../../../src/kernel/reading/interval.ts';
import {
  celsius,
  missing,
  ohms,
  overOhms,
  type Reading,
  underOhms,
  volts,
} from '../../../../src/kernel/reading/reading.ts';
import { typed } from '../../../support/typed.ts';

describe('the factor of a temperature', () => {
  it.each([
    ['20', 20, { lo: 1, hi: 1 }],
    ['40', 20, { lo: 4, hi: 4 }],
    ['20', 40, { lo: 0.25, hi: 0.25 }],
    ['', 20, { lo: 0.25, hi: 256 }],
    ['120', 20, undefined],
  ] as const)('at “%s” °C, to %d °C: %o', (winding, reference, expected) => {
    expect(factorAt(typed(winding, 'temperature'), 'halving', reference)).toEqual(expected);
  });
});

describe('one reading of a winding', () => {
  const judge = (reading: string, temperature: string, correction: CorrectionMethod = 'halving') =>
    judgeWinding(typed(reading), {
      ...{ occasion: 'after-trip', limit: 100e6, reference: 20, correction },
      temperature: typed(temperature, 'temperature'),
    });

  it.each([
    ['600M', '20', 'good'],
    ['2M', '20', 'bad'],
    ['60M', '40', 'hot'],
    ['120M', '10', 'cold'],
    ['600M', '', 'temperature-needed'],
    ['600M', '120', 'temperature-needed'],
    ['2M', '120', 'temperature-needed'],
    ['300k', '', 'bad'],
    ['2M', '', 'temperature-needed'],
    ['OL', '20', 'bound-too-low'],
  ])('%s at “%s” °C is %s', (reading, temperature, expected) => {
    expect(judge(reading, temperature).judgement).toBe(expected);
  });

  it('that only some methods pass is not judged', () => {
    // 120 MΩ at 10 °C: 60 MΩ at 20 °C by the halving rule, above the after-trip limit by the formulas for thermosetting insulation.
    expect(judge('120M', '10', 'thermosetting')).toEqual({
      judgement: 'methods-differ',
      dissenting: ['halving', 'table'],
    });
  });
});

/** The same readings of motor and cable together for both calculators, everything else in order. */
function verdicts(reading: Reading, winding: Reading, correction: CorrectionMethod, instrument: Instrument) {
  const all: Phases<Reading> = { U: reading, V: reading, W: reading };
  const far: Phases<Reading> = { U: ohms(500e9), V: ohms(500e9), W: ohms(500e9) };
  const pe = ohms(0.2, 0.1);
  const shared = {
    idleCores: 'to-pe' as const,
    testVoltage: volts(500),
    windingTemperature: winding,
    correction,
    instrument,
  };
  const insulation: InsulationInput = {
    ...shared,
    ...{ occasion: 'after-trip', readings: all, pe, ratedVoltage: volts(400), machineClass: 'random-wound' },
    ...{ ambient: missing, humidity: missing, testMinutes: missing },
  };
  const joined: IsolationInput = {
    ...shared,
    ...{ joined: { ...all, PE: pe }, cableEndsChecked: true, suspectedAnyway: false },
  };
  const whole: IsolationInput = {
    ...joined,
    // The parts are far above the point at any temperature, so that the joined stage alone decides.
    ...{ cable: { ...far, PE: ohms(500e9) }, bonded: far, motor: { ...far, PE: pe }, motorTemperature: celsius(20) },
  };
  return {
    insulation: assessInsulation(insulation).verdict,
    joined: assessIsolation(joined).verdict,
    whole: assessIsolation(whole).verdict,
  };
}

describe('insulation and isolation judge a winding by one rule', () => {
  const sizes = [0, 1e3, 1e5, 390e3, 1e6, 5e6, 25e6, 49e6, 60e6, 80e6, 95e6, 99e6, 100e6, 101e6, 105e6, 112e6];
  const more = [120e6, 142e6, 150e6, 180e6, 200e6, 250e6, 300e6, 399e6, 400e6, 450e6, 600e6, 900e6, 1.5e9, 5e9];
  const values = [...sizes, ...more].map((size) => ohms(size, 1e6));
  const bounds = [overOhms(), overOhms(50e6), overOhms(720e6), underOhms(), underOhms(1e6), underOhms(1e9)];
  const { from, to } = limitRange('entry-temperature');
  const degrees = [from, -5, 0, 5, 10, 12, 15, 18, 20, 22, 25, 28, 30, 35, 40, 45, 60, 80, 85, 90, 100, 120, to];
  const temperatures: Reading[] = [missing, ...degrees.map((one) => celsius(one, 1))];
  const accuracies: Instrument[] = [
    {},
    { percent: 5 },
    { percent: 10, counts: 2 },
    { percent: 30 },
    { upperLimit: 720e6 },
  ];

  it.each(correctionMethods)('%s: at each reading, temperature and accuracy', (method) => {
    const count: Record<Verdict, number> = { go: 0, 'no-go': 0, undecided: 0 };
    for (const reading of [...values, ...bounds]) {
      for (const temperature of temperatures) {
        for (const accuracy of accuracies) {
          const { insulation, joined, whole } = verdicts(reading, temperature, method, accuracy);
          const at = JSON.stringify({ reading, temperature, accuracy });
          expect(whole === 'go', at).toBe(insulation === 'go');
          // With cable and motor both good a bad joined reading contradicts them, so that it condemns alone.
          expect(joined === 'no-go', at).toBe(insulation === 'no-go');
          expect(joined, at).not.toBe('go');
          count[insulation]++;
        }
      }
    }
    for (const verdict of ['go', 'no-go', 'undecided'] as const) expect(count[verdict]).toBeGreaterThan(100);
  });
});
