import { describe, expect, it } from 'vitest';
import { missing, ohms, overOhms, volts } from '../../../../../src/kernel/reading/reading.ts';
import { lineWithLimits } from '../../../../support/lines.ts';
import { allLines, assess, type Change, drop, linesWith, ol, sound, three } from './sound.ts';

// Common practice, no source.

const zero = volts(0.002);
const below = volts(-0.2);
const steps = (change: Change) => assess(change).next.map(({ code }) => code);
const unmeasured: Change = { plusConducting: three(missing), minusBlocking: three(missing) };

describe('what stops everything else', () => {
  const impossible: [Change, string, string[]] = [
    { fuses: three(ohms(-1)), prechargeOhms: ohms(-1) },
    'figure-impossible undecided fuses.L1 fuses.L2 fuses.L3 prechargeOhms',
    ['read-figure-again'],
  ];
  const charged = 'bus-not-discharged stop busVoltage: touch-voltage';
  const rows: [what: string, Change, line: string, next: string[]][] = [
    ['impossible figures', ...impossible],
    ['the same beside a charged bus', { ...impossible[0], busVoltage: volts(320) }, impossible[1], impossible[2]],
    ['a charged bus', { busVoltage: volts(50) }, charged, ['wait-and-measure-bus']],
    [
      'a charged bus, a reading below zero, leads on',
      { busVoltage: volts(50), linkBlocking: below, supplyLeads: 'connected' },
      charged,
      ['wait-and-measure-bus'],
    ],
    [
      'a bus not measured',
      { busVoltage: missing, supplyLeads: 'connected' },
      'bus-not-measured undecided busVoltage: touch-voltage',
      ['measure-bus'],
    ],
    [
      'a bus with some volts',
      { busVoltage: volts(-0.11) },
      'bus-residual-voltage undecided busVoltage: resistance-residual-voltage',
      ['wait-and-measure-bus'],
    ],
    [
      'supply leads on',
      { supplyLeads: 'connected', others: 'connected', again: true },
      'supply-leads-connected undecided supplyLeads',
      ['take-supply-leads-off'],
    ],
  ];
  it.each(rows)('%s', (_, change, line, next) => {
    expect(assess(change).findings.map(lineWithLimits)).toEqual([line]);
    expect(assess(change).verdict).toBe('undecided');
    expect(steps(change)).toEqual(next);
  });

  const fields = ['plusConducting', 'plusBlocking', 'minusConducting', 'minusBlocking'] as const;
  const readings: [name: string, Change][] = [
    ['linkConducting', { linkConducting: below }],
    ['linkBlocking', { linkBlocking: below }],
    ...fields.flatMap((field) =>
      allLines.map((line): [string, Change] => [`${field}${line}`, { [field]: { ...sound[field], [line]: below } }]),
    ),
  ];
  it.each(readings)('%s below zero, whatever was measured of the bus', (name, change) => {
    for (const busVoltage of [volts(0.03), volts(2), missing]) {
      const { verdict, findings, next } = assess({ ...change, busVoltage, supplyLeads: 'connected' });
      expect(findings.map(lineWithLimits)).toEqual([`input-negative stop ${name}`]);
      expect(verdict).toBe('undecided');
      expect(next.map(({ code }) => code)).toEqual(['wait-and-measure-bus']);
    }
  });

  it('names every reading below zero, and none of a line that is not there', () => {
    const change = { linkBlocking: below, minusBlocking: three(below, ol, below) };
    const named = (lines: 'two' | 'three') => assess({ ...change, lines }).findings.map(lineWithLimits);
    expect(named('three')).toEqual(['input-negative stop linkBlocking minusBlockingL1 minusBlockingL3']);
    expect(named('two')).toEqual(['input-negative stop linkBlocking minusBlockingL1']);
    expect(assess({ lines: 'two', plusBlocking: three(ol, ol, below) }).verdict).toBe('go');
  });
});

describe('what was said of the rest', () => {
  const rows: [what: string, Change, stated: string[], next: string[]][] = [
    ['all off', {}, [], []],
    [
      'leads not stated',
      { supplyLeads: 'not-stated' },
      ['supply-leads-not-stated undecided supplyLeads'],
      ['take-supply-leads-off'],
    ],
    ['others on', { others: 'connected' }, ['others-connected undecided others'], ['take-others-off']],
    ['others not stated', { others: 'not-stated' }, ['others-not-stated undecided others'], ['take-others-off']],
    [
      'nothing stated',
      { supplyLeads: 'not-stated', others: 'not-stated' },
      ['supply-leads-not-stated undecided supplyLeads', 'others-not-stated undecided others'],
      ['take-supply-leads-off', 'take-others-off'],
    ],
  ];
  it.each(rows)('%s', (_, change, stated, next) => {
    expect(assess(change).findings.map(lineWithLimits)).toEqual(linesWith({ stated }));
    expect(steps(change)).toEqual([...next, 'measure-lines', 'measure-bus-again']);
  });
});

