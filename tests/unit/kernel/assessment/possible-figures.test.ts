import { describe, expect, it } from 'vitest';
import { assessAbsorption } from '../../../../src/calculators/absorption/rule/assess.ts';
import { assessBendTest } from '../../../../src/calculators/bend-test/rule/assess.ts';
import { assessBrake } from '../../../../src/calculators/brake/rule/assess.ts';
import { assessBrakingCircuit } from '../../../../src/calculators/braking-circuit/rule/assess.ts';
import { assessBridge, type BridgeInput } from '../../../../src/calculators/bridge/rule/assess.ts';
import { assessBridgeDiode } from '../../../../src/calculators/bridge-diode/rule/assess.ts';
import { assessCableLength } from '../../../../src/calculators/cable-length/rule/assess.ts';
import { assessCore } from '../../../../src/calculators/core-resistance/rule/assess.ts';
import { assessDischarge } from '../../../../src/calculators/discharge/rule/assess.ts';
import { assessInputCircuit } from '../../../../src/calculators/input-circuit/rule/assess.ts';
import { assessInsulation } from '../../../../src/calculators/insulation/rule/assess.ts';
import { assessIsolation } from '../../../../src/calculators/isolation/rule/assess.ts';
import { assessTestVoltage } from '../../../../src/calculators/test-voltage/rule/assess.ts';
import { assessTrend } from '../../../../src/calculators/trend/rule/assess.ts';
import type { TrendInput, TrendRow } from '../../../../src/calculators/trend/rule/input.ts';
import { assessWinding } from '../../../../src/calculators/winding/rule/assess.ts';
import { judgeDischarge } from '../../../../src/kernel/assessment/bus-discharge.ts';
import { impossibleFigures, isPossible } from '../../../../src/kernel/assessment/possible-figures.ts';
import { judgePe } from '../../../../src/kernel/assessment/protective-conductor.ts';
import {
  celsius,
  missing,
  ohms,
  overOhms,
  type Reading,
  underOhms,
  volts,
} from '../../../../src/kernel/reading/reading.ts';
import { found } from '../../../support/found.ts';

const absurd = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];

describe('what an instrument can have shown', () => {
  const rows: [string, Reading, boolean][] = [
    ['nothing', missing, true],
    ['zero', ohms(0, 0.1), true],
    ['a negative resistance', ohms(-1), false],
    ['an endless step of the display', ohms(1, Number.POSITIVE_INFINITY), false],
    ['a step that is no number', ohms(1, Number.NaN), false],
    ['over-range without a range', overOhms(), true],
    ['over-range of no number', overOhms(Number.NaN), false],
    ['under-range below zero', underOhms(-1), false],
    ['frost', celsius(-20), true],
    ['degrees that are no number', celsius(Number.NaN), false],
    ['a percentage of 101', { kind: 'value', value: 101, unit: '%' }, false],
    ['another kind of thing', { kind: 'guess', value: 3 } as unknown as Reading, false],
  ];
  it.each(rows)('%s', (_, reading, possible) => {
    expect(isPossible(reading)).toBe(possible);
  });

  it('a voltage below zero only if the sign shows the polarity of the leads', () => {
    expect(isPossible(volts(-3), true)).toBe(true);
    expect(isPossible(volts(-3))).toBe(false);
    expect(isPossible(ohms(-3), true)).toBe(false);
  });

  it('names every place', () => {
    const input = {
      bus: volts(-1),
      rail: { U: ohms(1), V: ohms(-1) },
      meter: { percent: 101, counts: 2 },
      tolerancePercent: -1,
    };
    const [found, ...more] = impossibleFigures(input, ['bus']);
    expect(found).toMatchObject({ severity: 'undecided', readings: ['rail.V', 'meter.percent', 'tolerancePercent'] });
    expect(more).toEqual([]);
    expect(impossibleFigures({ bus: volts(1) })).toEqual([]);
  });
});

