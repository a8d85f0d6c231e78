import { expect, test } from 'vitest';
import * as bridge from '../../content/articles/measuring/bridge-check.example.ts';
import * as isolation from '../../content/articles/measuring/cable-or-motor.example.ts';
import * as limits from '../../content/articles/measuring/choosing-the-limit.example.ts';
import * as diode from '../../content/articles/measuring/diode-test.example.ts';
import * as sure from '../../content/articles/measuring/how-sure-is-a-reading.example.ts';
import * as trend from '../../content/articles/measuring/reading-a-trend.example.ts';
import * as mover from '../../content/articles/measuring/temperature-moisture-and-time.example.ts';
import * as winding from '../../content/articles/measuring/winding-resistance.example.ts';
import { assessBridge } from '../../src/calculators/bridge/rule/assess.ts';
import { suspectPositions } from '../../src/calculators/bridge/rule/suspect-positions.ts';
import { assessBridgeDiode } from '../../src/calculators/bridge-diode/rule/assess.ts';
import { assessCableLength } from '../../src/calculators/cable-length/rule/assess.ts';
import { assessInsulation } from '../../src/calculators/insulation/rule/assess.ts';
import { assessIsolation } from '../../src/calculators/isolation/rule/assess.ts';
import { assessWinding } from '../../src/calculators/winding/rule/assess.ts';
import type { Phases } from '../../src/kernel/electrics/phases.ts';
import type { Instrument } from '../../src/kernel/reading/interval.ts';
import { parseReading } from '../../src/kernel/reading/parse-reading.ts';
import type { Quantity } from '../../src/kernel/reading/quantity.ts';
import { celsius, missing, ohms, type Reading, volts } from '../../src/kernel/reading/reading.ts';
import { found } from '../support/found.ts';

// Compares the words of the worked examples of section "measuring" with the calculators.

const read = (text: string, quantity: Quantity): Reading => {
  const result = parseReading(text, quantity);
  if (!result.ok) throw new Error(text);
  return result.reading;
};
const toOhms = ({ U, V, W }: Phases<number>, resolution?: number) => {
  const one = (value: number): Reading => ({ ...ohms(value), ...(resolution && { resolution }) }) as Reading;
  return { U: one(U), V: one(V), W: one(W) };
};
const alike = (value: number) => toOhms({ U: value, V: value, W: value });

const bridgeOf = (dcPlus: Phases<Reading>, dcMinus: Phases<Reading>, instrument: Instrument = {}) =>
  assessBridge({ busVoltage: volts(0), motorLeads: 'off', dcPlus, dcMinus, instrument });

test('bridge check: with the leads on nothing is judged, with them off it is position 5 alone', () => {
  const plus = toOhms(bridge.dcPlus);
  const on = assessBridge({
    busVoltage: volts(0),
    motorLeads: 'connected',
    dcPlus: plus,
    dcMinus: toOhms(bridge.leadsOn),
  });
  expect(on.verdict).toBe('undecided');
  const off = bridgeOf(plus, toOhms(bridge.dcMinus));
  expect(off.verdict).toBe('no-go');
  expect(suspectPositions(off.findings)).toEqual(['minusV']);
  expect(off.findings.map(({ code }) => code)).toContain('rail-unbalanced-by-short');
});

test('diode test: a short at DC− and W', () => {
  const drops = ({ U, V, W }: Phases<number>) => ({ U: volts(U), V: volts(V), W: volts(W) });
  const open: Reading = { kind: 'over', unit: 'V' };
  const blocking = { U: open, V: open, W: open };
  const { verdict, findings } = assessBridgeDiode({
    busVoltage: volts(0),
    motorLeads: 'off',
    steadiness: 'steady',
    plus: { forward: drops(diode.forward.plus), reverse: blocking },
    minus: { forward: drops(diode.forward.minus), reverse: { ...blocking, W: volts(diode.forward.minus.W) } },
  } as Parameters<typeof assessBridgeDiode>[0]);
  expect(verdict).toBe('no-go');
  expect(suspectPositions(findings)).toEqual(['minusW']);
});

function insulation(reading: number, winding: number, air?: { air: number; humidity: number }) {
  return assessInsulation({
    occasion: 'after-trip',
    readings: alike(reading),
    idleCores: 'to-pe',
    pe: ohms(0.2),
    testVoltage: volts(500),
    ratedVoltage: volts(400),
    windingTemperature: celsius(winding),
    ambient: air ? celsius(air.air) : missing,
    humidity: air ? read(`${air.humidity} %`, 'percent') : missing,
    testMinutes: missing,
    machineClass: 'random-wound',
    correction: 'halving',
  }).verdict;
}

