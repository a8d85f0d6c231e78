import { describe, expect, it } from 'vitest';
import { assessBridgeDiode } from '../../../../../src/calculators/bridge-diode/rule/assess.ts';
import { volts } from '../../../../../src/kernel/reading/reading.ts';
import { diodeInput } from '../../../../support/diode-cases.ts';
import { found } from '../../../../support/found.ts';
import { linesOf } from './lines-of.ts';

const codes = (...given: Parameters<typeof linesOf>) => linesOf(...given).said.map((text) => text.split(' ')[0]);

describe('exactly at a limit', () => {
  it('0.1 V is a short, a millivolt more is none', () => {
    expect(codes({ plusForward: '0.1 | 0.41 | 0.41', plusReverse: '0.1 | OL | OL' })).toContain('diode-failed');
    expect(codes({ plusReverse: 'OL | OL | 0.101' })).toContain('diode-leaky');
  });

  it('0.1 V at the least may be a short', () => {
    const exactly = { instrument: { counts: 1 } };
    expect(codes({ plusReverse: 'OL | OL | 0.101' }, exactly)).toContain('diode-short-possible');
    expect(codes({ plusReverse: 'OL | OL | 0.102' }, exactly)).toContain('diode-leaky');
  });

  it('0.1 V the other way round is a short both ways', () => {
    expect(codes({ plusForward: '0.001 | 0.41 | 0.41', plusReverse: '0.1 | OL | OL' })).not.toContain('diode-one-way');
    expect(codes({ plusForward: '0.001 | 0.41 | 0.41', plusReverse: '0.12 | OL | OL' })).toContain('diode-one-way');
  });

  it('1.5 V blocks, a millivolt less does not', () => {
    expect(codes({ plusReverse: '1.500 | 1.500 | 1.500' })).toEqual(['diode-passed']);
    expect(codes({ plusReverse: '1.500 | 1.500 | 1.499' })).toContain('diode-leaky');
  });

  it('1.5 V at the most is not sure to leak', () => {
    expect(codes({ plusReverse: '1.499 | 1.6 | 1.6' }, { instrument: { counts: 1 } })).toEqual([
      'diode-reverse-unclear',
    ]);
  });

  it('usual drops are 0.3 to 0.7 V, ends included, and all three count', () => {
    expect(codes({ plusForward: '0.300 | 0.310 | 0.300' })).toEqual(['diode-passed']);
    expect(codes({ plusForward: '0.700 | 0.690 | 0.700' })).toEqual(['diode-passed']);
    expect(codes({ plusForward: '0.299 | 0.310 | 0.310' })).toContain('diode-drop-unusual');
    expect(codes({ plusForward: '0.701 | 0.690 | 0.690' })).toContain('diode-drop-unusual');
  });
});

describe('the figures', () => {
  it('of drops apart: the least difference and what is allowed', () => {
    const { findings } = assessBridgeDiode(diodeInput({ plusForward: '0.412 | 0.415 | 0.350' }));
    const { leastVolts, toleranceVolts, rail } = found(findings, 'diode-unbalanced');
    expect([leastVolts, toleranceVolts, rail]).toEqual([expect.closeTo(0.065, 6), 0.05, 'plus']);
  });

  it('of drops that may be apart: the least and the most, if the most has an end', () => {
    const of = (text: string) =>
      found(
        assessBridgeDiode(diodeInput({ plusForward: text }, { instrument: { counts: 5 } })).findings,
        'diode-too-close',
      );
    const { range, toleranceVolts } = of('0.412 | 0.415 | 0.370');
    expect(range).toEqual({ leastVolts: expect.closeTo(0.035, 6), mostVolts: expect.closeTo(0.055, 6) });
    expect(toleranceVolts).toBe(0.05);
    expect(of('0.412 | 0.415 | >0.4 V').range).toBeUndefined();
  });

  it('of drops that agree: the most that they may differ', () => {
    const { mostVolts, toleranceVolts } = found(assessBridgeDiode(diodeInput()).findings, 'diode-balanced');
    expect([mostVolts, toleranceVolts]).toEqual([expect.closeTo(0.005, 6), 0.05]);
  });

  it('of readings below zero, unclear or absent: their places', () => {
    const negative = assessBridgeDiode(diodeInput({ minusReverse: 'OL | -12 V | OL' })).findings;
    expect(found(negative, 'diode-negative').places).toEqual([{ position: 'minusV', way: 'reverse' }]);
    const absent = assessBridgeDiode(diodeInput({ plusForward: '0.41 | | 0.41' })).findings;
    expect(found(absent, 'diode-incomplete').places).toEqual([{ position: 'plusV', way: 'forward' }]);
    const unclear = assessBridgeDiode(diodeInput({ plusReverse: '1.70 | 1.72 | >1 V' })).findings;
    expect(found(unclear, 'diode-reverse-unclear').places).toEqual([{ position: 'plusW', way: 'reverse' }]);
  });

  it('of rows of a rail: which rail', () => {
    const rows = { minusForward: 'OL | OL | OL', minusReverse: '0.41 | 0.41 | 0.41' };
    expect(found(assessBridgeDiode(diodeInput(rows)).findings, 'diode-rows-swapped').rail).toBe('minus');
    const alike = { minusForward: '0 | 0 | 0', minusReverse: '0 | 0 | 0' };
    expect(found(assessBridgeDiode(diodeInput(alike)).findings, 'diode-all-alike').rail).toBe('minus');
    const noneConducts = { minusForward: 'OL | OL | OL' };
    expect(found(assessBridgeDiode(diodeInput(noneConducts)).findings, 'diode-forward-all-open').rail).toBe('minus');
    const unusual = { minusForward: '0.21 | 0.21 | 0.21' };
    expect(found(assessBridgeDiode(diodeInput(unusual)).findings, 'diode-drop-unusual').rail).toBe('minus');
  });

  it('of suspects: the positions that the sentence lists', () => {
    const oneWay = assessBridgeDiode(diodeInput({ plusReverse: 'OL | OL | 0.001' })).findings;
    expect(found(oneWay, 'diode-one-way').positions).toEqual(['plusW']);
    const possible = assessBridgeDiode(diodeInput({ plusReverse: '<2 V | OL | OL' })).findings;
    expect(found(possible, 'diode-short-possible').positions).toEqual(['plusU']);
  });
});