describe('what a second reading makes of a fail', () => {
  const leaky: Change = { minusBlocking: three(volts(0.6), ol, ol) };
  const linkShort: Change = { linkConducting: zero, linkBlocking: zero };
  const rows: [what: string, Change, last: string, others: string[]][] = [
    ['diode short both ways', { plusConducting: three(zero), plusBlocking: three(zero) }, 'replace-drive', []],
    ['diode short one way', { plusBlocking: three(zero, ol, ol) }, 'compare-input', []],
    ['diode leaks', leaky, 'compare-input', []],
    ['diode open', { minusConducting: three(drop, ol, drop) }, 'compare-input', []],
    ['bus short', linkShort, 'replace-drive', ['measure-lines']],
    ['bus short one way', { linkBlocking: zero }, 'compare-input', ['measure-lines']],
    ['bus leaks', { linkBlocking: volts(0.9) }, 'compare-input', ['measure-lines']],
    ['precharge bypassed', { prechargeOhms: ohms(0.3) }, 'replace-drive', ['measure-lines']],
    ['precharge open', { prechargeOhms: overOhms() }, 'replace-drive', ['measure-lines']],
    ['precharge off', { prechargeOhms: ohms(60) }, 'compare-input', ['measure-lines']],
    ['a diode leaks, and the bus is short', { ...leaky, ...linkShort }, 'replace-drive', []],
  ];
  it.each(rows)('%s', (_, change, last, others) => {
    expect(steps(change)).toEqual([...others, 'read-twice', 'measure-bus-again']);
    expect(steps({ ...change, again: true })).toEqual([...others, last, 'measure-bus-again']);
  });

  const rest: [what: string, Change, off: string][] = [
    ['leads not stated', { supplyLeads: 'not-stated' }, 'take-supply-leads-off'],
    ['others on', { others: 'connected' }, 'take-others-off'],
    ['others not stated', { others: 'not-stated' }, 'take-others-off'],
  ];
  it.each(rest)('with %s nothing is convicted', (_, change, off) => {
    expect(steps({ ...change, ...leaky })).toEqual([off, 'read-twice', 'measure-bus-again']);
    for (const bad of [leaky, { ...leaky, ...linkShort }])
      expect(steps({ ...change, ...bad, again: true })).toEqual([off, 'take-rest-off', 'measure-bus-again']);
  });

  it('what does not fail is read once', () => {
    expect(steps({ again: true })).toEqual(['measure-lines', 'measure-bus-again']);
  });
});

describe('after an open fuse', () => {
  const blown: Change = { fuses: three(ohms(0.2), overOhms(), ohms(0.2)) };
  const rows: [what: string, Change, next: string[]][] = [
    ['the drive reads well', blown, ['fuses-last', 'measure-lines', 'look-before-drive', 'measure-bus-again']],
    [
      'the same, read twice',
      { ...blown, again: true },
      ['fuses-last', 'measure-lines', 'look-before-drive', 'measure-bus-again'],
    ],
    [
      'the rectifier not measured',
      { ...blown, ...unmeasured },
      ['fuses-last', 'measure-rectifier', 'measure-bus-again'],
    ],
    [
      'the bus not measured',
      { ...blown, linkBlocking: missing },
      ['fuses-last', 'measure-lines', 'measure-link', 'measure-bus-again'],
    ],
    ['no fuse is open', { fuses: three(ohms(3)) }, ['measure-fuses', 'measure-lines', 'measure-bus-again']],
  ];
  it.each(rows)('%s', (_, change, next) => {
    expect(steps(change)).toEqual(next);
  });

  it('the bus is measured again after a diode test only', () => {
    expect(steps({ ...unmeasured, linkBlocking: missing })).toEqual(['measure-rectifier', 'measure-link']);
    expect(steps(unmeasured)).toContain('measure-bus-again');
    expect(steps({ linkBlocking: missing })).toContain('measure-bus-again');
  });
});
