import { describe, expect, it } from 'vitest';
import { nextStep } from '../../../../src/visit/guide/next-step.ts';
import type { StepId } from '../../../../src/visit/steps/ids.ts';
import {
  bridgeIs,
  busAgain,
  done,
  idle,
  insulationIs,
  isolationIs,
  lockout,
  looked,
  mechanics,
  retry,
  seen,
  trips,
  windingIs,
} from './support/answers.ts';
import { bridges, insulations, isolations, windings } from './support/readings.ts';
import { type Given, visitOf } from './support/visit.ts';

/** A whole visit that ends well: trips on enable, nothing found, no trip at the end. */
const onEnable: Given[] = [
  looked(),
  trips('on-enable', 'yes'),
  lockout(1),
  seen(),
  done('support-axis'),
  done('disconnect-leads'),
  bridgeIs(bridges.good),
  busAgain(),
  windingIs(windings.alike),
  retry('retry-leads-off', 'no-trip'),
  lockout(2),
  idle(),
  insulationIs(insulations.good),
  done('reconnect'),
  retry('retry-all', 'no-trip'),
];

const controlOff: Given[] = [
  looked(),
  trips('control-off'),
  lockout(1),
  seen(),
  done('unplug-feedback'),
  retry('retry-feedback-off', 'no-trip'),
  lockout(2),
  done('unplug-device-end'),
  retry('retry-device-end', 'trips'),
];

const stateOf = (history: Given[]) => nextStep(visitOf(history));
const dueAfter = (history: Given[]) => {
  const { path, due } = stateOf(history);
  return due && `${due} ${path.at(-1)?.status}`;
};
const ids = (history: Given[]) => [...new Set(history.map(([id]) => id))].sort();

/** Every answered step is either on the way or marked as off it: nothing is lost. */
function kept(history: Given[]): StepId[] {
  const { path, offPath } = stateOf(history);
  const answered = path.map(({ id }) => id).filter((id) => visitOf(history)[id] !== undefined);
  return [...answered, ...offPath].sort();
}

/** Gives the same answer again at each step that asks for it, until something new is due. */
function confirmAll(history: Given[]): { history: Given[]; confirmed: StepId[] } {
  const longer = [...history];
  const confirmed: StepId[] = [];
  for (let due = stateOf(longer).due; due !== undefined && confirmed.length < 40; due = stateOf(longer).due) {
    const before = longer.findLast(([id]) => id === due);
    if (before === undefined) break;
    longer.push(before);
    confirmed.push(due);
  }
  return { history: longer, confirmed };
}

describe('an earlier answer that is changed', () => {
  it.each<[what: string, visit: Given[], change: Given, due: string | undefined]>([
    [
      'leads were taken off again later, after power: lock out again before what rests on them is confirmed',
      onEnable,
      done('disconnect-leads'),
      'lockout-1 check-again',
    ],
    [
      'the support was set up again: the retry rests on it, and the leads are on again since, so they come off first',
      onEnable,
      done('support-axis'),
      'lockout-1 check-again',
    ],
    [
      'a retry was made again: the lockout after it is older than the power',
      onEnable,
      retry('retry-leads-off', 'no-trip'),
      'lockout-2 check-again',
    ],
    [
      'a newer lockout: what was measured under the older one is confirmed',
      onEnable,
      lockout(2),
      'idle-cores check-again',
    ],
    ['the first lockout again: everything from there on is confirmed', onEnable, lockout(1), 'inspect check-again'],
    [
      'the bridge was measured again, after power: lock out again, then what was connected is confirmed',
      onEnable,
      bridgeIs(bridges.good),
      'lockout-2 check-again',
    ],
    ['the insulation likewise', onEnable, insulationIs(insulations.good), 'lockout-2 check-again'],
    ['the winding likewise', onEnable, windingIs(windings.alike), 'lockout-2 check-again'],
    ['the feedback was unplugged again', controlOff, done('unplug-feedback'), 'retry-feedback-off check-again'],
    [
      'the first retry was made again: lock out again before the device end',
      controlOff,
      retry('retry-feedback-off', 'no-trip'),
      'lockout-2 check-again',
    ],
    ['the device end was unplugged again', controlOff, done('unplug-device-end'), 'retry-device-end check-again'],
    ['a lockout that was not one after all', onEnable, lockout(2, { waited: false }), 'lockout-2 problem'],
    ['leads that are on after all', onEnable, ['disconnect-leads', { done: false }], 'lockout-1 check-again'],
    ['the axis can’t fall after all: nothing else changes', onEnable, trips('on-enable', 'no'), undefined],
    ['another drive: nothing that was measured on this axis changes', onEnable, looked(3, 2), undefined],
    [
      'nobody knows any more whether the axis can fall: its support is confirmed',
      onEnable,
      trips('on-enable', 'unknown'),
      'support-axis check-again',
    ],
  ])('%s', (_, visit, change, due) => {
    const changed = [...visit, change];
    expect(dueAfter(changed)).toBe(due);
    expect(kept(changed)).toEqual(ids(visit));
  });

  it.each<[what: string, visit: Given[], change: Given]>([
    ['leads', onEnable, done('disconnect-leads')],
    ['support', onEnable, done('support-axis')],
    ['a retry', onEnable, retry('retry-leads-off', 'no-trip')],
    ['the first lockout', onEnable, lockout(1)],
    ['the second lockout', onEnable, lockout(2)],
    ['the bridge', onEnable, bridgeIs(bridges.good)],
    ['the feedback', controlOff, done('unplug-feedback')],
    ['the retry without feedback', controlOff, retry('retry-feedback-off', 'no-trip')],
  ])('%s: confirming step by step brings the old decision back', (_, visit, change) => {
    const { history, confirmed } = confirmAll([...visit, change]);
    expect(stateOf(history).decision).toEqual(stateOf(visit).decision);
    expect(stateOf(history).offPath).toEqual([]);
    // The bus is measured after each test that was taken while the leads were on again.
    const once = confirmed.filter((id) => id !== 'bus-again');
    expect(once.join()).toBe([...new Set(once)].join());
  });
});

