import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assessDischarge } from '../../../../../src/calculators/discharge/rule/assess.ts';
import type { DischargeInput } from '../../../../../src/calculators/discharge/rule/input.ts';
import { secondsUntil, timeConstantBetween, voltageAfter } from '../../../../../src/kernel/electrics/discharge-law.ts';
import { limitValue } from '../../../../../src/kernel/limits.ts';
import { missing, ohms, type Reading, volts } from '../../../../../src/kernel/reading/reading.ts';
import { figures } from '../../../../support/found.ts';
import { runs } from '../../../../support/runs.ts';

const farads = (value: number): Reading => ({ kind: 'value', value, unit: 'F' });
const seconds = (value: number, resolution = 1): Reading => ({ kind: 'value', value, unit: 's', resolution });
const percent = (value: number): Reading => ({ kind: 'value', value, unit: '%' });

const nothing: DischargeInput = {
  startVoltage: missing,
  capacitance: missing,
  capacitanceTolerance: missing,
  bleeder: missing,
  bleederTolerance: missing,
  timeConstant: missing,
  first: missing,
  second: missing,
  elapsed: missing,
  label: missing,
};
const bus = (changes: Partial<DischargeInput>): DischargeInput => ({ ...nothing, ...changes });
const values: Partial<DischargeInput> = {
  startVoltage: volts(565, 1),
  capacitance: farads(1.5e-3),
  capacitanceTolerance: percent(0),
  bleeder: ohms(33e3),
  bleederTolerance: percent(0),
};
const pair = (first: number, second: number, time: number): Partial<DischargeInput> => ({
  first: volts(first, 1),
  second: volts(second, 1),
  elapsed: seconds(time),
});
const codes = (input: DischargeInput) => assessDischarge(input).findings.map(({ code }) => code);
const longest = (input: DischargeInput, limit = 'touch-voltage') =>
  assessDischarge(input).waits.find((wait) => wait.limit === limit)?.seconds.hi;

describe('a bus that stands', () => {
  const stands = (changes: Partial<DischargeInput>) => codes(bus({ startVoltage: volts(565, 1), ...changes }));

  it.each<[string, Partial<DischargeInput>]>([
    ['below the shares of two capacitors', pair(224, 224, 60)],
    ['above them', pair(341, 341, 60)],
    ['and falls', pair(300, 280, 60)],
    ['at half of a start that is not known', { startVoltage: missing, ...pair(283, 283, 60) }],
    ['at half, below the touch limit', { startVoltage: volts(80, 1), ...pair(40, 40, 60) }],
  ])('%s is not at half', (_name, changes) => {
    expect(stands(changes)).not.toContain('stands-near-half');
  });

  it('at half is treated as live, with what it rests on', () => {
    const { findings, next } = assessDischarge(bus({ startVoltage: volts(565, 1), ...pair(283, 283, 60) }));
    expect(findings.find(({ code }) => code === 'stands-near-half')).toMatchObject({
      severity: 'caution',
      readings: ['startVoltage', 'second'],
      limits: ['capacitor-tolerance', 'touch-voltage'],
      startVolts: 565,
      standsVolts: 283,
    });
    expect(next.map(({ code }) => code)).toContain('treat-as-live');
  });
});

