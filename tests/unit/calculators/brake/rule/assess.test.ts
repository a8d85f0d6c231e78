import { describe, expect, it } from 'vitest';
import { brakeFindings } from '../../../../../src/calculators/brake/words.ts';
import {
  celsius,
  metres,
  missing,
  ohms,
  overOhms,
  underOhms,
  volts,
  watts,
} from '../../../../../src/kernel/reading/reading.ts';
import { sentenceOf } from '../../../../../src/kernel/words/sentences.ts';
import { found } from '../../../../support/found.ts';
import { assess, type Change } from './sound.ts';

// Ohms of a coil: U²/P. Copper: NBS Handbook 100. Cores: IEC 60228. The tolerances are common practice or judgement.

const codes = (change: Change) => assess(change).findings.map(({ code }) => code);
const atDriveOnly = { atMotor: missing };
const fine: Change = { ratedWatts: missing, ratedOhms: ohms(768), sourceVolts: missing };

it('a path to PE and too much voltage explain no brake that stays shut', () => {
  for (const change of [{ toPe: ohms(1000) }, { plugVolts: volts(40) }]) {
    expect(assess({ ...change, release: 'shut' })).toMatchObject({ verdict: 'no-go', cause: 'unknown' });
  }
});

it('with the voltage right at the plug, what takes none of it explains no brake that stays shut', () => {
  // Half of the turns take twice the current: the ampere turns stay.
  for (const change of [{ atMotor: ohms(24), atDrive: missing }, { atDrive: ohms(30) }, { atDrive: ohms(60) }]) {
    expect(assess({ ...change, release: 'shut' })).toMatchObject({ verdict: 'no-go', cause: 'unknown' });
  }
  const high: Change = { atMotor: ohms(90), atDrive: missing, release: 'shut' };
  expect(assess(high).cause).toBe('coil');
  expect(assess({ atDrive: ohms(60), plugVolts: missing, release: 'shut' }).cause).toBe('cores');
});

it('a path says what it does: only one to a phase brings the bus voltage', () => {
  const said = (change: Change) => sentenceOf(brakeFindings, found(assess(change).findings, 'brake-core-path'));
  expect(said({ toPhases: ohms(1000) })).toContain('bus voltage');
  expect(said({ toPe: ohms(1000) })).not.toContain('bus voltage');
  expect(said({ toPe: ohms(1000) })).toContain('may open by itself');
  expect(said({ coresApart: ohms(1000) })).not.toContain('bus voltage');
});

