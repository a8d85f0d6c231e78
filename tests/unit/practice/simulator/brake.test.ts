import { expect, test } from 'vitest';
import { seeded } from '../../../../src/kernel/random.ts';
import { asFound, leadsOff } from '../../../../src/practice/simulator/axis-state.ts';
import { axisFalls } from '../../../../src/practice/simulator/brake.ts';
import { drawAxis } from '../../../../src/practice/simulator/parameters.ts';

const hanging = { ...drawAxis(seeded(1)), gravityLoaded: true };
const lying = { ...hanging, gravityLoaded: false };
const enabled = { ...asFound(20, 20), supply: true, enabled: true };
const oneOff = { ...enabled, driveEnd: { ...enabled.driveEnd, V: false } };
const unplugged = { ...enabled, motorEnd: { ...enabled.motorEnd, U: false, V: false, W: false } };

test.each([
  ['hangs on its motor while enabled', hanging, enabled, false, false],
  ['falls when the drive trips with the brake still open', hanging, enabled, true, true],
  ['falls enabled with the motor leads off', hanging, leadsOff(enabled), false, true],
  ['falls with one lead off', hanging, oneOff, false, true],
  ['falls with the motor unplugged', hanging, unplugged, false, true],
  ['stays on its support', hanging, { ...leadsOff(enabled), axisSupported: true }, true, false],
  ['hangs on its brake while not enabled', hanging, { ...leadsOff(enabled), enabled: false }, false, false],
  ['hangs on its brake without power', hanging, { ...leadsOff(enabled), supply: false }, false, false],
  ['stays where nothing pulls it', lying, leadsOff(enabled), true, false],
])('an axis %s', (_, axis, state, tripped, falls) => {
  expect(axisFalls(axis, state, tripped)).toBe(falls);
});