describe('a change that leads another way', () => {
  it('keeps the steps of the old way, marked, and takes none of them into the decision', () => {
    const replaced = [...controlOff, trips('on-acceleration')];
    expect(stateOf(replaced).offPath.sort()).toEqual(
      ['lockout-2', 'retry-device-end', 'retry-feedback-off', 'unplug-device-end', 'unplug-feedback', 'inspect'].sort(),
    );
    expect(kept(replaced)).toEqual(ids(controlOff));
  });

  it('and after a change back, the old steps count again once they are confirmed', () => {
    const there = [...controlOff, trips('on-acceleration'), trips('control-off')];
    expect(stateOf(there).decision).toEqual(stateOf(controlOff).decision);
  });

  it('a retry on the old way was still power: touching a conductor needs a new lockout', () => {
    const tripped: Given[] = [
      looked(),
      trips('control-off'),
      lockout(1),
      seen(),
      done('unplug-feedback'),
      retry('retry-feedback-off', 'trips'),
    ];
    const other = [...tripped, trips('now-and-then')];
    expect(dueAfter(other)).toBe('lockout-1 check-again');
    expect(stateOf(other).conditions.lockedBy).toBeUndefined();
    expect(dueAfter([...other, lockout(1)])).toBe('inspect check-again');
    expect(dueAfter([...other, lockout(1), seen()])).toBe('disconnect-leads due');
    const off = [...other, lockout(1), seen(), done('disconnect-leads')];
    expect(dueAfter(off)).toBe('mechanics due');
    expect(dueAfter([...off, mechanics('free')])).toBe('bridge due');
  });

  it('an axis that turns out to be able to fall is supported before the retry counts', () => {
    const [find, , ...rest] = onEnable as [Given, Given, ...Given[]];
    const stays = [find, trips('on-enable', 'no'), ...rest.filter(([id]) => id !== 'support-axis')];
    expect(stateOf(stays).decision?.kind).toBe('no-fault-found');
    expect(dueAfter([...stays, trips('on-enable', 'unknown')])).toBe('support-axis due');
    // The leads are on since the axis was tried: they are taken off first, after a lockout.
    const supported = confirmAll([...stays, trips('on-enable', 'yes'), done('support-axis')]);
    expect(supported.confirmed.slice(0, 2)).toEqual(['lockout-1', 'inspect']);
    expect(supported.confirmed).toContain('retry-leads-off');
  });

  it('a drive that turns out burnt is not asked to be switched on again', () => {
    const burnt = [...onEnable, seen({ drive: 'burnt' })];
    // What was done before stays on the way; it is not asked for again.
    expect(stateOf(burnt).decision?.replace).toEqual([]);
    expect(stateOf(burnt).decision?.suspect).toEqual([{ part: 'drive', reasons: ['drive-burnt'] }]);
    expect(dueAfter([...burnt, done('disconnect-leads')])).not.toMatch(/^retry-/);
  });

  it('an insulation that fails on the second reading leads to separating cable and motor, before the later steps', () => {
    const low = [...onEnable, insulationIs(insulations.low)];
    expect(dueAfter(low)).toBe('lockout-2 check-again');
    const again = confirmAll(low).history;
    expect(dueAfter(again)).toBe('isolation due');
    expect(stateOf(again).offPath.sort()).toEqual(['reconnect', 'retry-all']);
    const separated = [...again, isolationIs(isolations.motorBad)];
    expect(stateOf(separated).decision?.replace.map(({ part }) => part)).toEqual(['motor']);
  });
});

describe('a bus that is found charged at the bridge', () => {
  const charged = [...onEnable.slice(0, 6), bridgeIs(bridges.busCharged, 'left open')];

  it('breaks the lockout, and leaving it open does not help', () => {
    expect(dueAfter(charged)).toBe('lockout-1 problem');
    expect(stateOf(charged).path.at(-1)?.problem).toBe('bus-not-discharged');
  });

  it('after a new lockout, the bridge is measured again before anything else is', () => {
    const confirmed = [...charged, lockout(1), seen(), done('disconnect-leads')];
    expect(dueAfter(confirmed)).toBe('bridge problem');
    expect(dueAfter(confirmAll(confirmed).history)).not.toBe('winding due');
    expect(dueAfter([...confirmed, bridgeIs(bridges.good)])).toBe('bus-again due');
  });
});

it('a drive that tripped with its feedback off is not called good after the symptom was corrected', () => {
  const corrected: Given[] = [
    ...controlOff.slice(0, 5),
    retry('retry-feedback-off', 'trips'),
    trips('when-hot'),
    lockout(1),
    seen(),
    done('disconnect-leads'),
    mechanics('free'),
    bridgeIs(bridges.good),
    busAgain(),
    windingIs(windings.alike),
    idle(),
    insulationIs(insulations.low),
    isolationIs(isolations.motorBad),
  ];
  const { decision } = stateOf(corrected);
  expect(decision?.replace.map(({ part }) => part)).toEqual(['motor']);
  expect(decision?.open).toContain('left-evidence');
  expect(decision?.good).toEqual(['motor-cable']);
});