describe('brakes worked out by hand', () => {
  const rows: [what: string, Change, verdict: string, code: string, step?: string][] = [
    ['sound', {}, 'go', 'brake-coil-fits'],
    // 58 Ω at 75 °C are 58 · 254.5 / 309.5 = 47.7 Ω at 20 °C.
    [
      'warm and sound',
      { atMotor: ohms(58), atDrive: ohms(58.9), coilTemperature: celsius(75) },
      'go',
      'brake-coil-fits',
    ],
    // 0.05 kΩ may be 45 to 55 Ω, and 0.0 kΩ anything up to 100 Ω.
    ['a coil read in kilohms', { atMotor: ohms(50, 10), atDrive: missing }, 'undecided', 'brake-coil-too-close'],
    ['a coil that reads 0.0 kΩ', { atMotor: ohms(0, 100), atDrive: missing }, 'undecided', 'brake-coil-too-close'],
    // The same 58 Ω at 20 °C are 21 % too much: more than ten, less than 25.
    [
      'the same ohms cold',
      { atMotor: ohms(58), atDrive: missing },
      'undecided',
      'brake-coil-too-close',
      'repeat-coil-with-care',
    ],
    [
      'half of the turns shorted',
      { atMotor: ohms(24), atDrive: ohms(24.8) },
      'no-go',
      'brake-coil-low',
      'replace-coil',
    ],
    ['a bad joint in the coil', { atMotor: ohms(66), atDrive: ohms(66.8) }, 'no-go', 'brake-coil-high'],
    ['open at the motor', { atMotor: overOhms(), atDrive: overOhms() }, 'no-go', 'brake-coil-open', 'replace-coil'],
    // 768 Ω are 960 Ω with a quarter more.
    [
      'OL of a coil of 768 Ω, its range not noted',
      { ...fine, atMotor: overOhms(), atDrive: missing },
      'undecided',
      'brake-coil-over-range',
      'note-range',
    ],
    [
      'over 2 kΩ of a coil of 768 Ω',
      { ...fine, atMotor: overOhms(2000), atDrive: missing },
      'no-go',
      'brake-coil-open',
    ],
    [
      'OL through the cable of a coil of 768 Ω',
      { ...fine, atMotor: ohms(768), atDrive: overOhms() },
      'undecided',
      'brake-coil-over-range',
      'note-range',
    ],
    ['bus not measured', { busVoltage: missing }, 'undecided', 'bus-not-measured', 'measure-bus'],
    [
      'bus charged',
      { busVoltage: volts(320), toPe: ohms(0) },
      'undecided',
      'bus-not-discharged',
      'wait-and-measure-bus',
    ],
    ['bus left with 2 V', { busVoltage: volts(-2) }, 'undecided', 'bus-residual-voltage', 'wait-and-measure-bus'],
    ['plug still on', { leads: 'connected', toPe: ohms(0) }, 'undecided', 'brake-leads-connected', 'take-leads-off'],
    ['leads not stated', { leads: 'not-stated' }, 'undecided', 'brake-leads-not-stated', 'take-leads-off'],
    ['leads not stated, a path', { leads: 'not-stated', toPe: ohms(0) }, 'no-go', 'brake-core-path'],
    ['bus not measured, it stays shut', { busVoltage: missing, release: 'shut' }, 'no-go', 'brake-stays-shut'],
    ['open at the drive only', { atDrive: overOhms() }, 'no-go', 'brake-core-open', 'separate-cable'],
    // 600 Ω of wet connector beside 47.6 Ω are 44.1 Ω, 7 % less; 45.4 Ω are 4.6 % less, 4.8 % by their last digits.
    ['water in the connector', { atDrive: ohms(44.1, 0.1) }, 'undecided', 'brake-cores-below', 'separate-cable'],
    ['a coil that cooled by ten kelvins', { atDrive: ohms(45.4, 0.1) }, 'go', 'brake-cores-fit'],
    ['low through the cable', { atDrive: ohms(30) }, 'no-go', 'brake-cores-touch', 'separate-cable'],
    // 3.5 Ω more: beyond 0.78 · 1.25 + 2 = 2.975 Ω.
    ['a contact on the way', { atDrive: ohms(51.1, 0.1) }, 'no-go', 'brake-cores-high', 'separate-cable'],
    // 90² / 10 are 810 Ω: 6 Ω more than 812 Ω are the coil 2 K warmer.
    [
      'two readings of a coil of many ohms',
      {
        ...{ ratedVolts: volts(90), ratedWatts: watts(10), plugVolts: volts(89), sourceVolts: missing },
        ...{ atMotor: ohms(812, 1), atDrive: ohms(818, 1) },
      },
      'undecided',
      'brake-cores-too-close',
    ],
    // 2 Ω more: above 1.275 Ω, below 2.975 Ω.
    ['perhaps a contact', { atDrive: ohms(49.6, 0.1) }, 'undecided', 'brake-cores-too-close'],
    ['cable not stated', { cable: { metres: missing } }, 'undecided', 'brake-cable-not-stated', 'state-brake-cable'],
    ['through the cable only', atDriveOnly, 'go', 'brake-coil-fits'],
    [
      'through a cable nobody knows',
      { ...atDriveOnly, cable: { metres: missing } },
      'undecided',
      'brake-cable-not-stated',
    ],
    [
      'no temperature',
      { coilTemperature: missing },
      'undecided',
      'brake-coil-temperature-missing',
      'measure-coil-temperature',
    ],
    // Even at 180 °C, 414.5 / 254.5 times, 5 Ω are no coil of 48 Ω; even at −20 °C they stay below 6 Ω.
    [
      'no temperature, far too low',
      { coilTemperature: missing, atMotor: ohms(5), atDrive: ohms(5.8) },
      'no-go',
      'brake-coil-low',
    ],
    ['a core to a phase', { toPhases: ohms(4000) }, 'no-go', 'brake-core-path', 'separate-cable'],
    ['a core to PE, under range', { toPe: underOhms(200) }, 'no-go', 'brake-core-path'],
    ['over range of a range not noted', { coresApart: overOhms() }, 'undecided', 'brake-core-unclear', 'note-range'],
    ['cores not measured', { toPe: missing }, 'undecided', 'brake-cores-not-measured', 'measure-brake-cores'],
    // 15 V of 24 V are 37.5 % too little.
    [
      'too little voltage',
      { plugVolts: volts(15), sourceVolts: volts(16) },
      'no-go',
      'brake-supply-low',
      'find-feed-fault',
    ],
    [
      'between the marks',
      { plugVolts: volts(20), sourceVolts: missing },
      'undecided',
      'brake-supply-too-close',
      'ask-brake-manual',
    ],
    [
      'the manual allows it',
      { plugVolts: volts(20), sourceVolts: missing, supplyTolerance: { kind: 'value', value: 20, unit: '%' } },
      'go',
      'brake-supply-fits',
    ],
    [
      'no manual allows half',
      { plugVolts: volts(12), sourceVolts: missing, supplyTolerance: { kind: 'value', value: 60, unit: '%' } },
      'no-go',
      'brake-supply-low',
    ],
    ['too much voltage', { plugVolts: volts(33), sourceVolts: missing }, 'no-go', 'brake-supply-high'],
    // The cores take at most 24.1 / 36 · 2.975 = 1.99 V, and two readings differ by 0.48 V and their digits, 0.1 V.
    ['lost on the way', { plugVolts: volts(21.5, 0.1) }, 'no-go', 'brake-drop-high', 'find-drop'],
    ['perhaps lost on the way', { plugVolts: volts(21.6, 0.1) }, 'undecided', 'brake-drop-unclear', 'measure-supply'],
    ['what the cores take', { plugVolts: volts(22.2, 0.1) }, 'go', 'brake-drop'],
    [
      'not measured live',
      { plugVolts: missing, sourceVolts: missing },
      'undecided',
      'brake-supply-missing',
      'measure-supply',
    ],
    // 24.1 · 48 / (48 + 1.275) = 23.5 V.
    ['at the source only, cores measured', { plugVolts: missing }, 'go', 'brake-supply-fits'],
    [
      'at the source only, cores not measured',
      { plugVolts: missing, atDrive: missing },
      'undecided',
      'brake-supply-missing',
    ],
    ['plug above its source', { plugVolts: volts(26), sourceVolts: volts(22) }, 'undecided', 'brake-drop-contradicts'],
    [
      'electronics',
      { circuit: 'electronics', atMotor: overOhms() },
      'undecided',
      'brake-electronics',
      'ask-brake-manual',
    ],
    [
      'circuit not stated',
      { circuit: 'not-stated', atMotor: overOhms() },
      'undecided',
      'brake-circuit-not-stated',
      'look-between',
    ],
    ['axis not held', { axis: 'not-held' }, 'undecided', 'brake-axis-not-held', 'support-axis-first'],
    ['axis not stated', { axis: 'not-stated' }, 'undecided', 'brake-axis-not-stated', 'support-axis-first'],
    ['no plate', { ratedWatts: missing }, 'undecided', 'brake-plate-missing', 'read-plate'],
    ['ohms by the plate, no volts', { ratedVolts: missing, ratedOhms: ohms(48) }, 'undecided', 'brake-plate-missing'],
    ['a plate that contradicts itself', { ratedOhms: ohms(96) }, 'undecided', 'brake-plate-contradicts', 'read-plate'],
    ['not tried', { release: 'not-tried' }, 'undecided', 'brake-release-not-tried', 'listen-to-release'],
    ['no coil reading', { atMotor: missing, atDrive: missing }, 'undecided', 'brake-coil-missing', 'measure-coil'],
    [
      'mains through a rectifier',
      { ratedVolts: volts(96), ratedWatts: watts(192), plugVolts: volts(95), sourceVolts: missing },
      'go',
      'brake-not-extra-low',
    ],
  ];
  it.each(rows)('%s', (_, change, verdict, code, step) => {
    const { verdict: given, findings, next } = assess(change);
    expect([given, findings.map((one) => one.code)]).toEqual([verdict, expect.arrayContaining([code])]);
    if (step !== undefined) expect(next.map((one) => one.code)).toContain(step);
  });

  it('an axis that may fall stops everything: nothing else is judged', () => {
    expect(codes({ axis: 'not-held', toPe: ohms(0) })).toEqual(['brake-axis-not-held']);
  });

  it('a charged bus stops everything', () => {
    expect(codes({ busVoltage: volts(320), toPe: ohms(0), release: 'shut' })).toEqual(['bus-not-discharged']);
  });

  it('without a dead bus, or with plug or leads on, only voltage and release are judged', () => {
    for (const change of [{ busVoltage: missing }, { busVoltage: volts(2) }, { leads: 'connected' as const }]) {
      const said = codes({ ...change, atMotor: overOhms(), toPe: ohms(0), release: 'shut', plugVolts: volts(9) });
      expect(said.filter((code) => /^brake-(coil|core)/.test(code))).toEqual([]);
      expect(said).toEqual(expect.arrayContaining(['brake-supply-low', 'brake-stays-shut']));
    }
  });
});

