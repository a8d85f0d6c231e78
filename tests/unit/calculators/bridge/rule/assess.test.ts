import { describe, expect, it } from 'vitest';
import { assessBridge, type BridgeInput } from '../../../../../src/calculators/bridge/rule/assess.ts';
import { suspectPositions } from '../../../../../src/calculators/bridge/rule/suspect-positions.ts';
import { missing } from '../../../../../src/kernel/reading/reading.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';

const sound: BridgeInput = {
  busVoltage: typed('0.02 V', 'voltage'),
  motorLeads: 'off',
  dcPlus: typedPhases('450k | 455k | 460k'),
  dcMinus: typedPhases('45k | 45.5k | 46k'),
};

const assess = (change: Partial<BridgeInput>) => assessBridge({ ...sound, ...change });
const codes = (change: Partial<BridgeInput>) => assess(change).findings.map(({ code }) => code);
const steps = (change: Partial<BridgeInput>) => assess(change).next.map(({ code }) => code);

describe('a sound output stage', () => {
  it('is go, with a finding for each rail and the warning that this is not a clean bill of health', () => {
    expect(assess({}).verdict).toBe('go');
    expect(codes({})).toEqual(['bus-discharged', 'rail-balanced', 'rail-balanced', 'bridge-passed']);
    expect(steps({})).toEqual(['test-insulation-next']);
  });

  it('is judged rail by rail: the two sides differ, and that is normal', () => {
    expect(assess({}).drive).toBe('sound');
    expect(assess({ dcPlus: typedPhases('OL | OL | OL') }).verdict).toBe('go');
    expect(assess({ dcPlus: typedPhases('5M | 5.1M | 5.2M') }).verdict).toBe('go');
  });
});

describe('the bus is judged first', () => {
  it.each([
    ['565 V', 'bus-not-discharged', 'wait-and-measure-bus'],
    ['OL', 'bus-not-discharged', 'wait-and-measure-bus'],
    ['5 V', 'bus-residual-voltage', 'discharge-residual'],
    ['', 'bus-not-measured', 'measure-bus'],
  ])('“%s”: %s, and no resistance is judged, however bad', (text, code, next) => {
    const change = { busVoltage: typed(text, 'voltage'), dcPlus: typedPhases('0 | 0 | 0') };
    expect(assess(change).verdict).toBe('undecided');
    expect(codes(change)).toEqual([code]);
    expect(steps(change)).toEqual([next]);
  });
});

describe('the motor leads', () => {
  it('on the drive: nothing is judged', () => {
    const change = { motorLeads: 'connected' as const, dcPlus: typedPhases('0 | 0 | 0') };
    expect(assess(change).verdict).toBe('undecided');
    expect(codes(change)).toEqual(['motor-leads-connected']);
    expect(steps(change)).toEqual(['take-motor-leads-off']);
  });

  it('not stated: nothing passes, but a fault that shows is a fault', () => {
    expect(assess({ motorLeads: 'not-stated' }).verdict).toBe('undecided');
    expect(steps({ motorLeads: 'not-stated' })).toEqual(['state-motor-leads']);
    const short = { motorLeads: 'not-stated' as const, dcPlus: typedPhases('0 | 450k | 455k') };
    expect(assess(short)).toMatchObject({ verdict: 'no-go', drive: 'suspect' });
    expect(assess({ ...short, worstAgain: typed('0'), alsoOnBus: 'nothing' }).drive).toBe('suspect');
  });
});

describe('a failed output stage', () => {
  const short = { dcMinus: typedPhases('45k | 0.3 Ω | 46k') };
  const twice = { ...short, worstAgain: typed('0.4 Ω'), alsoOnBus: 'nothing' as const };

  it('keeps the power off after one reading, and asks for what a proof takes', () => {
    expect(assess(short)).toMatchObject({ verdict: 'no-go', drive: 'suspect' });
    expect(steps(short)).toEqual(['keep-power-off', 'clear-the-bus', 'read-odd-again']);
    expect(codes(short)).toContain('bridge-suspect');
    expect(codes(short)).not.toContain('bridge-failed');
  });

  it('read twice means: the complete drive, and motor and cable before the new one is connected', () => {
    expect(assess(twice)).toMatchObject({ verdict: 'no-go', drive: 'convicted' });
    expect(steps(twice)).toEqual(['replace-complete-drive', 'test-motor-and-cable']);
    expect(codes(twice)).toContain('bridge-failed');
  });

  it('names its one position of six', () => {
    expect(suspectPositions(assess(short).findings)).toEqual(['minusV']);
    expect(codes(short)).not.toContain('bridge-more-than-one');
  });

  it('with more positions than one asks to check the leads', () => {
    const both = { ...short, dcPlus: typedPhases('450k | 455k | 200k'), plusAgain: typed('450k') };
    expect(suspectPositions(assess(both).findings)).toEqual(['plusU', 'plusW', 'minusV']);
    expect(codes(both)).toContain('bridge-more-than-one');
  });

  it('fails by one rail, whatever the other lacks', () => {
    expect(assess({ ...short, dcPlus: typedPhases(' | | ') }).verdict).toBe('no-go');
    expect(steps({ ...short, dcPlus: typedPhases(' | | ') })).toContain('measure-missing');
  });
});