describe('every assessment refuses impossible figures first, and says so', () => {
  const three = { U: ohms(5e8), V: ohms(5e8), W: ohms(5e8) };
  const drops = { U: volts(0.4), V: volts(0.4), W: volts(0.4) };
  const side = { forward: drops, reverse: { U: volts(1.8), V: volts(1.8), W: volts(1.8) } };
  const bridge: BridgeInput = { busVoltage: volts(0), motorLeads: 'off', dcPlus: three, dcMinus: three };
  const dead = { bus: missing, time: missing };
  const all: [
    string,
    (wrong: number) => { verdict: string; findings: { code: string }[]; next: { code: string }[] },
  ][] = [
    ['bridge', (wrong) => assessBridge({ ...bridge, busVoltage: volts(wrong) })],
    ['bridge, tolerance', (wrong) => assessBridge({ ...bridge, tolerancePercent: wrong })],
    ['bridge, accuracy', (wrong) => assessBridge({ ...bridge, instrument: { percent: wrong } })],
    [
      'diode',
      (wrong) =>
        assessBridgeDiode({ ...bridge, steadiness: 'steady', plus: side, minus: side, busVoltage: volts(wrong) }),
    ],
    [
      'insulation',
      (wrong) =>
        assessInsulation({
          ...{
            occasion: 'after-trip',
            readings: three,
            pe: ohms(0.1),
            testVoltage: volts(500),
            ratedVoltage: volts(wrong),
          },
          ...{ windingTemperature: celsius(20), ambient: missing, humidity: missing, testMinutes: missing },
          ...{ machineClass: 'random-wound', correction: 'halving' },
        }),
    ],
    [
      'isolation',
      (wrong) =>
        assessIsolation({
          ...{ joined: { ...three, PE: ohms(0.1) }, cableEndsChecked: true, suspectedAnyway: false },
          ...{ testVoltage: volts(500), windingTemperature: celsius(wrong), correction: 'halving' },
        }),
    ],
    ['winding', (wrong) => assessWinding({ readings: { UV: ohms(2), VW: ohms(2), WU: ohms(wrong) }, leads: 'four' })],
    [
      'absorption',
      (wrong) =>
        assessAbsorption({
          readings: { 60: ohms(2e8), 600: ohms(wrong) },
          windingKind: 'form-wound',
          thermalClass: 'A',
          temperature: missing,
        }),
    ],
    [
      'discharge',
      (wrong) =>
        assessDischarge({
          ...{ startVoltage: volts(wrong), capacitance: missing, capacitanceTolerance: missing, bleeder: missing },
          ...{
            bleederTolerance: missing,
            timeConstant: dead.time,
            first: dead.bus,
            second: dead.bus,
            elapsed: missing,
            label: missing,
          },
        }),
    ],
    [
      'test voltage',
      (wrong) =>
        assessTestVoltage({ object: 'wiring', rated: volts(wrong), drive: 'off', sensitive: 'off', set: volts(500) }),
    ],
    [
      'cable length',
      (wrong) =>
        assessCableLength({
          ...{
            insulation: 'pvc',
            length: { kind: 'value', value: 20, unit: 'm' },
            temperature: celsius(20),
            reading: ohms(wrong),
          },
          ...{
            insulationDiameter: { kind: 'value', value: 4, unit: 'mm' },
            conductorDiameter: { kind: 'value', value: 2, unit: 'mm' },
          },
        }),
    ],
    [
      'braking circuit',
      (wrong) =>
        assessBrakingCircuit({
          ...{ busVoltage: volts(0), plate: ohms(47), plateTolerance: missing, ohms: ohms(wrong), lead: 'steady' },
          ...{ toHousing: ohms(2e7), insulation: ohms(2e8), thermal: 'none', thermalOhms: missing, again: false },
          ...{ upperConducting: volts(0.5), upperBlocking: overOhms(), lowerConducting: volts(0.5) },
          lowerBlocking: overOhms(),
        }),
    ],
    [
      'input circuit',
      (wrong) => {
        const row = { L1: missing, L2: missing, L3: missing };
        return assessInputCircuit({
          ...{ busVoltage: volts(0), supplyLeads: 'off', others: 'off', lines: 'three', climb: 'climbs', again: false },
          ...{ fuses: { ...row, L3: ohms(wrong) }, plusConducting: row, plusBlocking: row, minusConducting: row },
          ...{ minusBlocking: row, linkConducting: missing, linkBlocking: missing },
          ...{ precharge: 'none', prechargePlate: missing, prechargeOhms: missing },
        });
      },
    ],
    [
      'core resistance',
      (wrong) =>
        assessCore({
          ...{ way: 'pe', end: 'off', meter: 'four-leads', metres: missing, squareMillimetres: 1 },
          ...{ reading: ohms(wrong), temperature: missing },
        }),
    ],
    [
      'bend test',
      (wrong) => {
        const sweep = { rest: missing, lowest: missing, highest: ohms(wrong), after: missing };
        const power = { UV: sweep, VW: sweep, WU: sweep, PE: sweep };
        const loops = { ...power, screen: sweep, brake: sweep, sensor: sweep, feedback: sweep };
        return assessBendTest({
          ...{ end: 'off', meter: 'hold', moved: 'twice', screen: 'none', idle: 'none', movedAgain: 'not-stated' },
          ...{ loops, again: loops, whileOn: 'at-rest', testVoltage: volts(500), positions: [three], badAgain: three },
          metres: missing,
        });
      },
    ],
    [
      'brake',
      (wrong) =>
        assessBrake({
          ...{
            axis: 'held',
            busVoltage: volts(0),
            leads: 'off',
            circuit: 'plain',
            release: 'opens',
            coilTemperature: celsius(wrong),
          },
          ...{ ratedVolts: volts(24), ratedWatts: missing, ratedOhms: ohms(48), atMotor: ohms(48), atDrive: missing },
          ...{ coresApart: ohms(2e7), toPhases: ohms(2e7), toPe: ohms(2e7), plugVolts: volts(24) },
          ...{ sourceVolts: missing, supplyTolerance: missing, cable: { metres: missing } },
        }),
    ],
    ['trend', (wrong) => assessTrend(record([wrong, 2e8, 2e8, 2e8, 2e8, 2e8, 2e8]))],
  ];

  it.each(all)('%s', (_, assess) => {
    for (const wrong of absurd) {
      const { verdict, findings, next } = assess(wrong);
      expect(verdict).toBe('undecided');
      expect(findings.map(({ code }) => code)).toEqual(['figure-impossible']);
      expect(next.map(({ code }) => code)).toContain('read-figure-again');
    }
  });

  it('an unknown statement counts as not made', () => {
    const unknown = 'perhaps' as 'off';
    expect(assessBridge({ ...bridge, motorLeads: unknown }).findings.map(({ code }) => code)).toContain(
      'motor-leads-not-stated',
    );
    const test = { object: 'wiring', rated: volts(400), sensitive: 'off', set: volts(500) } as const;
    expect(assessTestVoltage({ ...test, drive: 'off' }).verdict).toBe('go');
    expect(assessTestVoltage({ ...test, drive: unknown }).verdict).toBe('undecided');
    expect(assessTestVoltage({ ...test, drive: 'off', sensitive: unknown }).verdict).toBe('undecided');
  });

  it('a charged bus is reported first if a diode reading is below zero beside an impossible figure', () => {
    const plus = { ...side, forward: { ...drops, U: { kind: 'under', unit: 'V', atMost: -0.2 } as Reading } };
    const { findings } = assessBridgeDiode({ ...bridge, steadiness: 'steady', plus, minus: side });
    expect(findings.map(({ code }) => code)).toEqual(['figure-impossible', 'diode-negative']);
  });
});

