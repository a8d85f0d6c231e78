import { describe, expect, it } from 'vitest';
import { calculator as absorption } from '../../../src/calculators/absorption/form.ts';
import { calculator as bendTest } from '../../../src/calculators/bend-test/form.ts';
import { calculator as brake } from '../../../src/calculators/brake/form.ts';
import { calculator as brakingCircuit } from '../../../src/calculators/braking-circuit/form.ts';
import { calculator as bridge } from '../../../src/calculators/bridge/form.ts';
import { calculator as bridgeDiode } from '../../../src/calculators/bridge-diode/form.ts';
import { calculator as cableLength } from '../../../src/calculators/cable-length/form.ts';
import { calculator as coreResistance } from '../../../src/calculators/core-resistance/form.ts';
import { calculator as discharge } from '../../../src/calculators/discharge/form.ts';
import { calculator as inputCircuit } from '../../../src/calculators/input-circuit/form.ts';
import { calculator as insulation } from '../../../src/calculators/insulation/form.ts';
import { calculator as isolation } from '../../../src/calculators/isolation/form.ts';
import { calculator as testVoltage } from '../../../src/calculators/test-voltage/form.ts';
import { calculator as trend } from '../../../src/calculators/trend/form.ts';
import { calculator as tripTrace } from '../../../src/calculators/trip-trace/form.ts';
import { calculator as winding } from '../../../src/calculators/winding/form.ts';
import type { CalculatorForm } from '../../../src/kernel/form/calculator-form.ts';
import { fillForm, type Typed } from '../../../src/kernel/form/field.ts';
import { stepLine, trueOfTheMoment } from '../../../src/kernel/form/opening.ts';

// No source: how the calculators hand readings on.

const all: Record<string, CalculatorForm> = {
  ...{ absorption, bridge, 'bridge-diode': bridgeDiode, 'cable-length': cableLength, discharge },
  ...{ insulation, isolation, 'test-voltage': testVoltage, trend, 'trip-trace': tripTrace, winding },
  'bend-test': bendTest,
  ...{ brake, 'braking-circuit': brakingCircuit, 'input-circuit': inputCircuit, 'core-resistance': coreResistance },
};

describe.each(Object.entries(all))('%s', (_, { opens, fields }) => {
  it('opens calculators that there are, and fills fields that they have with readings of the same kind', () => {
    for (const { calculator, carries = {} } of opens) {
      const there = new Map(all[calculator]?.fields.map((field) => [field.id, field]));
      const here = new Map(fields.map((field) => [field.id, field]));
      for (const [from, to] of Object.entries(carries)) {
        const [source, target] = [here.get(from), there.get(to)];
        expect(source, from).toBeDefined();
        expect(target?.kind, to).toBe(source?.kind);
        if (source?.kind === 'reading' && target?.kind === 'reading') expect(target.quantity).toBe(source.quantity);
        if (source?.kind !== 'choice' || target?.kind !== 'choice') continue;
        const answers = target.options.map(({ value }) => value);
        expect(source.options.map(({ value }) => value).filter((value) => !answers.includes(value))).toEqual([]);
        // An answer that is left as it is must mean the same there.
        expect(target.initial).toBe(source.initial);
      }
    }
  });

  it('carries nothing that is true of the machine at the moment', () => {
    const carried = opens.flatMap(({ carries = {} }) => Object.values(carries));
    expect(carried.filter((field) => trueOfTheMoment.includes(field))).toEqual([]);
  });
});

it('hands the joined readings of an insulation test on as they were typed', () => {
  const typed: Typed = {
    occasion: 'after-trip',
    together: '320k',
    PE: '0.2 Ω',
    idleCores: 'to-pe',
    testVoltage: '500',
  };
  const outcome = insulation.judge(fillForm(insulation.fields, typed));
  const opened = outcome.state === 'judged' ? outcome.steps.flatMap(({ opens }) => opens ?? []) : [];
  expect(opened).toContainEqual({
    calculator: 'isolation',
    words: 'Cable or motor',
    form: { joinedTogether: '320k', joinedPE: '0.2 Ω', idleCores: 'to-pe', testVoltage: '500' },
  });
});

it('fills in nothing where nothing is known', () => {
  const opening = { calculator: 'winding', words: 'Winding', carries: { windingTemperature: 'windingTemperature' } };
  expect(stepLine('Go on.', opening, { windingTemperature: ' ' }).opens?.form).toEqual({});
  expect(stepLine('Go on.', undefined, {}).opens).toBeUndefined();
});
