import { expect, test } from 'vitest';
import { Machine } from '../../../../src/practice/case/machine.ts';
import { leadsOff } from '../../../../src/practice/simulator/axis-state.ts';
import { faultedAxis } from '../../../../src/practice/simulator/faulted-axis.ts';
import { drawInstruments } from '../../../../src/practice/simulator/instruments.ts';
import { drawAxis } from '../../../../src/practice/simulator/parameters.ts';
import { seeded } from '../../../../src/practice/simulator/random.ts';

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
