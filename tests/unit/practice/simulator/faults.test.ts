import { describe, expect, test } from 'vitest';
import { phases } from '../../../../src/kernel/electrics/phases.ts';
import { seeded } from '../../../../src/kernel/random.ts';
import { axisNetwork } from '../../../../src/practice/simulator/axis-network.ts';
import { asFound } from '../../../../src/practice/simulator/axis-state.ts';
import { faultedAxis, faultIds } from '../../../../src/practice/simulator/faulted-axis.ts';
import { combinations, singleFaults } from '../../../../src/practice/simulator/faults.ts';
import { nodeIndex } from '../../../../src/practice/simulator/network.ts';
import { drawAxis } from '../../../../src/practice/simulator/parameters.ts';

const draw = (id: string, seed = 1) => {
  const random = seeded(seed);
  return faultedAxis(id, drawAxis(random), random);
};

const nodes = new Set(['ground', ...nodeIndex(axisNetwork(draw('nuisance'), asFound(20, 20))).keys()]);
const plugged = (node: string) => node.replace('mated.', 'motor.');

test('ids are unique', () => {
  expect(new Set(faultIds).size).toBe(faultIds.length);
});

describe.each(singleFaults.map((fault) => [fault.id, fault] as const))('%s', (_, fault) => {
  test('uses nodes that the axis has, with ranges from low to high', () => {
    for (const { a, b, ohms } of fault.leaks) {
      expect([plugged(a), b].filter((node) => !nodes.has(node))).toEqual([]);
      expect(ohms[0]).toBeGreaterThan(0);
      expect(ohms[1]).toBeGreaterThan(ohms[0]);
    }
    expect(fault.broken.filter((node) => !nodes.has(node))).toEqual([]);
  });

  test('has a moment, and a bad part or a reason why no part is bad', () => {
    expect(fault.moments.length).toBeGreaterThan(0);
    expect(fault.bad.length > 0 || fault.hidden !== undefined).toBe(true);
  });

  test('changes the axis, unless it is a fault without a trace', () => {
    const { leaks, broken, motor } = draw(fault.id);
    const changed =
      leaks.length > 0 || broken.length > 0 || Object.keys(motor.shortedShare).length > 0 || motor.insulationFactor < 1;
    expect(changed).toBe(
      ![
        'gate-drive-at-once',
        'gate-drive-under-load',
        'gate-drive-now-and-then',
        'feedback-contact',
        'nuisance',
      ].includes(fault.id),
    );
  });
});

test('every kind of fault exists: each switch, each core to each other conductor and ground, each phase and pair of the motor', () => {
  const at = singleFaults.flatMap(({ leaks }) => leaks.map(({ a, b }) => `${a} ${b}`));
  for (const phase of phases) {
    for (const rail of ['DC+', 'DC-']) expect(at).toContain(`${rail} drive.${phase}`);
    for (const other of ['ground', 'cable.PE', 'cable.screen']) expect(at).toContain(`cable.${phase} ${other}`);
    expect(at).toContain(`motor.mid.${phase} motor.frame`);
    expect(singleFaults.some(({ shortedShare }) => shortedShare[phase] !== undefined)).toBe(true);
  }
  for (const pair of ['U V', 'V W', 'W U']) {
    const [one, other] = pair.split(' ');
    expect(at).toContain(`cable.${one} cable.${other}`);
    expect(at).toContain(`motor.mid.${one} motor.mid.${other}`);
  }
});

test('a combination has the bad parts of all its faults, and the moment of the first', () => {
  for (const { id, of } of combinations) {
    const bad = of.flatMap((part) => singleFaults.find((fault) => fault.id === part)?.bad ?? []);
    const drawn = draw(id);
    expect(new Set(drawn.bad)).toEqual(new Set(bad));
    expect(singleFaults.find((fault) => fault.id === of[0])?.moments).toContain(drawn.moment);
  }
});

test('the same seed draws the same axis, another seed another; an unknown fault is an error', () => {
  expect(draw('frame-U', 5)).toEqual(draw('frame-U', 5));
  expect(draw('frame-U', 5).leaks).not.toEqual(draw('frame-U', 6).leaks);
  expect(() => draw('frame-X')).toThrow('no fault frame-X');
});