describe('what is judged by itself fails closed too', () => {
  it.each([...absurd, -60])('a bus of %d V is not discharged', (voltage) => {
    expect(judgeDischarge(volts(voltage)).severity).not.toBe('pass');
  });

  it('nor is one that was read below a negative bound', () => {
    expect(judgeDischarge({ kind: 'under', unit: 'V', atMost: -400 }).severity).toBe('stop');
  });

  it.each([...absurd, -1])('a PE of %d Ω is not a short', (resistance) => {
    expect(judgePe(ohms(resistance))).toBe('not-proven');
  });
});

function record(values: (number | Reading)[], step = 365): TrendInput {
  const rows = values.map(
    (value, index): TrendRow => ({
      ...{ line: index + 1, cells: [], day: 15_000 + index * step, temperature: celsius(40) },
      reading: typeof value === 'number' ? ohms(value) : value,
    }),
  );
  return {
    table: { rows, keptOut: [], unused: [] },
    correction: 'halving',
    machineClass: 'random-wound',
    ratedVoltage: missing,
  };
}

describe('a trend', () => {
  const sound = [3e8, 3.1e8, 3e8, 2.9e8, 3e8, 3.1e8, 3e8];

  it('is go unchanged', () => {
    expect(assessTrend(record(sound)).verdict).toBe('go');
  });

  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('with a reading of %d Ω ends, and is not go', (value) => {
    for (const at of [0, 3, 6]) expect(assessTrend(record(sound.with(at, value))).verdict).not.toBe('go');
  });

  it('with a reading of 0 Ω is judged as with less than an ohm: no-go if newest, undecided if earlier', () => {
    const verdicts = [0, 3, 6].map((at) => {
      const zero = assessTrend(record(sound.with(at, 0)));
      const input = record(sound);
      const rows = input.table.rows.map((row, index) => (index === at ? { ...row, reading: underOhms(1) } : row));
      expect(zero).toEqual(assessTrend({ ...input, table: { ...input.table, rows } }));
      expect(zero.findings).toContainEqual(expect.objectContaining({ code: 'trend-under-range' }));
      return zero.verdict;
    });
    expect(verdicts).toEqual(['undecided', 'undecided', 'no-go']);
  });

  it.each([5e-324, 1e-300, Number.MAX_VALUE])('with readings of %d Ω ends', (value) => {
    for (const at of [0, 3, 6]) expect(assessTrend(record(sound.with(at, value))).verdict).toBeDefined();
    expect(assessTrend(record(sound.map((one, index) => (index % 2 ? one : value)))).verdict).not.toBe('go');
  });

  it.each(absurd)('with a day or a today of %d is not go', (day) => {
    const input = record(sound);
    const rows = input.table.rows.map((row, index) => (index === 2 ? { ...row, day } : row));
    expect(assessTrend({ ...input, table: { ...input.table, rows } }).verdict).toBe('undecided');
    expect(assessTrend({ ...input, today: day }).verdict).toBe('undecided');
    expect(
      assessTrend({
        ...input,
        table: { ...input.table, keptOut: [{ line: 9, cells: [], code: 'reading-missing', day }] },
      }).verdict,
    ).toBe('undecided');
  });

  it('excludes a row without a figure, and is not go if it is the newest', () => {
    for (const reading of [missing, overOhms(), underOhms()]) {
      const { verdict, keptOut, findings } = assessTrend(record([...sound, reading]));
      expect(verdict).toBe('undecided');
      expect(keptOut).toHaveLength(1);
      expect(findings.map(({ code }) => code)).toContain('trend-newest-kept-out');
    }
  });

  it('is not go if one of two readings of the last day is cleared', () => {
    const input = record([...sound, 1e6, 3e8]);
    const rows = input.table.rows.map((row, index) => ({ ...row, day: index < 7 ? row.day : 17_600 + index / 100 }));
    const withRows = (changed: TrendRow[]) =>
      assessTrend({ ...input, table: { ...input.table, rows: changed } }).verdict;
    expect(withRows(rows)).toBe('no-go');
    expect(withRows(rows.map((row, index) => (index === 7 ? { ...row, reading: missing } : row)))).toBe('undecided');
  });

  it('is not go if a reading is dated after today', () => {
    const input = record(sound);
    const last = input.table.rows.at(-1)?.day ?? 0;
    expect(assessTrend({ ...input, today: last }).verdict).toBe('go');
    const { verdict, keptOut } = assessTrend({ ...input, today: last - 30 });
    expect(verdict).toBe('undecided');
    expect(keptOut.map(({ code }) => code)).toEqual(['date-in-future']);
  });

  it('cannot see a deleted row, so its go names the last reading behind it and ends a year later', () => {
    const whole = record([...sound, 4e6]);
    expect(assessTrend(whole).verdict).toBe('no-go');
    const left = record(sound);
    const { verdict, findings } = assessTrend(left);
    expect(verdict).toBe('go');
    const lastDay = left.table.rows.at(-1)?.day ?? 0;
    expect(found(findings, 'trend-holds-until').day).toBeCloseTo(lastDay + 365.25, 6);
    // A year is over on the day of the deleted reading and a little later.
    expect(assessTrend({ ...left, today: lastDay + 367 }).verdict).toBe('undecided');
  });

  it('stays contradicted by a bound after a lower last reading, which tilts the line above the bound', () => {
    const values = [314.4e6, 316.6e6, 315.4e6, 316.9e6, 318e6, 314.8e6, 321.7e6, 321.9e6];
    const verdict = (last: number) => assessTrend(record([overOhms(330e6), ...values, last])).verdict;
    expect(verdict(320e6)).toBe('undecided');
    expect(verdict(246e6)).toBe('undecided');
  });

  it('takes rows in any order', () => {
    const input = record([...sound, 1e6]);
    const reversed = { ...input, table: { ...input.table, rows: [...input.table.rows].reverse() } };
    expect(assessTrend(reversed).verdict).toBe('no-go');
  });
});