test('temperature, moisture and time: hot is undecided, cooled is go, wet is undecided', () => {
  expect(insulation(mover.hot.reading, mover.hot.celsius)).toBe('undecided');
  expect(insulation(mover.cooled.reading, mover.cooled.celsius)).toBe('go');
  expect(insulation(mover.cold.reading, mover.cold.celsius, mover.cold)).toBe('undecided');
});

test.each([
  ['the long run', limits.core.metres, 'undecided', 'cable-long-enough-to-explain'],
  ['the same reading of a servo cable', limits.servoMetres, 'no-go', 'cable-fails'],
])('choosing the limit: %s', (_, metres, verdict, code) => {
  for (const reading of Object.values(limits.runReadings)) {
    const found = assessCableLength({
      insulation: 'pvc',
      insulationDiameter: read(`${limits.core.outer.toFixed(1)} mm`, 'diameter'),
      conductorDiameter: read(`${limits.core.inner.toFixed(1)} mm`, 'diameter'),
      length: read(`${metres} m`, 'length'),
      reading: ohms(reading),
      temperature: celsius(limits.core.celsius),
    });
    expect(found.verdict).toBe(verdict);
    expect(found.findings.map((one) => one.code)).toContain(code);
  }
});

function isolated(bonded: Phases<Reading> | undefined) {
  const { joined, cable, motor, again, before, celsius: warm } = isolation.visit;
  const none = { U: missing, V: missing, W: missing };
  return assessIsolation({
    joined: { ...alike(joined), PE: ohms(0.2) },
    cable: { ...alike(cable), PE: ohms(cable) },
    bonded: bonded ?? none,
    motor: { ...alike(motor), PE: ohms(0.2) },
    moreOfCable: { again: ohms(again), dried: 'yes', sister: ohms(before) },
    idleCores: 'to-pe',
    filter: 'none',
    cableEndsChecked: true,
    suspectedAnyway: false,
    testVoltage: volts(500),
    windingTemperature: celsius(warm),
    correction: 'halving',
  });
}

test('cable or motor: the bonded row proves the cable bad and the motor good; without it the cable is not known', () => {
  const { cable, bonded } = isolation.visit;
  const whole = isolated(toOhms({ U: cable, V: cable, W: bonded }));
  expect(whole.parts).toMatchObject({ cable: 'proven-bad', motor: 'proven-good' });
  expect(isolated(undefined).parts.cable).not.toMatch(/proven/);
});

test('winding resistance: V is high in a star, and the mean fits the data sheet', () => {
  const { UV, VW, WU } = winding.atMotor;
  const { verdict, findings } = assessWinding({
    readings: { UV: ohms(UV), VW: ohms(VW), WU: ohms(WU) },
    leads: 'four',
    connection: 'star',
    temperature: celsius(winding.celsius),
    reference: ohms(winding.nameplate.value),
    referenceTemperature: celsius(winding.nameplate.celsius),
  });
  expect(verdict).toBe('no-go');
  expect(found(findings, 'winding-suspect-star')).toMatchObject({ name: 'V', side: 'high' });
  expect(findings.map(({ code }) => code)).toContain('winding-reference-matches');
});

test('a trend: the fall is undecided, and go once the cause is found', () => {
  expect(trend.dropped.verdict).toBe('undecided');
  expect(trend.dropped.findings.map(({ code }) => code)).toContain('trend-drop-open');
  expect(trend.dried.verdict).toBe('go');
  expect(trend.dried.keptOut).toEqual([]);
});

test('how sure: the simple meter can’t tell, the better one finds V odd and asks for a sister', () => {
  const plus = alike(700_000);
  const simple = bridgeOf(plus, toOhms(sure.rail, sure.steps.simple), sure.meters.simple);
  expect(simple.verdict).toBe('undecided');
  const better = bridgeOf(plus, toOhms(sure.better, sure.steps.better), sure.meters.better);
  expect(simple.findings.map(({ code }) => code)).toContain('rail-too-close');
  expect(found(better.findings, 'rail-uneven').odd).toEqual(['minusV']);
  expect(better.next.map(({ code }) => code)).toContain('compare-known-good');
});

test('how sure: the table of four says what the insulation calculator says', () => {
  for (const one of sure.spans) {
    const reading: Reading = { kind: 'value', value: one.value, unit: 'Ω', resolution: sure.resolution };
    const { verdict } = assessInsulation({
      occasion: 'after-trip',
      readings: { U: reading, V: reading, W: reading },
      idleCores: 'to-pe',
      pe: ohms(0.2),
      testVoltage: volts(500),
      ratedVoltage: volts(400),
      windingTemperature: celsius(20),
      ambient: missing,
      humidity: missing,
      testMinutes: missing,
      machineClass: 'random-wound',
      correction: 'halving',
      instrument: sure.tester,
    });
    expect(verdict).toBe(sure.verdictOf(one));
  }
});
