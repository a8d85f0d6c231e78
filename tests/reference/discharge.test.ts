import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { assessDischarge } from '../../src/calculators/discharge/rule/assess.ts';
import type { EnergyFinding } from '../../src/calculators/discharge/rule/input.ts';
import {
  secondsUntil,
  storedEnergy,
  timeConstantBetween,
  voltageAfter,
} from '../../src/kernel/electrics/discharge-law.ts';
import { limitLabels } from '../../src/kernel/limit-labels.ts';
import { limitValue } from '../../src/kernel/limits.ts';
import { missing, type Reading, volts } from '../../src/kernel/reading/reading.ts';
import recordedValues from './ngspice/recorded.json' with { type: 'json' };

const recorded = recordedValues.discharge;

/** Source: ngspice, transient analysis of tests/reference/ngspice/discharge.cir; ngspice.test.ts computes it again. */
describe('the law against a circuit simulator', () => {
  it.each([
    [565, 33e3, 1500e-6, 30, recorded.vathirty],
    [565, 33e3, 1500e-6, 120, recorded.vattwominutes],
    [325, 47e3, 820e-6, 100, recorded.secondathundred],
    [680, 10e3, 4700e-6, 60, recorded.thirdatminute],
  ])('%d V, %d Ω, %d F after %d s', (start, ohms, farads, seconds, simulated) => {
    expect(voltageAfter(start, seconds, ohms * farads) / simulated).toBeCloseTo(1, 5);
  });

  it.each([
    [565, 33e3, 1500e-6, 60, recorded.tosixty],
    [325, 47e3, 820e-6, 50, recorded.secondtofifty],
    [680, 10e3, 4700e-6, 60, recorded.thirdtosixty],
  ])('%d V, %d Ω, %d F down to %d V', (start, ohms, farads, end, simulated) => {
    expect(secondsUntil(start, end, ohms * farads) / simulated).toBeCloseTo(1, 5);
  });
});

/** Source: mathjs, with units, apart from our code. */
describe('the law against a library with units', () => {
  it.each([
    [565, 60, 33, 1500],
    [325, 50, 47, 820],
    [800, 60, 22, 2200],
  ])('%d V to %d V through %d kΩ with %d µF', (start, end, kilohms, microfarads) => {
    const scope = { U: start, u: end, R: kilohms, C: microfarads };
    const seconds = evaluate('(R kohm) * (C uF) * log(U / u) to s', scope).toNumber('s');
    const timeConstant = evaluate('(R kohm) * (C uF) to s', scope).toNumber('s');
    expect(secondsUntil(start, end, timeConstant) / seconds).toBeCloseTo(1, 9);
    expect(timeConstantBetween(start, end, seconds) / timeConstant).toBeCloseTo(1, 9);
    const joules = evaluate('(C uF) * (U V)^2 / 2 to J', scope).toNumber('J');
    expect(storedEnergy(microfarads * 1e-6, start) / joules).toBeCloseTo(1, 9);
  });

  /** Source: any textbook of circuits; recalled. After 1, 2, 3 and 5 time constants. */
  it.each([
    [1, 36.8],
    [2, 13.5],
    [3, 4.98],
    [5, 0.674],
  ])('after %d time constants %d %% are left', (times, percent) => {
    expect(Number(voltageAfter(100, times, 1).toPrecision(3))).toBe(percent);
  });
});

/** Source: LBNL Electrical Safety Manual, table 2.2.13 (classes of the U.S. Department of Energy); read. */
describe('the classes of stored energy', () => {
  it.each([
    ['capacitor-shock-voltage', 100],
    ['capacitor-shock-energy', 10],
    ['capacitor-burn-energy', 100],
    ['capacitor-arc-energy', 10_000],
  ] as const)('%s', (id, value) => {
    expect(limitValue(id)).toBe(value);
    expect(limitLabels[id].recalled).toBe(false);
  });

  /** Source: DOE-HDBK-1092-2013, appendix D: reflex above 400 V from 0.25 J; read in a text that quotes it. */
  it('the reflex hazard', () => {
    expect([limitValue('capacitor-reflex-voltage'), limitValue('capacitor-reflex-energy')]).toEqual([400, 0.25]);
  });

  /** Source: NFPA 70E, 2021, article 360: 1 J; recalled from memory. Stricter, so it classes a charged bus. */
  it('the later shock hazard', () => {
    expect(limitValue('capacitor-shock-energy-later')).toBe(1);
    expect(limitLabels['capacitor-shock-energy-later'].recalled).toBe(true);
  });

  // Each figure from both sides: E = C · V² / 2 worked out by hand.
  it.each<[number, number, EnergyFinding['code']]>([
    [100, 2.0e-4, 'energy-shock'],
    [100, 1.98e-4, 'energy-below'],
    [99, 0.0205, 'energy-burn'],
    [99, 0.02, 'energy-below'],
    [1000, 0.02, 'energy-arc'],
    [1000, 0.0199, 'energy-shock'],
    [500, 2e-6, 'energy-reflex'],
    [500, 1.99e-6, 'energy-below'],
    [400, 4e-6, 'energy-below'],
    [401, 4e-6, 'energy-reflex'],
  ])('%d V at %d F', (start, farads, code) => {
    const none: Reading = missing;
    const { findings } = assessDischarge({
      startVoltage: volts(start, 0),
      capacitance: { kind: 'value', value: farads, unit: 'F' },
      capacitanceTolerance: { kind: 'value', value: 0, unit: '%' },
      ...{ bleeder: none, bleederTolerance: none, timeConstant: none },
      ...{ first: none, second: none, elapsed: none, label: none },
    });
    expect(findings.map((finding) => finding.code)).toContain(code);
  });
});

describe('the published limits of time and voltage', () => {
  /** Source: IEC 60204-1 cl. 6.2.4 (NFPA 79 6.5.1 alike); read in a text that quotes it. */
  it('IEC 60204-1', () => {
    expect([limitValue('residual-voltage-60'), limitValue('residual-voltage-time')]).toEqual([60, 5]);
    expect([limitValue('residual-voltage-plug'), limitValue('residual-charge-exempt')]).toEqual([1, 60e-6]);
  });

  /** Source: NFPA 70 460.6: 50 V, 1 min (read), 5 min (recalled from memory). */
  it('NFPA 70', () => {
    expect(limitValue('capacitor-voltage-50')).toBe(50);
    expect([limitValue('capacitor-time'), limitValue('capacitor-time-high')]).toEqual([60, 300]);
    expect(limitLabels['capacitor-time-high'].recalled).toBe(true);
  });

  /** Common practice, no source. */
  it('tolerances say that they have no source', () => {
    for (const id of ['capacitor-tolerance', 'bleeder-tolerance'] as const) {
      expect([limitLabels[id].source, limitLabels[id].status]).toEqual([null, 'common-practice']);
    }
  });
});
