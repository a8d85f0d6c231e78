import { expect, test } from 'vitest';
import { seeded } from '../../../../src/kernel/random.ts';
import type { Action } from '../../../../src/practice/case/action.ts';
import { Machine } from '../../../../src/practice/case/machine.ts';
import { perform } from '../../../../src/practice/case/perform.ts';
import { type AxisState, leadsOff } from '../../../../src/practice/simulator/axis-state.ts';
import { faultedAxis } from '../../../../src/practice/simulator/faulted-axis.ts';
import { drawInstruments } from '../../../../src/practice/simulator/instruments.ts';
import { drawAxis } from '../../../../src/practice/simulator/parameters.ts';

/** `npm run prove` reports no unsafe act: that means something only if unsafe acts are recorded. */
function machine(fault = 'nuisance', change: { seen?: 'burnt'; gravityLoaded?: boolean } = {}): Machine {
  const random = seeded(4);
  const axis = faultedAxis(fault, { ...drawAxis(random), gravityLoaded: change.gravityLoaded ?? false }, random);
  const seen = { ...axis.seen, drive: change.seen ?? ('nothing' as const) };
  return new Machine({ ...axis, seen }, drawInstruments(random), 20, 20, random);
}

const lockedOut = (...how: Parameters<typeof machine>): Machine => {
  const one = machine(...how);
  one.lockOut();
  return one;
};

test('hands on conductors with power on', () => {
  const live = machine();
  live.change(leadsOff);
  live.measure('ohms', 'DC+', 'drive.U');
  live.handsOn();
  expect(live.unsafe).toEqual(['hands-with-power', 'hands-with-power', 'resistance-on-live', 'hands-with-power']);
});

test('after the lockout hands are allowed until the next power', () => {
  const axis = lockedOut();
  axis.change(leadsOff);
  expect(axis.unsafe).toEqual([]);
  axis.retry('enable');
  axis.state = { ...axis.state, supply: false };
  axis.handsOn();
  expect(axis.unsafe).toEqual(['hands-without-lockout', 'hands-on-charged-bus']);
});

test('an insulation tester on leads that reach the drive is unsafe', () => {
  const axis = lockedOut();
  axis.measure('insulation', 'motor.U', 'ground');
  expect(axis.unsafe).toEqual(['tester-on-drive']);
});

test('an axis that can fall, enabled without support, its leads off: it falls', () => {
  const axis = lockedOut('nuisance', { gravityLoaded: true });
  axis.state = leadsOff(axis.state);
  axis.retry('enable');
  expect(axis.unsafe).toEqual(['touched-without-support', 'enabled-without-support', 'axis-fell']);
  const supported = machine('nuisance', { gravityLoaded: true });
  supported.support();
  supported.lockOut();
  supported.change(leadsOff);
  supported.retry('enable');
  expect(supported.unsafe).toEqual([]);
});

test('a burnt drive powered, a failed measurement ignored, PE left off', () => {
  const burnt = lockedOut('nuisance', { seen: 'burnt' });
  burnt.retry('power');
  expect(burnt.unsafe).toEqual(['damaged-drive-powered']);
  const failed = lockedOut();
  failed.noteFailure();
  failed.retry('all');
  expect(failed.unsafe).toEqual(['powered-after-failure']);
  const noPe = lockedOut();
  noPe.change((state) => ({ ...state, driveEnd: { ...state.driveEnd, PE: false } }));
  noPe.retry('all');
  expect(noPe.unsafe).toEqual(['powered-without-pe']);
});

/** A drive of one common design, its leads off, locked out. */
function opened(): Machine {
  const random = seeded(4);
  const alike = (ohms: number) => ({ U: ohms, V: ohms, W: ohms });
  const parameters = {
    ...drawAxis(random),
    gravityLoaded: false,
    busFarads: 235e-6,
    bleedOhms: 470e3,
    upperOhms: alike(900e3),
    lowerOhms: alike(47e3),
  };
  const instruments = { ...drawInstruments(random), error: 0, leadOhms: 0 };
  const one = new Machine(faultedAxis('nuisance', parameters, random), instruments, 20, 20, random);
  one.lockOut();
  one.change(leadsOff);
  return one;
}

const ohms = (one: Machine, phase: string, heldSeconds?: number): number => {
  const setting = heldSeconds === undefined ? {} : { heldSeconds };
  const { reading } = one.measure('ohms', 'DC+', `drive.${phase}`, setting);
  return reading.kind === 'value' ? reading.value : Number.POSITIVE_INFINITY;
};

test('a reading taken too soon is low, charges the bus, and the same one read again stands higher', () => {
  const drive = opened();
  const settled = ohms(opened(), 'U');
  const tooSoon = ohms(drive, 'U', 3);
  expect(tooSoon).toBeLessThan(settled / 2);
  expect(drive.state.busVolts).toBeGreaterThan(0.01);
  // Without a time it stands still first, and the charge of the reading before has gone.
  expect(ohms(drive, 'V') / settled).toBeCloseTo(1, 1);
  expect(ohms(drive, 'U') / settled).toBeCloseTo(1, 1);
  expect(drive.unsafe).toEqual([]);
});

test('a thermometer that is off shows so', () => {
  const random = seeded(4);
  const axis = faultedAxis('nuisance', drawAxis(random), random);
  const one = new Machine(axis, { ...drawInstruments(random), thermometerKelvin: 3 }, 20, 20, random);
  expect(perform(one, { act: 'thermometer' })).toEqual({ code: 'temperature', celsius: 23 });
});

test('one enable opens the brakes of both axes of a drive: the other one falls', () => {
  const random = seeded(4);
  const neighbour = { windingOhms: 1.6, frameInsulationOhms: 1e9, gravityLoaded: true };
  const axis = faultedAxis('nuisance', { ...drawAxis(random), gravityLoaded: false, neighbour }, random);
  const one = new Machine(axis, drawInstruments(random), 20, 20, random);
  expect(one.canFall).toBe(true);
  one.support();
  one.lockOut();
  perform(one, { act: 'join', joint: 'neighbour-leads', on: false });
  one.support(false);
  one.retry('enable');
  expect(one.unsafe).toEqual(['enabled-without-support', 'axis-fell']);
});

test.each([
  [{ act: 'join', joint: 'idle-cores', on: false }, { idleCores: 'free' }],
  [{ act: 'join', joint: 'idle-cores', on: true }, { idleCores: 'connected' }],
  [{ act: 'idle-cores-to-pe' }, { idleCores: 'to-pe' }],
  [{ act: 'join', joint: 'braking-resistor', on: false }, { brakingResistor: false }],
  [{ act: 'join', joint: 'dc-link', on: false }, { dcLink: false }],
  [{ act: 'join', joint: 'neighbour-leads', on: false }, { neighbourLeads: false }],
  [{ act: 'join', joint: 'neighbour-feedback', on: false }, { neighbourFeedback: false }],
  [{ act: 'join', joint: 'filter', on: false }, { filter: false }],
  [{ act: 'bend-cable' }, { bent: true }],
  [{ act: 'let-cable-go' }, { bent: false }],
] satisfies [Action, Partial<AxisState>][])('the act %o', (action, expected) => {
  const one = lockedOut();
  expect(perform(one, action)).toEqual({ code: 'done' });
  expect(one.state).toMatchObject(expected);
  expect(one.unsafe).toEqual([]);
});
