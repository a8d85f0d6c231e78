import { expect, test } from 'vitest';
import { betweenRows, room, visit, warm } from '../../content/articles/measuring/insulation-testing.example.ts';
import { bus } from '../../content/articles/safety/safe-measurement.example.ts';
import { dcMinus, dcPlus } from '../../content/articles/trip/causes-of-an-overcurrent-trip.example.ts';
import { assessBridge } from '../../src/calculators/bridge/rule/assess.ts';
import { suspectPositions } from '../../src/calculators/bridge/rule/suspect-positions.ts';
import { assessInsulation } from '../../src/calculators/insulation/rule/assess.ts';
import { assessIsolation } from '../../src/calculators/isolation/rule/assess.ts';
import { type CorrectionMethod, correctionMethods } from '../../src/kernel/electrics/correction-validity.ts';
import { dewPoint } from '../../src/kernel/electrics/dew-point.ts';
import { parallel } from '../../src/kernel/electrics/parallel-law.ts';
import { mapPhases } from '../../src/kernel/electrics/phases.ts';
import { correctionFactor } from '../../src/kernel/electrics/temperature-correction.ts';
import { limitValue } from '../../src/kernel/limits.ts';
import { celsius, missing, ohms, volts } from '../../src/kernel/reading/reading.ts';

// Compares the words of the articles' worked examples with the calculators.

const toOhms = (rail: typeof dcPlus) => mapPhases(rail, (value) => ohms(value));
const allAt = (value: number) => ({ U: ohms(value), V: ohms(value), W: ohms(value) });

test('causes of a trip: the stage has failed, and position 6 alone is suspect', () => {
  const bridge = assessBridge({
    busVoltage: volts(0),
    motorLeads: 'off',
    dcPlus: toOhms(dcPlus),
    dcMinus: toOhms(dcMinus),
  });
  expect(bridge.verdict).toBe('no-go');
  expect(suspectPositions(bridge.findings)).toEqual(['minusW']);
});

test('safe measurement: not discharged, then safe but false, then fit for a resistance reading', () => {
  const codes = [bus.early, bus.later, bus.last].map((voltage) => {
    const rail = toOhms(dcPlus);
    const { findings } = assessBridge({ busVoltage: volts(voltage), motorLeads: 'off', dcPlus: rail, dcMinus: rail });
    return findings[0]?.code;
  });
  expect(codes).toEqual(['bus-not-discharged', 'bus-residual-voltage', 'bus-discharged']);
});

test('insulation testing: the motor is bad, the cable proven good, and heat is no excuse', () => {
  const isolation = assessIsolation({
    joined: { ...allAt(visit.joined), PE: ohms(0.2) },
    cable: { ...allAt(visit.cable), PE: ohms(visit.cable) },
    bonded: allAt(visit.bonded),
    motor: { ...allAt(visit.motor), PE: ohms(0.2) },
    moreOfMotor: { again: ohms(visit.again), dried: 'yes', sister: ohms(visit.before) },
    idleCores: 'to-pe',
    cableEndsChecked: true,
    suspectedAnyway: false,
    testVoltage: volts(limitValue('test-voltage-lowest') * 2),
    windingTemperature: celsius(visit.celsius),
    correction: 'halving',
  });
  expect(isolation.parts).toMatchObject({
    motor: 'proven-bad',
    cable: 'proven-good',
    protectiveConductor: 'proven-good',
  });
  expect(isolation.next.map(({ code }) => code)).toContain('replace-motor');
});

test('insulation testing: the parts, side by side, explain the joined reading within the tester’s error', () => {
  const difference = Math.abs(parallel([visit.cable, visit.motor]) / visit.joined - 1) * 100;
  expect(difference).toBeLessThan(limitValue('insulation-tester-error'));
});

test('insulation testing: the routine minimum would have passed the same motor', () => {
  expect(visit.motor).toBeGreaterThan(limitValue('ieee43-minimum-random-wound'));
});

// Worked by hand from the published rules: 2^(42/10), the two exponentials, the rows at 60 and 65 °C.
test('insulation testing: on the invented warm motor the methods differ as the text says', () => {
  const at = (method: CorrectionMethod) => warm.reading * (correctionFactor(method, warm.celsius, 20) ?? Number.NaN);
  expect(warm).toEqual({ reading: 12e6, celsius: 62 });
  expect(at('halving')).toBeCloseTo(12e6 * 2 ** 4.2, 0);
  expect(at('table')).toBeCloseTo(12e6 * 6.4 * (8.7 / 6.4) ** 0.4, 0);
  expect(at('thermosetting')).toBeCloseTo(12e6 * Math.exp(4230 * (1 / 313 - 1 / 335) - 1245 * (1 / 313 - 1 / 293)), 0);
  const point = limitValue('after-trip-point');
  expect([at('halving'), at('table'), at('thermosetting')].map((ohms) => ohms >= point)).toEqual([true, false, false]);
  const verdicts = correctionMethods.map((correction) => {
    const { verdict } = assessInsulation({
      occasion: 'after-trip',
      readings: allAt(warm.reading),
      pe: ohms(0.2),
      testVoltage: volts(500),
      ratedVoltage: volts(400),
      windingTemperature: celsius(warm.celsius),
      ambient: missing,
      humidity: missing,
      testMinutes: missing,
      machineClass: 'random-wound',
      correction,
    });
    return verdict;
  });
  expect(verdicts).toEqual(['undecided', 'undecided', 'undecided']);
});

test('insulation testing: an interpolated factor lies between those of the rows beside it', () => {
  const at = (temperature: number) => correctionFactor('table', temperature, 20) ?? Number.NaN;
  expect(at(betweenRows.celsius)).toBeGreaterThan(at(30));
  expect(at(betweenRows.celsius)).toBeLessThan(at(35));
});

// 25 °C and 50 % give 13.9 °C: common dew-point tables (recalled).
test('insulation testing: the dew point of the example room', () => {
  expect(dewPoint(room.celsius, room.humidity)).toBeCloseTo(13.9, 1);
});
