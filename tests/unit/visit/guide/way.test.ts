import { describe, expect, it } from 'vitest';
import { nextStep, stepsAhead } from '../../../../src/visit/guide/next-step.ts';
import {
  bridgeIs,
  busAgain,
  done,
  insulationIs,
  lockout,
  looked,
  mechanics,
  proveAgain,
  retry,
  seen,
  strip,
  trips,
  windingIs,
} from './support/answers.ts';
import { bridges, insulations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';
import { allGood, bridgeGood, deviceEnd, leadsOff, start, windingGood } from './support/ways.ts';

/** The way in one line: each step, with its status and problem unless it is done. */
const way = (history: Given[], breakAt = 0) =>
  nextStep(visitOf(history, breakAt))
    .path.map(({ id, status, problem }) =>
      [id, ...(status === 'done' ? [] : [status || 'no status']), problem ?? ''].join(' ').trim(),
    )
    .join(', ');
/** Its end, from this step on. */
const from = (id: string, history: Given[], breakAt = 0) => {
  const all = way(history, breakAt).split(', ');
  return all.slice(all.findIndex((one) => one.startsWith(id))).join(', ');
};
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

describe('before power', () => {
  it('the leads come off if they were put back on', () => {
    const on: Given[] = [...start('on-enable'), off, bridgeGood, busAgain(), windingGood, done('reconnect')];
    expect(way(on)).toBe('find-drive, symptom, lockout-1, inspect, disconnect-leads check-again');
    const stripping = [...leadsOff('trips'), strip(), done('reconnect')];
    expect(way(stripping)).toBe('find-drive, symptom, lockout-1, inspect, disconnect-leads check-again');
  });

  it('they come off for the feedback too, if motor or cable speak against power', () => {
    const unplugged: Given[] = [...start('control-off'), off, done('unplug-feedback')];
    const good = [...unplugged, done('reconnect'), windingIs(windings.alike)];
    expect(from('unplug', good)).toBe('unplug-feedback, retry-feedback-off due');
    const bad = [...unplugged, done('reconnect'), windingIs(windings.unlike)];
    expect(way(bad)).toBe('find-drive, symptom, lockout-1, inspect, disconnect-leads check-again');
    expect(from('unplug', [...unplugged, windingIs(windings.unlike)])).toBe('unplug-feedback, retry-feedback-off due');
  });

  it('PE is connected after a test of the insulation took it off', () => {
    const tested: Given[] = [insulationIs(insulations.good), ...start('control-off'), done('unplug-feedback')];
    expect(from('unplug', tested)).toBe('unplug-feedback, connect-pe due');
    expect(from('unplug', [...tested, done('connect-pe')])).toBe('unplug-feedback, connect-pe, retry-feedback-off due');
    expect(from('unplug', [...tested, ['connect-pe', { done: false }]])).toBe(
      'unplug-feedback, connect-pe problem not-done',
    );
    const before: Given[] = [...start('control-off'), done('connect-pe'), insulationIs(insulations.good)];
    expect(way([...before, busAgain(), done('unplug-feedback')])).toBe(
      'find-drive, symptom, lockout-1, inspect, bus-again, unplug-feedback, connect-pe check-again',
    );
    // Connecting it is work at conductors: not on a bus that was charged since.
    expect(from('unplug', [...tested, bridgeGood])).toBe('unplug-feedback, bus-again due');
  });

  it('the feedback is plugged in before the axis is connected', () => {
    const moving: Given[] = [...start('now-and-then'), off, mechanics('free'), bridgeGood, busAgain()];
    const rest = allGood.slice(1);
    const out = [...moving, done('unplug-feedback'), ...rest];
    expect(from('insulation', out)).toBe('insulation, plug-feedback due');
    expect(from('insulation', [...out, done('plug-feedback')])).toBe('insulation, plug-feedback, reconnect due');
    const pluggedBefore = [...moving, done('plug-feedback'), done('unplug-feedback'), ...rest];
    expect(from('insulation', pluggedBefore)).toBe('insulation, plug-feedback check-again');
    expect(from('insulation', [...out, ['plug-feedback', { done: false }]])).toBe(
      'insulation, plug-feedback problem not-done',
    );
    expect(from('insulation', [...moving, ...rest])).toBe('insulation, reconnect due');
    // Not on a bus that the axis has charged, moved with its leads on.
    const moved = [...moving.filter(([id]) => id !== 'mechanics'), ...rest, done('reconnect')];
    const charged = [...moved, done('unplug-feedback'), mechanics('free')];
    expect(from('insulation', charged)).toBe('insulation, bus-again check-again');
    const beforePower = [...leadsOff('no-trip').slice(0, -2), done('unplug-feedback'), done('plug-feedback')];
    const since = [...beforePower, ...leadsOff('no-trip').slice(-2), ...allGood.slice(2)];
    expect(from('insulation', since)).toBe('insulation, plug-feedback check-again');
  });
});

describe('a step with power that is refused', () => {
  const bad = bridgeIs(bridges.shorted);

  it('stays on the way if it was done, and so does its preparation', () => {
    const tried = [...leadsOff('trips'), strip(), retry('retry-stripped', 'trips'), lockout(3)];
    expect(from('retry-leads-off', [...tried, bad])).toContain('strip-drive, retry-stripped, lockout-3');
  });

  it('is not asked for any more if it was only prepared', () => {
    expect(way([...leadsOff('trips'), strip(), bad])).not.toContain('strip-drive');
    expect(way([...leadsOff('trips'), bad])).not.toContain('strip-drive');
  });

  it('stays if nothing was taken off for it', () => {
    expect(way([...leadsOff('trips'), strip('not-allowed'), bad])).toContain('strip-drive');
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
    expect(list.slice(0, 4)).toEqual(['lockout-1', 'prove-again', 'bus-again', 'inspect']);
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