describe('readings that are not values', () => {
  it('an under-range below zero is a charged bus, one above is none', () => {
    const input = diodeInput();
    const under = (atMost?: number) => {
      const reading = { kind: 'under', unit: 'V', ...(atMost !== undefined && { atMost }) } as const;
      const plus = { ...input.plus, forward: { ...input.plus.forward, U: reading } };
      return assessBridgeDiode({ ...input, plus }).findings.some(({ code }) => code === 'diode-negative');
    };
    expect([under(-0.5), under(0), under(0.2), under()]).toEqual([true, false, false, false]);
  });

  it('unusual drops that do not all conduct one way only are not passed', () => {
    const unusual = 'diode-drop-unusual undecided plusForwardU plusForwardV plusForwardW: diode-forward-typical';
    expect(linesOf({ plusForward: '1.4 | 1.4 | 1.4', plusReverse: 'OL | OL | 1.6' }).said).toContain(unusual);
    expect(linesOf({ plusForward: '1.4 | 1.4 | 1.4', plusReverse: '1.6 | 1.6 | 1.6' }).said).toContain(unusual);
  });

  it('three bounds above the limit block, three unlike figures above it are unclear', () => {
    expect(codes({ plusReverse: '>2 V | >2 V | >2 V' })).toEqual(['diode-passed']);
    expect(codes({ plusReverse: '1.6 | 1.7 | 2.9' })).toEqual(['diode-reverse-unclear']);
  });

  it('a few millivolts on the bus may have either sign', () => {
    expect(linesOf({}, { busVoltage: volts(-0.02) }).verdict).toBe('go');
  });

  it('rows are not exchanged if one of them was not read', () => {
    const rows = { plusForward: 'OL | OL | OL', plusReverse: ' | | ' };
    expect(codes(rows)).toEqual(['diode-incomplete', 'diode-forward-all-open']);
  });

  it('a short both ways is proven beside one sound position, though another was not read', () => {
    const rows = { minusForward: '0.41 | 0.003 | 0.41', minusReverse: ' | 0.003 | OL' };
    expect(linesOf(rows).drive).toBe('convicted');
    expect(linesOf({ ...rows, minusReverse: ' | 0.003 | ' }).drive).toBe('suspect');
  });

  it('tests that name the same two positions agree, in whatever order they name them', () => {
    const rows = { plusForward: '0.4 | 0.4 | 0.001', plusReverse: '1.1 | OL | 0.001' };
    const { said } = linesOf({ ...rows, resistance: ['3 Ω | 490k | 2 Ω', '46k | 45.8k | 46.1k'] });
    expect(said).toContain('tests-agree note');
    const oneOfEachRail = {
      ...{ plusForward: '0.002 | 0.41 | 0.41', plusReverse: '0.002 | OL | OL' },
      ...{ minusForward: '0.41 | 0.003 | 0.41', minusReverse: 'OL | 0.003 | OL' },
    };
    const both = linesOf({ ...oneOfEachRail, resistance: ['2 Ω | 490k | 485k', '46k | 3.8 Ω | 46.1k'] });
    expect(both.said).toContain('tests-agree note');
  });

  it('rows are exchanged only if all three are', () => {
    const rows = { plusForward: 'OL | 0.41 | 0.41', plusReverse: '0.41 | OL | OL' };
    expect(codes(rows)).not.toContain('diode-rows-swapped');
    expect(linesOf(rows).suspects).toEqual(['plusU']);
  });
});
