import { describe, expect, it } from 'vitest';
import { brakingFindings } from '../../../../../src/calculators/braking-circuit/words.ts';
import { judgePair, type PairJudgement } from '../../../../../src/kernel/assessment/diode-pair.ts';
import { missing, ohms, overOhms, type Reading, volts } from '../../../../../src/kernel/reading/reading.ts';
import { sentenceOf } from '../../../../../src/kernel/words/sentences.ts';
import { assess, type Change, ol } from './sound.ts';

// Common practice, no source, but the machine's minimum of IEC 60204-1; figures worked out by hand from the plate.

const percent = (value: number): Reading => ({ kind: 'value', value, unit: '%' });
const shorted: Change = { lowerConducting: volts(0.002), lowerBlocking: volts(0.002) };

describe('braking circuits worked out by hand', () => {
  const rows: [what: string, Change, verdict: string, code: string, step?: string][] = [
    ['sound', {}, 'go', 'resistor-fits', 'measure-bus-again'],
    [
      'no thermal switch, and it reads open',
      { thermal: 'none', thermalOhms: overOhms() },
      'undecided',
      'thermal-not-stated',
    ],
    ['no thermal switch', { thermal: 'none', thermalOhms: missing }, 'go', 'thermal-none'],
    // 47 Ω · 0.9 = 42.3 Ω, · 0.75 = 35.25 Ω, · 1.1 = 51.7 Ω, · 1.25 = 58.75 Ω.
    // 0.05 kΩ may be 45 to 55 Ω.
    ['read in kilohms', { ohms: ohms(50, 10) }, 'undecided', 'resistor-too-close'],
    ['0.0 kΩ', { ohms: ohms(0, 100), again: true }, 'undecided', 'resistor-too-close'],
    ['thermal switch reads 0 kΩ', { thermalOhms: ohms(0, 1000) }, 'undecided', 'thermal-unclear'],
    ['at the lower edge', { ohms: ohms(42.4) }, 'go', 'resistor-fits'],
    ['low, not far', { ohms: ohms(42.2) }, 'undecided', 'resistor-too-close', 'read-at-resistor'],
    ['far too low', { ohms: ohms(35) }, 'no-go', 'resistor-low', 'read-twice'],
    ['far too high', { ohms: ohms(59) }, 'no-go', 'resistor-high', 'read-twice'],
    ['far too high, twice', { ohms: ohms(59), again: true }, 'no-go', 'resistor-high', 'replace-resistor'],
    ['a plate of five percent', { ohms: ohms(44), plateTolerance: percent(5) }, 'undecided', 'resistor-too-close'],
    ['no plate allows half', { ohms: ohms(24), plateTolerance: percent(60) }, 'no-go', 'resistor-low'],
    ['open', { ohms: overOhms() }, 'no-go', 'resistor-open'],
    ['open, plate not read', { ohms: overOhms(2e4), plate: missing }, 'no-go', 'resistor-open', 'read-resistor-plate'],
    ['OL, plate not read', { ohms: overOhms(), plate: missing }, 'undecided', 'resistor-over-range'],
    ['over a range that says nothing', { ohms: overOhms(20) }, 'undecided', 'resistor-over-range'],
    // 120 Ω · 1.25 = 150 Ω.
    ['OL of 120 Ω, its range not noted', { plate: ohms(120), ohms: overOhms() }, 'no-go', 'resistor-open'],
    [
      'OL of 121 Ω, its range not noted',
      { plate: ohms(121), ohms: overOhms() },
      'undecided',
      'resistor-over-range',
      'note-resistor-range',
    ],
    [
      'a lead that breaks in its clamp',
      { lead: 'jumps', again: true },
      'no-go',
      'resistor-lead-jumps',
      'read-at-resistor',
    ],
    ['lead not moved', { lead: 'not-stated' }, 'undecided', 'resistor-lead-not-stated', 'measure-resistor'],
    ['burnt to its housing', { toHousing: ohms(80_000) }, 'no-go', 'housing-path', 'read-twice'],
    ['a range too low', { toHousing: overOhms(200_000) }, 'undecided', 'housing-unclear', 'measure-housing'],
    ['breaks down at test voltage only', { insulation: ohms(300_000) }, 'no-go', 'housing-insulation-bad'],
    // One megohm without a decimal may be half of it.
    ['a megohm by a coarse digit', { insulation: ohms(1e6, 1e6) }, 'undecided', 'housing-insulation-unclear'],
    ['a megohm by a fine digit', { insulation: ohms(1.02e6, 1e4) }, 'go', 'housing-free'],
    ['not tested', { insulation: missing }, 'undecided', 'housing-insulation-missing', 'test-housing'],
    ['thermal switch tripped', { thermalOhms: overOhms(), again: true }, 'no-go', 'thermal-open', 'look-at-thermal'],
    ['thermal switch of 5 Ω', { thermalOhms: ohms(5) }, 'undecided', 'thermal-unclear', 'look-at-thermal'],
    ['a sensor', { thermal: 'other' }, 'undecided', 'thermal-other', 'look-at-thermal'],
    ['chopper shorted', shorted, 'no-go', 'chopper-short', 'read-twice'],
    ['chopper shorted, twice', { ...shorted, again: true }, 'no-go', 'chopper-short', 'replace-drive'],
    ['short one way', { lowerBlocking: volts(0.002), again: true }, 'no-go', 'chopper-short', 'compare-chopper'],
    ['chopper leaks', { lowerBlocking: volts(0.5), again: true }, 'no-go', 'chopper-leaky', 'compare-chopper'],
    // The resistor still on: 47 Ω at a milliampere are 0.05 V. Or DC+ itself taken for B.
    [
      'short to DC+, twice',
      { upperConducting: volts(0.047), upperBlocking: volts(0.047), again: true },
      'no-go',
      'chopper-short',
      'compare-chopper',
    ],
    ['freewheel diode open', { upperConducting: ol }, 'undecided', 'chopper-open', 'compare-chopper'],
    [
      'leads exchanged',
      { upperConducting: ol, upperBlocking: volts(0.46) },
      'undecided',
      'chopper-exchanged',
      'measure-chopper',
    ],
    [
      'a bound that is no block',
      { lowerBlocking: { kind: 'over', unit: 'V', atLeast: 1 } },
      'undecided',
      'chopper-unclear',
    ],
    ['chopper not measured', { lowerBlocking: missing }, 'undecided', 'chopper-missing', 'measure-chopper'],
    ['bus not measured', { busVoltage: missing }, 'undecided', 'bus-not-measured', 'measure-bus'],
    ['bus left with 2 V', { busVoltage: volts(-2) }, 'undecided', 'bus-residual-voltage', 'wait-and-measure-bus'],
    ['bus charged', { busVoltage: volts(320), ...shorted }, 'undecided', 'bus-not-discharged', 'wait-and-measure-bus'],
    [
      'a reading below zero',
      { upperBlocking: volts(-0.2), ...shorted },
      'undecided',
      'chopper-negative',
      'wait-and-measure-bus',
    ],
  ];
  it.each(rows)('%s', (_, change, verdict, code, step) => {
    const { verdict: given, findings, next } = assess(change);
    expect([given, findings.map((one) => one.code)]).toEqual([verdict, expect.arrayContaining([code])]);
    if (step !== undefined) expect(next.map((one) => one.code)).toContain(step);
  });

  it('a charged bus and a reading below zero stop everything else', () => {
    for (const change of [{ busVoltage: volts(320) }, { upperBlocking: volts(-0.2) }]) {
      const { findings } = assess({ ...change, ...shorted });
      expect(findings.map(({ severity }) => severity)).toEqual(['stop']);
    }
  });

  it('a short one way never says that the drive is to be replaced', () => {
    const { next } = assess({ lowerBlocking: volts(0.002), again: true });
    expect(next.map(({ code }) => code)).not.toContain('replace-drive');
  });
});

