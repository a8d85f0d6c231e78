import { describe, expect, it } from 'vitest';
import {
  bridgeIs,
  busAgain,
  done,
  insulationIs,
  lockout,
  mechanics,
  retry,
  strip,
  windingIs,
} from './support/answers.ts';
import { bridges, insulations, windings } from './support/readings.ts';
import type { Given } from './support/visit.ts';
import { from, way } from './support/way-in-words.ts';
import { allGood, bridgeGood, leadsOff, start, windingGood } from './support/ways.ts';

const off = done('disconnect-leads');

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
