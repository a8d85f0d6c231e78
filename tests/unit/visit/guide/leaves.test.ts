import { describe, expect, it } from 'vitest';
import type { Symptom } from '../../../../src/kernel/vocabulary.ts';
import { nextStep } from '../../../../src/visit/guide/next-step.ts';
import { tripsAtOnce } from './leaves/control-off.ts';
import type { Leaf } from './leaves/leaf.ts';
import { leftOpen } from './leaves/left-open.ts';
import { tripsWhileMoving } from './leaves/moving.ts';
import { tripsOnEnable } from './leaves/on-enable.ts';
import { protectiveConductor } from './leaves/protective-conductor.ts';
import { bend, bridgeIs, busAgain, done, found, isolationIs, looked, windingIs } from './support/answers.ts';
import { bridges, isolations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';
import {
  bothSeparatelyGood,
  bridgeBad,
  bridgeGood,
  insulationGood,
  leadsOff,
  moving,
  type Seen,
  start,
  stillTrips,
  windingGood,
} from './support/ways.ts';

const leaves: Record<string, Leaf[]> = {
  'trips at once, control off': tripsAtOnce,
  'trips on enable': tripsOnEnable,
  'trips while it moves': tripsWhileMoving,
  'the protective conductor': protectiveConductor,
  'what is left open': leftOpen,
};

describe.each(Object.entries(leaves))('%s', (_, cases) => {
  it.each(cases)('$what: $decision', ({ visit, decision, replace = {}, suspect = {}, good = [], open = [], why }) => {
    const state = nextStep(visitOf(visit));
    expect(state.due, why).toBeUndefined();
    const { decision: given } = state;
    expect(given?.kind, why).toBe(decision);
    expect(Object.fromEntries(given?.replace.map(({ part, proofs }) => [part, proofs]) ?? []), why).toEqual(replace);
    expect(Object.fromEntries(given?.suspect.map(({ part, reasons }) => [part, reasons]) ?? []), why).toEqual(suspect);
    expect([...(given?.good ?? [])].sort(), why).toEqual([...good].sort());
    expect([...(given?.open ?? [])].sort(), why).toEqual([...open].sort());
    expect(state.offPath, 'every answer of a leaf is on its way').toEqual([]);
  });
});

describe('finding the drive', () => {
  const due = (first: Given) => {
    const { due: id, path } = nextStep(visitOf([first]));
    return `${id} ${path.at(-1)?.problem ?? ''}`.trim();
  };

  it.each<[what: string, first: Given, then: string]>([
    ['axis 1 of 2', looked(2, 1), 'symptom'],
    ['axis 2 of 2', looked(2, 2), 'symptom'],
    ['axis 3 of a drive with 2: misread, or another drive’s', looked(2, 3), 'find-drive indication-contradicts'],
    ['axis 2 of a drive with 1', looked(1, 2), 'find-drive indication-contradicts'],
    ['looking is not permitted: found from the drawings', found('not-permitted'), 'symptom'],
    ['known from an earlier record', found('known'), 'symptom'],
    [
      'an earlier record that names an axis too many is wrong as well',
      ['find-drive', { observation: 'known', axesOnDrive: 2, indicatedAxis: 3 }],
      'find-drive indication-contradicts',
    ],
  ])('%s: %s', (_, first, then) => {
    expect(due(first)).toBe(then);
  });
});

describe('which branch a symptom takes', () => {
  it.each<[Symptom, Seen, string]>([
    ['control-off', {}, 'unplug-feedback'],
    ['on-enable', {}, 'disconnect-leads'],
    ['on-acceleration', {}, 'disconnect-leads'],
    ['on-braking', {}, 'disconnect-leads'],
    ['position-or-cable', {}, 'disconnect-leads'],
    ['when-hot', {}, 'disconnect-leads'],
    ['now-and-then', {}, 'disconnect-leads'],
    ['control-off', { drive: 'burnt' }, 'disconnect-leads'],
    ['control-off', { drive: 'wet' }, 'disconnect-leads'],
    ['on-enable', { drive: 'chafed' }, 'disconnect-leads'],
  ])('%s, seen %o: then %s', (when, damage, then) => {
    expect(nextStep(visitOf(start(when, damage))).due).toBe(then);
  });

  it('the axis is moved by hand only with the leads off', () => {
    for (const when of ['on-acceleration', 'on-braking', 'position-or-cable', 'when-hot', 'now-and-then'] as const) {
      expect(nextStep(visitOf([...start(when), done('disconnect-leads')])).due).toBe('mechanics');
    }
  });

  it('on enable, output stage and winding come before any enable without motor, which needs both to pass', () => {
    const after = (...given: Given[]) =>
      nextStep(visitOf([...start('on-enable'), done('disconnect-leads'), ...given])).due;
    expect(after()).toBe('bridge');
    expect(after(bridgeGood, busAgain())).toBe('winding');
    expect(after(bridgeGood, busAgain(), windingGood)).toBe('retry-leads-off');
    expect(after(bridgeBad, busAgain(), windingGood)).toBe('idle-cores');
    expect(after(bridgeGood, busAgain(), windingIs(windings.unlike))).toBe('winding-motor');
    expect(after(bridgeIs(bridges.tooClose, 'left open'), busAgain(), windingGood)).toBe('idle-cores');
  });

  it.each<[what: string, before: Given[], then: string]>([
    ['it trips without feedback', [...stillTrips, bridgeGood, busAgain(), windingGood], 'strip-drive'],
    ['it trips without motor', leadsOff('trips'), 'strip-drive'],
    ['not with a bad output stage', [...stillTrips, bridgeBad, busAgain(), windingGood], 'idle-cores'],
    ['not if the trip is gone', leadsOff('no-trip'), 'idle-cores'],
    ['not after another message', leadsOff('other-message'), 'idle-cores'],
  ])('everything is taken off the drive when it trips without its motor or feedback: %s', (_, before, then) => {
    expect(nextStep(visitOf(before)).due).toBe(then);
  });

  it('braking and a moving cable have their own measurement', () => {
    expect(nextStep(visitOf([...moving('on-braking'), bridgeGood, busAgain()])).due).toBe('braking');
    const cable = [...moving('position-or-cable'), bridgeGood, busAgain(), windingGood];
    expect(nextStep(visitOf(cable)).due).toBe('bend-test');
  });

  it.each<[what: string, visit: Given[], then: string]>([
    ['a good joined reading is enough where nothing points at cable or motor', moving(), 'reconnect'],
    ['not when the cable moves', moving('position-or-cable'), 'isolation'],
    ['not when the cable looks chafed', moving('when-hot', 'free', { motorCable: 'chafed' }), 'isolation'],
    ['not when the motor looks burnt', moving('when-hot', 'free', { motor: 'burnt' }), 'isolation'],
    ['nor wet', moving('when-hot', 'free', { motor: 'wet' }), 'isolation'],
  ])('%s', (_, visit, then) => {
    const before = [...visit, bridgeGood, busAgain(), windingGood, bend('steady'), ...insulationGood];
    expect(nextStep(visitOf(before)).due).toBe(then);
  });

  it('if something points at the cable, the isolation is done only when both parts were tested alone', () => {
    const before = [...moving('position-or-cable'), bridgeGood, busAgain(), windingGood, bend('steady')];
    const suspect = [...before, ...insulationGood];
    expect(nextStep(visitOf([...suspect, isolationIs(isolations.joinedGoodOnly)])).due).toBe('isolation');
    expect(nextStep(visitOf([...suspect, bothSeparatelyGood])).due).toBe('reconnect');
  });
});
