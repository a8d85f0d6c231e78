import { describe, expect, it } from 'vitest';
import { nextStep, stepsAhead } from '../../../../src/visit/guide/next-step.ts';
import { busAgain, done, lockout, looked, mechanics, proveAgain, seen, trips } from './support/answers.ts';
import { type Given, visitOf } from './support/visit.ts';
import { from, way } from './support/way-in-words.ts';
import { bridgeGood, deviceEnd, leadsOff, start, windingGood } from './support/ways.ts';

const off = done('disconnect-leads');

describe('support', () => {
  const falls = trips('on-enable', 'yes');
  const ownNot = trips('on-enable', 'own-no');

  it('comes before the lockout if the axis may fall', () => {
    expect(way([looked(), falls])).toBe('find-drive, symptom, support-axis due');
    expect(way([looked(), falls, done('support-axis')])).toBe('find-drive, symptom, support-axis, lockout-1 due');
    expect(way([looked(), falls, ['support-axis', { done: false }]])).toBe(
      'find-drive, symptom, support-axis problem not-done',
    );
    expect(way([looked(), trips('on-enable')])).toBe('find-drive, symptom, lockout-1 due');
  });

  it('is asked for again if the moment was corrected since', () => {
    expect(way([looked(), done('support-axis'), falls])).toBe('find-drive, symptom, support-axis check-again');
  });

  it('of the other axes, which an older record was not asked for, comes before the next step', () => {
    expect(way([looked(), ownNot])).toBe('find-drive, symptom, support-axis due');
    expect(way([looked(), ownNot, lockout(1), seen()])).toBe(
      'find-drive, symptom, lockout-1, inspect, support-axis due',
    );
    expect(way([looked(), ownNot, done('support-axis'), lockout(1), seen()])).toBe(
      'find-drive, symptom, support-axis, lockout-1, inspect, disconnect-leads due',
    );
  });

  it('holds for one stretch of work', () => {
    const before: Given[] = [looked(), falls, done('support-axis')];
    expect(from('support', before, 3)).toBe('support-axis, support-again due');
    expect(from('support', [...before, done('support-again')], 3)).toBe('support-axis, support-again, lockout-1 due');
    expect(from('support', [...before, done('support-again')], 4)).toBe('support-axis, support-again check-again');
    const notYet: Given = ['support-again', { done: false }];
    expect(from('support', [...before, notYet], 3)).toBe('support-axis, support-again problem not-done');
  });

  it('that was confirmed after an older confirmation counts', () => {
    const history: Given[] = [looked(), falls, done('support-again'), lockout(1), done('support-axis')];
    expect(from('inspect', [...history, seen()].slice(0, -1), 3)).toBe('inspect due');
  });
});

describe('a lockout', () => {
  const before = [...start('on-enable'), off];

  it('of an earlier stretch of work is proven again, and then holds', () => {
    expect(from('disconnect', before, before.length)).toBe('disconnect-leads, prove-again due');
    expect(from('disconnect', [...before, proveAgain()], before.length)).toBe(
      'disconnect-leads, prove-again, bridge due',
    );
    const live = proveAgain({ busVoltage: { kind: 'value', value: 300, unit: 'V' } });
    expect(from('disconnect', [...before, live], before.length)).toContain('prove-again problem bus-not-discharged');
  });

  it('ends with power, and the next one is due', () => {
    const tried = leadsOff('trips').slice(0, -1);
    expect(from('retry-leads-off', tried)).toBe('retry-leads-off, lockout-2 due');
    expect(from('retry-leads-off', [...tried, lockout(2)])).toBe('retry-leads-off, lockout-2, strip-drive due');
  });

  it('that was answered before the power is due again', () => {
    const [found, moment, first, look, leads, stage, winding, tried, second] = leadsOff('no-trip') as Given[];
    const history = [found, moment, first, look, leads, stage, winding, second, tried] as Given[];
    expect(from('retry-leads-off', history)).toBe('retry-leads-off, lockout-2 check-again');
    // Its support, of an earlier stretch of work, is confirmed first.
    const falling = [history[0] as Given, trips('on-enable', 'yes'), done('support-axis'), ...history.slice(2)];
    expect(from('retry-leads-off', falling, 3)).toBe('retry-leads-off, support-again due');
  });

  it('has its support confirmed first, if that is of an earlier stretch', () => {
    const [found, , ...rest] = leadsOff('no-trip').slice(0, -1);
    const history = [found as Given, trips('on-enable', 'yes'), done('support-axis'), ...rest];
    expect(from('retry-leads-off', history, history.length)).toBe('retry-leads-off, support-again due');
    expect(from('retry-leads-off', history, 3)).toBe('retry-leads-off, support-again due');
    expect(from('retry-leads-off', history)).toBe('retry-leads-off, lockout-2 due');
  });
});