describe('assessDischarge', () => {
  it.each<[string, Partial<DischargeInput>, string, string]>([
    ['nothing typed', {}, 'undecided', 'discharge-data-missing'],
    ['no start', { timeConstant: seconds(50) }, 'undecided', 'start-missing'],
    ['values', values, 'undecided', 'longest-wait'],
    ['a sound pair', pair(565, 300, 30), 'undecided', 'longest-wait-from-reading'],
    ['a pair of which one is missing', { first: volts(565, 1), elapsed: seconds(5) }, 'undecided', 'pair-incomplete'],
    ['no time between them', pair(565, 300, 0), 'undecided', 'times-equal'],
    ['the second is higher', pair(300, 565, 30), 'undecided', 'voltage-rises'],
    ['higher, and no time between them', pair(300, 565, 0), 'undecided', 'voltage-rises'],
    ['both alike', pair(565, 565, 30), 'undecided', 'no-fall-shown'],
    // Shares of two capacitors with ±20 % in series: 40 to 60 % of 565 V, 226 to 339 V.
    ['stands at half', { startVoltage: volts(565, 1), ...pair(283, 283, 60) }, 'undecided', 'stands-near-half'],
    ['stands at 40 %', { startVoltage: volts(565, 1), ...pair(226, 226, 60) }, 'undecided', 'stands-near-half'],
    ['stands at 60 %', { startVoltage: volts(565, 1), ...pair(339, 339, 60) }, 'undecided', 'stands-near-half'],
    // No fall in ten minutes, and the label says one: the readings prove it too slow.
    [
      'stands at half beyond its label',
      { startVoltage: volts(565, 1), ...pair(283, 283, 600), label: seconds(60) },
      'no-go',
      'stands-near-half',
    ],
    ['closer than the last digits', pair(565, 564, 30), 'undecided', 'no-fall-shown'],
    ['an open bleeder', { ...values, bleeder: { kind: 'over', unit: 'Ω' } }, 'undecided', 'no-end'],
    ['no capacitance at all', { ...values, capacitance: farads(0) }, 'undecided', 'value-impossible'],
    // 49.5 s by the parts; 565 to 500 V in 60 s is 491 s.
    ['far slower than its parts', { ...values, ...pair(565, 500, 60) }, 'no-go', 'slower-than-values'],
    ['faster than its parts', { ...values, ...pair(565, 100, 10) }, 'undecided', 'faster-than-values'],
    ['slower than the label', { ...pair(565, 500, 60), label: seconds(300) }, 'no-go', 'slower-than-label'],
    ['values against the label', { ...values, label: seconds(60) }, 'undecided', 'values-beyond-label'],
    ['longer than the machine standard', values, 'undecided', 'longer-than-standard'],
  ])('%s', (_name, changes, verdict, code) => {
    expect(assessDischarge(bus(changes)).verdict).toBe(verdict);
    expect(codes(bus(changes))).toContain(code);
  });

  it('works out the wait by hand: 49.5 s · ln(566 / 50) and to 60 µC at 1500 µF, 40 mV', () => {
    // The start is as accurate as its last digit.
    expect(longest(bus(values))).toBeCloseTo(120.1, 1);
    expect(longest(bus(values), 'residual-voltage-60')).toBeCloseTo(111.1, 1);
    expect(longest(bus(values), 'residual-charge-exempt')).toBeCloseTo(49.5 * Math.log(566 / 0.04), 6);
  });

  it('counts the longest time: tolerances lengthen it, and so does a slower pair', () => {
    const exact = longest(bus(values)) ?? 0;
    const usual = longest(bus({ ...values, capacitanceTolerance: missing, bleederTolerance: missing })) ?? 0;
    expect(usual / exact).toBeCloseTo(1.2 * 1.05, 9);
    expect(longest(bus({ ...values, ...pair(565, 500, 60) }))).toBeGreaterThan(exact);
    expect(longest(bus({ ...values, ...pair(565, 100, 10) }))).toBeGreaterThanOrEqual(exact);
  });

  it('says the time from the second reading, and never starts below what was read', () => {
    const { waits } = assessDischarge(bus({ ...pair(565, 300, 30), startVoltage: volts(325, 1) }));
    const touch = waits.find(({ limit }) => limit === 'touch-voltage');
    // The slowest that the digits allow: 564 to 301 V in 31 s.
    const slowest = 31 / Math.log(564 / 301);
    expect(touch?.seconds.hi).toBeCloseTo(slowest * Math.log(566 / 50), 6);
    expect(touch?.afterReading).toBeCloseTo(slowest * Math.log(301 / 50), 6);
  });

  it('counts from the first reading if the start is not stated or stated lower: the supply was cut earlier', () => {
    const from = (changes: Partial<DischargeInput>) => {
      const { findings } = assessDischarge(bus({ ...pair(400, 300, 60), ...changes }));
      return findings.find(({ code }) => code.startsWith('longest-wait'))?.code;
    };
    expect(from({})).toBe('longest-wait-from-reading');
    expect(from({ startVoltage: volts(325, 1) })).toBe('longest-wait-from-reading');
    expect(from({ startVoltage: volts(565, 1) })).toBe('longest-wait');
  });

  it('an over-range start has no upper end: no time, and no energy, is computed from it', () => {
    const over: Reading = { kind: 'over', unit: 'V', atLeast: 600 };
    for (const start of [{ startVoltage: over }, { startVoltage: volts(565, 1), ...pair(565, 300, 30), first: over }]) {
      const { findings, waits } = assessDischarge(bus({ ...values, ...start }));
      expect(findings.map(({ code }) => code)).toContain('start-missing');
      expect(waits).toEqual([]);
      expect(findings.flatMap(figures).every(Number.isFinite)).toBe(true);
    }
  });

  it('classifies the energy by the most dangerous class reached', () => {
    const code = (volt: number, farad: number) =>
      codes(bus({ startVoltage: volts(volt, 0), capacitance: farads(farad), capacitanceTolerance: percent(0) })).find(
        (c) => c.startsWith('energy'),
      );
    expect(code(565, 1.5e-3)).toBe('energy-shock');
    expect(code(680, 50e-3)).toBe('energy-arc');
    expect(code(565, 2e-6)).toBe('energy-reflex');
    expect(code(48, 0.1)).toBe('energy-burn');
    expect(code(60, 1e-3)).toBe('energy-below');
  });

  it('always says first that only the meter decides, and last to measure', () => {
    for (const changes of [{}, values, pair(300, 565, 30), pair(565, 300, 30)]) {
      const { findings, next } = assessDischarge(bus(changes));
      expect(findings[0]?.code).toBe('only-the-meter');
      expect(next.at(-1)?.code).toBe('prove-dead');
    }
  });
});