describe('a path in the diode test', () => {
  const rows: [Reading, Reading, PairJudgement][] = [
    [volts(0.45), ol, 'sound'],
    [volts(0.45), volts(1.5), 'sound'],
    [volts(0.45), volts(1.49), 'leaky'],
    [volts(0.1), volts(0.1), 'short-both-ways'],
    [volts(0.45), volts(0.1), 'short-one-way'],
    [volts(0.1), ol, 'short-one-way'],
    [ol, ol, 'open'],
    [ol, volts(0.45), 'exchanged'],
    [missing, ol, 'missing'],
    [missing, volts(0.45), 'leaky'],
    [missing, volts(0), 'short-one-way'],
    [volts(0.45), { kind: 'under', unit: 'V' }, 'unclear'],
    [{ kind: 'over', unit: 'V', atLeast: 1 }, ol, 'unclear'],
  ];
  it.each(rows)('%j and %j: %s', (conducting, blocking, judgement) => {
    expect(judgePair({ conducting, blocking })).toBe(judgement);
  });

  it('an accuracy takes a decision away', () => {
    const meter = { percent: 10 };
    expect(judgePair({ conducting: volts(0.45), blocking: volts(1.5) }, meter)).toBe('unclear');
    expect(judgePair({ conducting: volts(0.1), blocking: ol }, meter)).toBe('unclear');
  });
});

it('a short to DC+ names what else reads so', () => {
  const { findings } = assess({ upperConducting: volts(0.047), upperBlocking: volts(0.047) });
  const said = findings.map((one) => sentenceOf(brakingFindings, one)).join(' ');
  expect(said).toContain('resistor still on');
});

it('a short to DC− names what else reads so, and a reading below zero the charge of the meter', () => {
  const said = (change: Change) =>
    assess(change)
      .findings.map((one) => sentenceOf(brakingFindings, one))
      .join(' ');
  expect(said(shorted)).toContain('DC− taken for B');
  expect(said({ upperBlocking: volts(-0.2) })).toContain('The meter itself');
});

it('no drive is replaced for a short to DC+, which the resistor itself reads', () => {
  const { next } = assess({ upperConducting: volts(0.047), upperBlocking: volts(0.047), again: true });
  expect(next.map(({ code }) => code)).not.toContain('replace-drive');
  expect(assess({ ...shorted, again: true }).next.map(({ code }) => code)).toContain('replace-drive');
});
