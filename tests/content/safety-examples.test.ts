import { expect, test } from 'vitest';
import { after, before } from '../../content/articles/deciding/baseline-and-record.example.ts';
import { shown } from '../../content/articles/deciding/motor-and-cable-together.example.ts';
import * as dcBus from '../../content/articles/safety/the-dc-bus.example.ts';
import { assessDischarge } from '../../src/calculators/discharge/rule/assess.ts';
import { parallel } from '../../src/kernel/electrics/parallel-law.ts';
import { correctionFactor } from '../../src/kernel/electrics/temperature-correction.ts';
import { limitValue } from '../../src/kernel/limits.ts';
import { parseReading } from '../../src/kernel/reading/parse-reading.ts';
import { missing, volts } from '../../src/kernel/reading/reading.ts';

// Compares the words of these articles' worked examples with the calculators.

const halving = ({ ohms, celsius }: { ohms: number; celsius: number }) =>
  ohms * (correctionFactor('halving', celsius, limitValue('reference-temperature-routine')) ?? Number.NaN);
const error = limitValue('insulation-tester-error') / 100;

test('the DC bus: with one resistor open the label’s time is over before the bus is below the touch limit', () => {
  const { bus, after: at, oneOpen, minutesToTouch } = dcBus;
  const touch = limitValue('touch-voltage');
  expect(minutesToTouch(bus.ohms)).toBeLessThan(bus.labelMinutes);
  expect(minutesToTouch(oneOpen)).toBeGreaterThan(bus.labelMinutes);
  expect(at(bus.labelMinutes * 60, oneOpen)).toBeGreaterThan(touch);
  // The two readings of the story, and the third, four minutes after the second: 38 V, below the limit.
  expect(dcBus.read.atLabel / at(bus.labelMinutes * 60, oneOpen)).toBeCloseTo(1, 1);
  expect(at((bus.labelMinutes + 5) * 60, oneOpen)).toBeLessThan(touch);
});

test('the DC bus: from the two readings the calculator says that the bus is slower than its label, and never go', () => {
  const seconds = (value: number) => ({ kind: 'value', value, unit: 's' }) as const;
  // As typed: a minute noted as `1 min` may be off by half a minute.
  const typed = parseReading('60 s', 'seconds');
  if (!typed.ok) throw new Error('60 s is not read');
  const assessment = assessDischarge({
    startVoltage: volts(dcBus.bus.volts),
    capacitance: missing,
    capacitanceTolerance: missing,
    bleeder: missing,
    bleederTolerance: missing,
    timeConstant: missing,
    first: volts(dcBus.read.atLabel),
    second: volts(dcBus.read.later),
    elapsed: typed.reading,
    label: seconds(dcBus.bus.labelMinutes * 60),
  });
  expect(assessment.verdict).not.toBe('go');
  expect(assessment.findings.map(({ code }) => code)).toContain('slower-than-label');
});

test('motor and cable together: the parts, side by side, explain the joined reading', () => {
  expect(Math.abs(parallel([shown.cable, shown.motor]) / shown.motor - 1)).toBeLessThan(error);
});

test('baseline: corrected, the reading has fallen by far less, and still by more than both testers’ errors', () => {
  expect(before.ohms / after.ohms).toBeGreaterThan(10);
  expect(halving(before) / halving(after)).toBeLessThan(3);
  expect(halving(before) * (1 - error)).toBeGreaterThan(halving(after) * (1 + error));
});

/**
 * Two capacitors in series, one of them without its resistor: each half by itself, step by step, instead of the formula
 * that the figure uses.
 */
test('the DC bus: with one of two resistors in series open it stands at half', () => {
  const { bus, afterHalfOpen } = dcBus;
  const [farads, ohms] = [2 * bus.farads, bus.ohms / 2];
  const step = 0.01;
  let [withResistor, without] = [bus.volts / 2, bus.volts / 2];
  for (let second = 1; second <= 1200; second++) {
    for (let part = 0; part < 100; part++) withResistor -= ((withResistor / ohms) * step) / farads;
    if (second % 60 === 0) expect(afterHalfOpen(second)).toBeCloseTo(withResistor + without, 1);
  }
  without += withResistor;
  expect(without).toBeCloseTo(bus.volts / 2, 1);
  const stands = assessDischarge({
    ...{ startVoltage: volts(bus.volts, 1), capacitance: missing, capacitanceTolerance: missing, bleeder: missing },
    ...{ bleederTolerance: missing, timeConstant: missing, label: { kind: 'value', value: 300, unit: 's' } },
    first: volts(Math.round(afterHalfOpen(1140)), 1),
    second: volts(Math.round(afterHalfOpen(1200)), 1),
    elapsed: { kind: 'value', value: 60, unit: 's', resolution: 1 },
  });
  // Slower than its label as well, so that the readings prove it.
  expect(stands.verdict).toBe('no-go');
  expect(stands.findings.map(({ code }) => code)).toContain('stands-near-half');
  expect(stands.next.map(({ code }) => code)).toContain('treat-as-live');
});
