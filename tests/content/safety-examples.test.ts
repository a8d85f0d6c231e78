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