describe('the bus', () => {
  const measured = [...start('on-enable'), off, bridgeGood];

  it('is measured after an instrument has charged it, and the reading stands where it was taken', () => {
    expect(from('bridge', measured)).toBe('bridge, bus-again due');
    expect(from('bridge', [...measured, busAgain()])).toBe('bridge, bus-again, winding due');
    expect(from('bridge', [...measured, busAgain(), windingGood])).toBe(
      'bridge, bus-again, winding, retry-leads-off due',
    );
    expect(from('bridge', [...measured, busAgain('60 V')])).toBe('bridge, bus-again problem bus-not-discharged');
    expect(from('bridge', [...measured, busAgain('60 V')], measured.length + 1)).toBe('bridge, prove-again due');
  });

  it('and a lockout that was proven again stand in the order in which they were taken', () => {
    const both = [...measured, busAgain(), proveAgain(), windingGood];
    expect(from('bridge', both)).toBe('bridge, bus-again, prove-again, winding, retry-leads-off due');
    const turned = [...measured, proveAgain(), busAgain(), windingGood];
    expect(from('bridge', turned)).toBe('bridge, prove-again, bus-again, winding, retry-leads-off due');
  });

  it('is measured again if the output stage was read after it', () => {
    const again = [...start('on-enable'), off, busAgain(), bridgeGood];
    expect(from('disconnect', again)).toBe('disconnect-leads, bridge, bus-again check-again');
  });
});

describe('an answer that was given before what it rests on', () => {
  it('is to be confirmed', () => {
    const history: Given[] = [...start('on-enable'), bridgeGood, off];
    expect(from('disconnect', history)).toBe('disconnect-leads, bridge check-again');
  });

  it('is a problem if it does not suffice, and then nothing follows', () => {
    expect(way([looked(2, 3), trips('on-enable')])).toBe('find-drive problem indication-contradicts');
    expect(way([trips('on-enable')])).toBe('find-drive due');
    const steps = (history: Given[]) => nextStep(visitOf(history)).path.map((step) => Object.keys(step));
    expect(steps([looked()])).toEqual(Array(2).fill(['id', 'status']));
    expect(steps([looked(2, 3)])).toEqual([['id', 'status', 'problem']]);
  });
});

describe('the steps that may follow', () => {
  const ahead = (history: Given[]) => stepsAhead(nextStep(visitOf(history)));

  it('are those not yet listed, of the lockouts only the next', () => {
    const list = ahead([looked()]);
    expect(list.slice(0, 5)).toEqual(['recording', 'lockout-1', 'prove-again', 'bus-again', 'inspect']);
    // Once the moment is answered it is on the way, or does not come.
    expect(ahead(start('on-enable'))).not.toContain('recording');
    expect(list.filter((id) => id.startsWith('lockout'))).toEqual(['lockout-1']);
    expect(list).not.toContain('find-drive');
    expect(list).not.toContain('symptom');
    expect(ahead(start('on-enable')).filter((id) => id.startsWith('lockout'))).toEqual(['lockout-2']);
    // Answered on another way: listed there.
    expect(ahead([...start('on-enable'), mechanics('free')])).not.toContain('mechanics');
    expect(ahead(start('on-enable'))).toContain('mechanics');
  });

  it('are none once there is a decision', () => {
    const state = nextStep(visitOf(start('on-enable')));
    const decided = nextStep(visitOf(deviceEnd('trips')));
    expect(stepsAhead({ ...state, baseline: 'open' })).toEqual([]);
    if (decided.decision === undefined) throw new Error(`due: ${decided.due}`);
    expect(stepsAhead(decided)).toEqual([]);
    expect(decided.due).toBeUndefined();
  });
});

describe('what the guide knows about the machine', () => {
  it('is the lockout that protects the next step, and the support', () => {
    const known = (history: Given[]) => nextStep(visitOf(history)).conditions;
    expect(known([looked()])).toEqual({ lockedBy: undefined, axisSupported: false });
    expect(known(start('on-enable'))).toEqual({ lockedBy: 'lockout-1', axisSupported: false });
    expect(known([looked(), trips('on-enable', 'yes'), done('support-axis')])).toEqual({
      ...{ lockedBy: undefined, axisSupported: true },
    });
    expect(known(leadsOff('trips')).lockedBy).toBe('lockout-2');
    expect(known(leadsOff('trips').slice(0, -1)).lockedBy).toBeUndefined();
  });
});
