import { describe, expect, test } from 'vitest';
import type { Action } from '../../../../src/practice/case/action.ts';
import type { CaseRun } from '../../../../src/practice/case/case-run.ts';
import type { Purpose } from '../../../../src/practice/case/purpose.ts';
import { act, busMeasured, insulation, leadsOff, measure, peOff, run, safe, unplugged } from './support.ts';

const last = (one: CaseRun) => {
  const entry = one.entries.at(-1);
  if (entry?.result.code !== 'reading') throw new Error(`no reading: ${entry?.result.code}`);
  return entry.result.shown;
};

const ohms = (one: CaseRun): number => {
  const { reading } = last(one);
  return reading.kind === 'value' ? reading.value : Number.POSITIVE_INFINITY;
};

const free: Action[] = [leadsOff, peOff, { act: 'join', joint: 'lead-screen', on: false }, unplugged];

const purposes: [title: string, acts: Action[], purpose: Purpose][] = [
  ['the bus', [...safe.slice(0, -1), busMeasured], 'bus'],
  ['a rail to a terminal, leads off', [...safe, leadsOff, measure('ohms', 'DC+', 'drive.U')], 'bridge'],
  ['the same by diode test, turned round', [...safe, leadsOff, measure('diode', 'drive.U', 'DC+')], 'bridge'],
  ['a rail to a terminal, leads on', [...safe, measure('ohms', 'DC+', 'drive.U')], 'through-the-drive'],
  ['joined', [...safe, leadsOff, peOff, insulation('cable.drive.U', 'ground')], 'insulation'],
  [
    'joined, with a multimeter',
    [...safe, leadsOff, measure('ohms', 'cable.drive.U', 'ground')],
    'multimeter-as-tester',
  ],
  ['joined, leads on', [...safe, insulation('cable.drive.U', 'ground')], 'through-the-drive'],
  [
    'the cable off the motor and on the drive',
    [...safe, unplugged, insulation('cable.drive.U', 'ground')],
    'through-the-drive',
  ],
  ['PE, on its bar', [...safe, leadsOff, measure('ohms', 'cable.drive.PE', 'ground')], 'pe-still-on'],
  ['PE, off its bar', [...safe, leadsOff, peOff, measure('ohms', 'cable.drive.PE', 'ground')], 'insulation'],
  ['the cable alone', [...safe, ...free, insulation('cable.drive.U', 'ground')], 'isolation'],
  ['core to core', [...safe, ...free, insulation('cable.drive.U', 'cable.drive.V')], 'isolation'],
  ['the motor alone', [...safe, ...free, insulation('motor.U', 'motor.frame')], 'isolation'],
  ['PE of the motor alone', [...safe, ...free, measure('ohms', 'motor.PE', 'motor.frame')], 'isolation'],
  [
    'the winding through the cable',
    [...safe, leadsOff, measure('milliohms', 'cable.drive.U', 'cable.drive.V')],
    'winding',
  ],
  ['the winding at the motor', [...safe, unplugged, measure('ohms', 'motor.U', 'motor.V')], 'winding-motor'],
  ['the winding through the drive', [...safe, measure('ohms', 'cable.drive.U', 'cable.drive.V')], 'through-the-drive'],
  ['two points of ground', [...safe, measure('ohms', 'ground', 'motor.frame')], 'tells-nothing'],
];

describe('the purpose of a hook-up', () => {
  test.each(purposes)('%s', (_, acts, purpose) => {
    expect(run('nuisance', acts).entries.at(-1)?.purpose).toBe(purpose);
  });
});

describe('a wrong hook-up gives the reading that it really would', () => {
  test('the windings join the phases: a short of one switch shows at every phase while the leads are on', () => {
    for (const phase of ['U', 'V', 'W']) {
      expect(ohms(run('short-lower-V', [...safe, measure('ohms', `drive.${phase}`, 'DC-')]))).toBeLessThan(20);
    }
    expect(ohms(run('short-lower-V', [...safe, leadsOff, measure('ohms', 'drive.U', 'DC-')]))).toBeGreaterThan(10e3);
  });

  test('with one lead off, the two that are on still hide it', () => {
    const one: Action = { act: 'join', joint: 'lead-V', on: false };
    expect(ohms(run('short-lower-V', [...safe, one, measure('ohms', 'drive.V', 'DC-')]))).toBeLessThan(20);
    expect(ohms(run('short-lower-V', [...safe, one, measure('ohms', 'drive.U', 'DC-')]))).toBeGreaterThan(10e3);
  });

  test('a charged bus shows between the rails, and falsifies a resistance', () => {
    const early = [...act('support', 'switch-off', 'lock-out', 'prove-meter'), busMeasured];
    const volts = last(run('nuisance', early)).reading;
    expect(volts.kind === 'value' && volts.value).toBeGreaterThan(400);
    const sound = ohms(run('nuisance', [...safe, leadsOff, measure('ohms', 'DC+', 'drive.U')]));
    const charged = [...act('support', 'switch-off', 'lock-out'), leadsOff, measure('ohms', 'DC+', 'drive.U')];
    expect(ohms(run('nuisance', charged)) / sound).not.toBeCloseTo(1, 0);
  });

  test('an insulation test through the drive reads its leaks and damages the drive', () => {
    const tested = run('nuisance', [...safe, insulation('cable.drive.U', 'ground')]);
    expect(ohms(tested)).toBeLessThan(10e6);
    expect(tested.machine.hurtDrive).toBe(true);
    tested.do(leadsOff);
    tested.do(measure('ohms', 'DC+', 'drive.U'));
    expect(ohms(tested)).toBeLessThan(25e3);
    tested.do(measure('ohms', 'DC+', 'drive.V'));
    expect(ohms(tested)).toBeGreaterThan(50e3);
  });

  test('a range chosen by hand that is too low shows over-range', () => {
    const low = measure('ohms', 'DC+', 'drive.U', { range: 720 });
    expect(last(run('nuisance', [...safe, leadsOff, low])).reading).toMatchObject({ kind: 'over', atLeast: 720 });
  });

  test('the bonded row finds what a cable with both ends free can hide', () => {
    const acts = [...safe, ...free];
    const bond: Action = { act: 'bond', except: 'U' };
    expect(ohms(run('core-U-PE', [...acts, insulation('cable.drive.U', 'ground')]))).toBeGreaterThan(1e9);
    expect(ohms(run('core-U-PE', [...acts, bond, insulation('cable.drive.U', 'ground')]))).toBeLessThan(100e3);
  });
});

test('an impossible act changes nothing', () => {
  const refused = (acts: Action[]) => run('nuisance', acts).entries.at(-1)?.result;
  expect(refused(act('lock-out'))).toEqual({ code: 'refused', why: 'power-is-on' });
  expect(refused(act('switch-off', 'lock-out', 'switch-on'))).toEqual({ code: 'refused', why: 'lock-is-on' });
  expect(refused(act('enable'))).toEqual({ code: 'refused', why: 'trip-stands' });
  expect(refused(act('switch-off', 'enable'))).toEqual({ code: 'refused', why: 'power-is-off' });
  expect(refused([{ act: 'bond', except: 'U' }])).toEqual({ code: 'refused', why: 'leads-are-on' });
});

test('the same acts give the same run with the same readings', () => {
  const acts = [...safe, leadsOff, measure('ohms', 'DC+', 'drive.U'), ...act('take-lock-off', 'switch-on', 'enable')];
  expect(run('all-three', acts).entries).toEqual(run('all-three', acts).entries);
});
