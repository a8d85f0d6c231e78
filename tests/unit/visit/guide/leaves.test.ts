import { describe, expect, it } from 'vitest';
import type { Symptom } from '../../../../src/kernel/vocabulary.ts';
import { nextStep } from '../../../../src/visit/guide/next-step.ts';
import { tripsAtOnce } from './leaves/control-off.ts';
import type { Leaf } from './leaves/leaf.ts';
import { leftOpen } from './leaves/left-open.ts';
import { tripsWhileMoving } from './leaves/moving.ts';
import { tripsOnEnable } from './leaves/on-enable.ts';
import { protectiveConductor } from './leaves/protective-conductor.ts';
import { busAgain, done, found, isolationIs, looked } from './support/answers.ts';
import { isolations } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';
import { bothSeparatelyGood, bridgeGood, insulationGood, moving, type Seen, start } from './support/ways.ts';

const leaves: Record<string, Leaf[]> = {
  'trips at once, control off': tripsAtOnce,
  'trips on enable': tripsOnEnable,
  'trips while it moves': tripsWhileMoving,
  'the protective conductor': protectiveConductor,
  'what is left open': leftOpen,
};

describe.each(Object.entries(leaves))('%s', (_, cases) => {
  it.each(cases)('$what: $decision', ({ visit, decision, replace = {}, good = [], open = [], why }) => {
    const state = nextStep(visitOf(visit));
    expect(state.due, why).toBeUndefined();
    const { decision: given } = state;
    expect(given?.kind, why).toBe(decision);
    expect(Object.fromEntries(given?.replace.map(({ part, proofs }) => [part, proofs]) ?? []), why).toEqual(replace);
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
    ['on-acceleration', {}, 'mechanics'],
    ['position-or-cable', {}, 'mechanics'],
    ['when-hot', {}, 'mechanics'],
    ['now-and-then', {}, 'mechanics'],
    ['control-off', { drive: 'burnt' }, 'disconnect-leads'],
    ['control-off', { drive: 'wet' }, 'disconnect-leads'],
    ['on-enable', { drive: 'chafed' }, 'disconnect-leads'],
  ])('%s, seen %o: then %s', (when, damage, then) => {
    expect(nextStep(visitOf(start(when, damage))).due).toBe(then);
  });

  it('on enable with a sound drive the leads are off before the retry; with a damaged one there is no retry', () => {
    const after = (damage: Seen) => nextStep(visitOf([...start('on-enable', damage), done('disconnect-leads')])).due;
    expect(after({})).toBe('retry-leads-off');
    expect(after({ drive: 'burnt' })).toBe('bridge');
    expect(after({ drive: 'wet' })).toBe('bridge');
  });

  it.each<[what: string, visit: Given[], then: string]>([
    ['a good joined reading is enough where nothing points at cable or motor', moving(), 'winding'],
    ['not when the cable moves', moving('position-or-cable'), 'isolation'],
    ['not when the cable looks chafed', moving('when-hot', 'free', { motorCable: 'chafed' }), 'isolation'],
    ['not when the motor looks burnt', moving('when-hot', 'free', { motor: 'burnt' }), 'isolation'],
    ['nor wet', moving('when-hot', 'free', { motor: 'wet' }), 'isolation'],
  ])('%s', (_, visit, then) => {
    expect(nextStep(visitOf([...visit, bridgeGood, busAgain(), insulationGood])).due).toBe(then);
  });

  it('if something points at the cable, the isolation is done only when both parts were tested alone', () => {
    const suspect = [...moving('position-or-cable'), bridgeGood, busAgain(), insulationGood];
    expect(nextStep(visitOf([...suspect, isolationIs(isolations.joinedGoodOnly)])).due).toBe('isolation');
    expect(nextStep(visitOf([...suspect, bothSeparatelyGood])).due).toBe('winding');
  });
});