describe('an incomplete set', () => {
  it('is undecided for each of the six positions that is missing', () => {
    for (const rail of ['dcPlus', 'dcMinus'] as const) {
      for (const phase of ['U', 'V', 'W'] as const) {
        const change = { [rail]: { ...sound[rail], [phase]: missing } };
        expect(assess(change).verdict).toBe('undecided');
        expect(steps(change)).toEqual(['measure-missing']);
      }
    }
  });
});

describe('tolerance and meter', () => {
  it('the tolerance is 10 % unless changed', () => {
    const spread9 = { dcPlus: typedPhases('400k | 420k | 436k') };
    expect(assess(spread9).verdict).toBe('go');
    expect(assess({ ...spread9, tolerancePercent: 8 }).verdict).toBe('undecided');
    expect(codes({ ...spread9, plusAgain: typed('400k'), tolerancePercent: 8 })).toContain('rail-uneven');
    expect(assess({ ...spread9, tolerancePercent: 10 }).verdict).toBe('go');
  });

  it('the accuracy of the meter can only take a decision back', () => {
    const close = { dcPlus: typedPhases('400k | 420k | 436k') };
    expect(assess({ ...close, instrument: { percent: 1 } }).verdict).toBe('undecided');
    expect(steps({ ...close, instrument: { percent: 1 } })).toEqual(['repeat-more-exactly']);
    expect(assess({ ...close, instrument: { percent: 0.2 } }).verdict).toBe('go');
  });

  it('a bus that is not measured is not excused by a good meter', () => {
    expect(assess({ busVoltage: missing, instrument: { percent: 0.1 } }).verdict).toBe('undecided');
  });
});

describe('each step', () => {
  it.each([
    ['700k | 705k | >720k', 'use-higher-range'],
    ['450k | OL | 455k', 'use-higher-range'],
    ['450k | OL | OL', 'read-first-again'],
    ['450k | 455k | 300k', 'read-odd-again'],
    ['450k | 455k | 300k', 'compare-known-good'],
    ['0.2 Ω | 0.2 Ω | 0.2 Ω', 'exchange-leads'],
    ['4.5k | 4.6k | 4.7k', 'exchange-leads'],
    ['<2k | <2k | <2k', 'repeat-short'],
    ['4.5k | 4.6k | 4.7k', 'compare-known-good'],
  ])('%s from DC+ asks: %s', (readings, next) => {
    expect(steps({ dcPlus: typedPhases(readings) })).toContain(next);
  });

  it('is said once', () => {
    const twice = { dcPlus: typedPhases('450k | | '), dcMinus: typedPhases('45k | | ') };
    expect(steps(twice)).toEqual(['measure-missing']);
  });
});

describe('a short that unbalances the other rail', () => {
  // ngspice, tests/reference: through the bleed resistor a short at V changes the other rail too.
  const shortedV = { dcMinus: typedPhases('45k | 5 Ω | 45k') };

  it('explains the odd reading of the same terminal there: one suspect, not two', () => {
    const change = { ...shortedV, dcPlus: typedPhases('450k | 400k | 450k') };
    expect(assess(change).verdict).toBe('no-go');
    expect(suspectPositions(assess(change).findings)).toEqual(['minusV']);
    expect(codes(change)).toContain('rail-unbalanced-by-short');
    expect(codes(change)).not.toContain('bridge-more-than-one');
  });

  it('does not explain a difference of the other two: its own reading can’t show which of them is bad', () => {
    const change = { ...shortedV, dcPlus: typedPhases('450k | 450k | 200k'), plusAgain: typed('450k') };
    expect(suspectPositions(assess(change).findings)).toEqual(['plusU', 'plusW', 'minusV']);
    expect(codes(change)).toContain('bridge-more-than-one');
  });

  it('does not explain a second short', () => {
    const change = { ...shortedV, dcPlus: typedPhases('450k | 5 Ω | 450k') };
    expect(suspectPositions(assess(change).findings)).toEqual(['plusV', 'minusV']);
  });
});
