import { describe, expect, it } from 'vitest';
import { missing } from '../../../../../src/kernel/reading/reading.ts';
import { type Change, farads, find, pair, percent, said, seconds, values } from './bus.ts';

const { startVoltage } = values;
const start: Change = startVoltage === undefined ? {} : { startVoltage };

describe('the figures of a finding', () => {
  it('the wait ends at the touch limit, 49.5 s · ln(565 V / 50 V) and one step of the display', () => {
    const wait = find(values, 'longest-wait');
    expect(wait).toMatchObject({ limits: ['touch-voltage'], touchVolts: 50 });
    expect(wait.longestSeconds).toBeCloseTo(49.5 * Math.log(566 / 50), 6);
    expect(wait.shortestSeconds).toBeCloseTo(49.5 * Math.log(564 / 50), 6);
    expect(wait).not.toHaveProperty('fromSecondSeconds');
    const after = find(pair(565, 400, 17), 'longest-wait-from-reading');
    const slowest = 18 / Math.log(564 / 401);
    expect(after.fromSecondSeconds).toBeCloseTo(slowest * Math.log(401 / 50), 6);
  });

  it('longer than the machine standard allows to 60 V in 5 s', () => {
    const longer = find(values, 'longer-than-standard');
    expect(longer).toMatchObject({
      limits: ['residual-voltage-60', 'residual-voltage-time'],
      volts: 60,
      withinSeconds: 5,
    });
    expect(longer.longestSeconds).toBeCloseTo(49.5 * Math.log(566 / 60), 6);
    expect(said({ ...values, capacitance: farads(15e-6) })).not.toContain('longer-than-standard caution');
  });

  it('measured and stated time constant', () => {
    const slow = find({ ...values, ...pair(565, 500, 60) }, 'slower-than-values');
    expect(slow.statedSeconds).toBeCloseTo(49.5, 9);
    expect(slow.measuredSeconds).toBeCloseTo(59 / Math.log(566 / 499), 6);
    const fast = find({ ...values, ...pair(565, 100, 10) }, 'faster-than-values');
    expect(fast.statedSeconds).toBeCloseTo(49.5, 9);
    expect(fast.measuredSeconds).toBeCloseTo(11 / Math.log(564 / 101), 6);
  });

  it('the label, the residual voltage that it means and the least time to it', () => {
    const beyond = find({ ...values, label: seconds(60) }, 'values-beyond-label');
    expect(beyond).toMatchObject({ limits: ['residual-voltage-60'], labelSeconds: 60, volts: 60 });
    expect(beyond.seconds).toBeCloseTo(49.5 * Math.log(564 / 60), 6);
    const slower = find({ ...pair(565, 400, 17), label: seconds(60) }, 'slower-than-label');
    expect(slower).toMatchObject({ readings: ['label'], limits: ['residual-voltage-60'], labelSeconds: 60, volts: 60 });
    expect(slower.seconds).toBeCloseTo((16 / Math.log(566 / 399)) * Math.log(564 / 60), 6);
  });

  it('one step of the label is allowed', () => {
    // At least 110.9 s: a label of 110 s means up to 111 s, one of 109 s up to 110 s.
    expect(said({ ...values, label: seconds(110) })).not.toContain('values-beyond-label caution label');
    expect(said({ ...values, label: seconds(109) })).toContain('values-beyond-label caution label');
  });

  it('the least time constant that a bus shows which does not fall', () => {
    const stands = find({ ...start, ...pair(400, 400, 60) }, 'no-fall-shown');
    expect(stands.atLeastSeconds).toBeCloseTo(59 / Math.log(401 / 399), 6);
    const one = find({ ...start, ...pair(400, 400, 1) }, 'no-fall-shown');
    expect(one).not.toHaveProperty('atLeastSeconds');
  });

  it('of the meter and the end that is not in sight name the touch limit', () => {
    expect(find({}, 'only-the-meter').limits).toEqual(['touch-voltage']);
    expect(find({ ...start, ...pair(400, 400, 60) }, 'no-end').limits).toEqual(['touch-voltage']);
  });

  it('the tolerance that is usual where none is stated', () => {
    const usual = { severity: 'note', limits: ['capacitor-tolerance', 'bleeder-tolerance'] };
    const of = (change: Change) => find({ ...values, ...change }, 'usual-tolerance');
    expect(of({ capacitanceTolerance: missing, bleederTolerance: missing })).toMatchObject({
      ...usual,
      capacitancePercent: 20,
      bleederPercent: 5,
    });
    expect(of({ capacitanceTolerance: missing })).toMatchObject({
      ...usual,
      capacitancePercent: 20,
      bleederPercent: 0,
    });
    expect(of({ bleederTolerance: missing })).toMatchObject({ ...usual, capacitancePercent: 0, bleederPercent: 5 });
    expect(said({ ...values, bleederTolerance: percent(1) })).not.toContain('usual-tolerance note');
  });
});
