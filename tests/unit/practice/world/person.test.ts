import { describe, expect, test } from 'vitest';
import { seeded } from '../../../../src/kernel/random.ts';
import { leadsOff } from '../../../../src/practice/simulator/axis-state.ts';
import { drawFieldMachine } from '../../../../src/practice/world/field-machine.ts';
import { asTold } from '../../../../src/practice/world/person.ts';
import { drawSlips, type Slips } from '../../../../src/practice/world/slips.ts';

const careful: Slips = {
  told: 'on-enable',
  changeTold: 'nothing',
  compares: 'sees',
  otherMessageNoted: false,
  firstReadingTooSoon: false,
  leadsExchanged: false,
  triedOnce: false,
  notPermitted: false,
  notLooked: false,
  stripNotAllowed: false,
  soundKnown: true,
  bendShows: true,
};

const machineWith = (fault: string, slips: Partial<Slips> = {}) => {
  const machine = drawFieldMachine(fault, seeded(3));
  Object.assign(machine.slips, careful, slips);
  return machine;
};

const tried = (machine: ReturnType<typeof machineWith>) => () => ({
  powerAllowed: true,
  result: machine.retry('enable') ? ('trips' as const) : ('no-trip' as const),
});

describe('another message than the trip', () => {
  // Enabled without its motor, this drive reports that and does not trip.
  const withoutMotor = (slips: Partial<Slips> = {}) => {
    const machine = machineWith('nuisance', slips);
    machine.axis.otherMessages.withoutMotor = true;
    machine.state.driveEnd.U = false;
    return machine;
  };

  test('is no trip', () => {
    const machine = withoutMotor();
    expect(asTold('retry-leads-off', tried(machine), machine).result).not.toBe('trips');
    expect(machine.lastTrip).toEqual({ stage: 'at-enable', message: 'other' });
  });

  test('is noted as the trip by a person who does not read it', () => {
    const machine = withoutMotor({ otherMessageNoted: true });
    expect(asTold('retry-leads-off', tried(machine), machine).result).toBe('trips');
  });
});

test('who may not switch on leaves the machine without power', () => {
  const machine = machineWith('short-upper-U', { notPermitted: true });
  machine.lockOut();
  expect(asTold('retry-all', tried(machine), machine)).toMatchObject({ powerAllowed: false, result: 'not-done' });
  expect(machine.state.supply).toBe(false);
});

test('the moment is told as the operator remembers it, the mechanics as they feel', () => {
  const machine = machineWith('load', { told: 'now-and-then' });
  machine.axis.feel = 'stiff';
  expect(asTold('symptom', () => ({ when: 'on-acceleration', gravityLoaded: 'no' }), machine).when).toBe(
    'now-and-then',
  );
  expect(asTold('mechanics', () => ({ found: 'free' }), machine).found).toBe('stiff');
  machine.slips.notLooked = true;
  expect(asTold('mechanics', () => ({ found: 'free' }), machine).found).toBe('not-checked');
});

test('exchanged leads show the diode of the rail that should block', () => {
  const forward = (slips: Partial<Slips>) => {
    const machine = machineWith('nuisance', slips);
    machine.support();
    machine.lockOut();
    machine.change(leadsOff);
    const { reading } = machine.measure('diode', 'DC+', 'drive.U');
    return reading.kind === 'value' ? reading.value : Number.POSITIVE_INFINITY;
  };
  expect(forward({ leadsExchanged: true })).toBeLessThan(0.6);
  expect(forward({})).toBeGreaterThan(0.8);
});

test('a fifth of the operators tell another moment', () => {
  const random = seeded(8);
  const { axis } = machineWith('frame-U');
  const told = Array.from({ length: 4000 }, () => drawSlips(axis, random).told);
  expect(told.filter((moment) => moment !== axis.moment).length / told.length).toBeCloseTo(0.2, 1);
});

test('a trip that comes each time came in every start; a nuisance once', () => {
  const random = seeded(9);
  for (const [fault, all] of [
    ['frame-U', true],
    ['nuisance', false],
  ] as const) {
    const { axis } = machineWith(fault);
    const counts = Array.from({ length: 200 }, () => drawSlips(axis, random).count).filter(
      (count) => count !== undefined,
    );
    expect(counts.length).toBeGreaterThan(100);
    expect(counts.every(({ came, of }) => came === (all ? of : 1) && of >= 3)).toBe(true);
  }
});
