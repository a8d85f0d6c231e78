import { describe, expect, test } from 'vitest';
import { seeded } from '../../../../src/kernel/random.ts';
import { axisNetwork } from '../../../../src/practice/simulator/axis-network.ts';
import { asFound } from '../../../../src/practice/simulator/axis-state.ts';
import { type FaultedAxis, faultedAxis } from '../../../../src/practice/simulator/faulted-axis.ts';
import { fieldFaults } from '../../../../src/practice/simulator/field-faults.ts';
import { nodeIndex } from '../../../../src/practice/simulator/network.ts';
import { type Reach, tripOf } from '../../../../src/practice/simulator/trip.ts';
import { drawAxisOfField } from '../../../../src/practice/world/field-axis.ts';

const found = asFound(70, 25);

describe.each(fieldFaults.map((fault) => [fault.id, fault] as const))('%s', (id, fault) => {
  const axis = drawAxisOfField(id, seeded(7));

  test('the axis has what the fault needs, and the fault its nodes', () => {
    const sound: FaultedAxis = { ...axis, leaks: [], broken: [], contacts: [] };
    const nodes = new Set(['ground', ...nodeIndex(axisNetwork(sound, { ...found, bent: true })).keys()]);
    const named = fault.leaks.flatMap(({ a, b }) => [a, b]);
    expect(named.filter((node) => !nodes.has(node))).toEqual([]);
    for (const { ohms } of [...fault.leaks, ...(fault.contacts ?? [])]) expect(ohms[1]).toBeGreaterThan(ohms[0]);
  });

  test('trips as it was found, at its moment and not before', () => {
    const certain = { ...axis, trips: axis.trips.map((one) => ({ ...one, every: 1 })) };
    const trips = (reach: Reach) => tripOf(certain, found, reach, seeded(1));
    const reaches: Reach[] = ['power', 'enable', 'all'];
    const first = { 'control-off': 0, 'on-enable': 1 }[axis.moment as string] ?? 2;
    expect(reaches.map((reach) => trips(reach) !== undefined)).toEqual(reaches.map((_, at) => at >= first));
    expect(trips('all')?.message).toBe('same');
  });

  test('has a family, and a bad part or a reason why no part is bad', () => {
    expect(axis.cause).toBe(fault.cause);
    expect(fault.bad.length > 0 || fault.hidden !== undefined).toBe(true);
  });
});

test('a fault that shows only bent, hot or at voltage changes no other network', () => {
  const quiet = (id: string) => {
    const axis = drawAxisOfField(id, seeded(7));
    const conditions = [...axis.leaks, ...(axis.contacts ?? [])].map(({ condition }) => condition);
    return conditions.length > 0 && conditions.every((condition) => condition !== undefined);
  };
  for (const id of ['bent-leak-U', 'bent-open-V', 'hot-W', 'above-200-volts-U', 'feedback-cable-intermittent']) {
    expect(quiet(id), id).toBe(true);
  }
});

test('how the axis feels and what was changed are drawn by their chances', () => {
  const draws = 400;
  const axes = (id: string) => Array.from({ length: draws }, (_, seed) => drawAxisOfField(id, seeded(seed)));
  const share = (id: string, holds: (axis: FaultedAxis) => boolean) => axes(id).filter(holds).length / draws;
  expect(share('brake-drags', ({ feel }) => feel === 'brake-drags')).toBeCloseTo(0.5, 0.9);
  expect(share('commutation', ({ changed }) => changed)).toBeCloseTo(0.9, 0.9);
  expect(share('tuning', ({ feel }) => feel === 'free')).toBe(1);
});

test('an unknown fault is an error', () => {
  expect(() => drawAxisOfField('frame-X', seeded(1))).toThrow('no fault frame-X');
  expect(() => faultedAxis('field-frame-U', drawAxisOfField('nuisance', seeded(1)).parameters, seeded(1))).toThrow();
});