const volt = fc.double({ min: 0, max: 1000, noNaN: true });
const maybe = (reading: fc.Arbitrary<Reading>) => fc.oneof({ weight: 4, arbitrary: reading }, fc.constant(missing));
const anyVolts = maybe(volt.map((value) => volts(value, 0.1)));
const anyBus: fc.Arbitrary<DischargeInput> = fc.record({
  startVoltage: anyVolts,
  capacitance: maybe(fc.double({ min: 1e-6, max: 0.1, noNaN: true }).map(farads)),
  capacitanceTolerance: maybe(fc.integer({ min: 0, max: 50 }).map(percent)),
  bleeder: maybe(fc.double({ min: 10, max: 1e6, noNaN: true }).map((value) => ohms(value))),
  bleederTolerance: maybe(fc.integer({ min: 0, max: 50 }).map(percent)),
  timeConstant: maybe(fc.double({ min: 0.01, max: 1000, noNaN: true }).map((value) => seconds(value, 0.01))),
  first: anyVolts,
  second: anyVolts,
  elapsed: maybe(fc.integer({ min: 0, max: 600 }).map((value) => seconds(value))),
  label: maybe(fc.integer({ min: 1, max: 900 }).map((value) => seconds(value))),
});

describe('properties', () => {
  it('there is never a go, and no number is NaN', () => {
    fc.assert(
      fc.property(anyBus, (input) => {
        const { verdict, findings, waits } = assessDischarge(input);
        expect(verdict).not.toBe('go');
        const numbers = [...findings.flatMap(figures), ...waits.map((w) => w.seconds.hi)];
        expect(numbers.filter(Number.isNaN)).toEqual([]);
        for (const { seconds: wait } of waits) expect(wait.lo).toBeLessThanOrEqual(wait.hi);
      }),
      { numRuns: runs },
    );
  });

  it('more of anything that holds charge never shortens the longest wait', () => {
    const known = fc.record({
      start: fc.double({ min: 60, max: 1000, noNaN: true }),
      farad: fc.double({ min: 1e-5, max: 0.1, noNaN: true }),
      ohm: fc.double({ min: 100, max: 1e6, noNaN: true }),
      // Three times as much is still a percentage.
      tolerance: fc.integer({ min: 0, max: 33 }),
      more: fc.double({ min: 1, max: 3, noNaN: true }),
    });
    fc.assert(
      fc.property(known, fc.constantFrom('start', 'farad', 'ohm', 'tolerance'), (one, which) => {
        const wait = (k: typeof one) =>
          longest(
            bus({
              startVoltage: volts(k.start, 1),
              capacitance: farads(k.farad),
              capacitanceTolerance: percent(k.tolerance),
              bleeder: ohms(k.ohm),
              bleederTolerance: percent(k.tolerance),
            }),
          ) ?? Number.NaN;
        const more = { ...one, [which]: one[which] * one.more };
        expect(wait(more)).toBeGreaterThanOrEqual(wait(one) * (1 - 1e-12));
      }),
      { numRuns: runs },
    );
  });

  it('the same bus in other units waits as long: 1500 µF and 33 kΩ are 1.5 mF and 0.033 MΩ by the law', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 100, noNaN: true }), (scale) => {
        const scaled = { ...values, capacitance: farads(1.5e-3 * scale), bleeder: ohms(33e3 / scale) };
        expect(longest(bus(scaled))).toBeCloseTo(longest(bus(values)) ?? 0, 6);
      }),
      { numRuns: runs },
    );
  });

  it('voltage, time and time constant are three views of one law', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 1000, noNaN: true }),
        fc.double({ min: 0.01, max: 1000, noNaN: true }),
        fc.double({ min: 0.01, max: 5, noNaN: true }),
        (start, timeConstant, times) => {
          const time = times * timeConstant;
          const then = voltageAfter(start, time, timeConstant);
          expect(secondsUntil(start, then, timeConstant) / time).toBeCloseTo(1, 9);
          expect(timeConstantBetween(start, then, time) / timeConstant).toBeCloseTo(1, 9);
        },
      ),
      { numRuns: runs },
    );
  });

  it('a pair that the law made is consistent with the values that it was made from', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 100 }), (time) => {
        const second = Math.round(voltageAfter(565, time, 49.5));
        const input = bus({ ...values, ...pair(565, second, time) });
        expect(codes(input)).not.toContain('slower-than-values');
        expect(codes(input)).not.toContain('faster-than-values');
        expect(limitValue('touch-voltage')).toBeLessThan(565);
      }),
      { numRuns: runs },
    );
  });
});