describe('why it does not open', () => {
  const rows: [Change, string][] = [
    [{}, 'brake'],
    [{ atMotor: overOhms(), atDrive: overOhms() }, 'coil'],
    [{ atDrive: overOhms() }, 'cores'],
    [{ plugVolts: volts(9), sourceVolts: missing }, 'supply'],
    [{ plugVolts: missing, sourceVolts: missing }, 'unknown'],
    [{ circuit: 'electronics' }, 'unknown'],
    [{ toPe: missing }, 'unknown'],
    // All three pass, and something is open all the same.
    [{ leads: 'not-stated' }, 'unknown'],
    [{ plugVolts: volts(25), sourceVolts: volts(22) }, 'unknown'],
  ];
  it.each(rows)('%j', (change, cause) => {
    for (const release of ['shut', 'drags'] as const) {
      const assessment = assess({ ...change, release });
      expect(assessment.verdict).toBe('no-go');
      expect(assessment.cause).toBe(cause);
      expect(assessment.next.some(({ code }) => code === 'have-brake-tested')).toBe(cause === 'brake');
    }
  });

  it('says no cause of a brake that opens', () => {
    expect(assess({}).cause).toBeUndefined();
  });
});

it('the figures of the sentences', () => {
  expect(
    found(assess({ coilTemperature: celsius(75), atMotor: ohms(58) }).findings, 'brake-coil-fits').ohms,
  ).toBeCloseTo(47.7, 1);
  // 24 · 0.78 / 48.78 V.
  const drop = found(assess({}).findings, 'brake-drop-expected');
  expect(drop.volts).toBeCloseTo(0.38376, 5);
  expect(drop.percent).toBeCloseTo(1.599, 3);
  expect(drop.severity).toBe('note');
  const thin = assess({ ratedWatts: watts(40), cable: { metres: metres(60), squareMillimetres: 0.75 } });
  expect(found(thin.findings, 'brake-drop-expected').severity).toBe('caution');
});
