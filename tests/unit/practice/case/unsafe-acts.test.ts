import { describe, expect, test } from 'vitest';
import type { Action } from '../../../../src/practice/case/action.ts';
import type { Unsafe } from '../../../../src/practice/case/unsafe-acts.ts';
import { act, busMeasured, insulation, leadsOff, measure, peOff, run, safe, unplugged } from './support.ts';

/** The unsafe acts that each of these adds, on an axis that can fall. */
const cases: [title: string, acts: Action[], unsafe: Unsafe[]][] = [
  ['a careful beginning', [...safe, leadsOff], []],
  ['leads off with the supply on', [leadsOff], ['hands-with-power']],
  ['measured with the supply on', [busMeasured], ['measured-live']],
  ['a resistance with the supply on', [measure('ohms', 'DC+', 'drive.U')], ['hands-with-power', 'resistance-on-live']],
  [
    'off, and hands at once',
    [...act('support', 'switch-off'), leadsOff],
    ['hands-without-lockout', 'hands-on-charged-bus'],
  ],
  ['locked, and hands at once', [...act('support', 'switch-off', 'lock-out'), leadsOff], ['hands-on-charged-bus']],
  [
    'waited and not measured',
    [...act('support', 'switch-off', 'lock-out', 'wait-label'), leadsOff],
    ['bus-not-measured'],
  ],
  [
    'measured by a meter that was not proved',
    [...act('support', 'switch-off', 'lock-out', 'wait-label'), busMeasured, leadsOff],
    ['meter-not-proved', 'bus-not-measured'],
  ],
  [
    'measured too early, and gone on',
    [...act('support', 'switch-off', 'lock-out', 'prove-meter'), busMeasured, leadsOff],
    ['hands-on-charged-bus'],
  ],
  [
    'measured without a lock',
    [...act('support', 'switch-off', 'wait-label', 'prove-meter'), busMeasured],
    ['hands-without-lockout'],
  ],
  ['not supported', [...safe.slice(1), leadsOff], ['touched-without-support', 'touched-without-support']],
  ['an insulation test, discharged', [...safe, leadsOff, peOff, insulation('cable.drive.U', 'ground'), unplugged], []],
  [
    'an insulation test, not discharged',
    [...safe, leadsOff, measure('insulation', 'cable.drive.U', 'ground', { testVolts: 500 }), unplugged],
    ['winding-not-discharged'],
  ],
  ['the tester on a drive terminal', [...safe, leadsOff, insulation('drive.U', 'ground')], ['tester-on-drive']],
  ['the tester through leads that are on', [...safe, insulation('cable.drive.V', 'ground')], ['tester-on-drive']],
  [
    'the tester through the windings and one lead that is on',
    [...safe, { act: 'join', joint: 'lead-U', on: false }, insulation('cable.drive.U', 'ground')],
    ['tester-on-drive'],
  ],
  ['the tester on the motor, unplugged', [...safe, unplugged, insulation('motor.U', 'motor.frame')], []],
  [
    'a thousand volts',
    [...safe, leadsOff, measure('insulation', 'cable.drive.U', 'ground', { testVolts: 1000, discharge: true })],
    ['test-voltage-too-high'],
  ],
  ['enabled without support', act('reset', 'enable'), ['enabled-without-support']],
  [
    'enabled without support, leads off',
    [
      ...act('support'),
      ...safe.slice(1),
      leadsOff,
      ...act('take-support-away', 'take-lock-off', 'switch-on', 'enable'),
    ],
    ['enabled-without-support', 'axis-fell'],
  ],
  ['enabled with the leads off', [...safe, leadsOff, ...act('take-lock-off', 'switch-on', 'enable')], []],
  ['powered with PE off and leads on', [...safe, peOff, ...act('take-lock-off', 'switch-on')], ['powered-without-pe']],
  [
    'enabled with the feedback unplugged',
    [...safe, { act: 'join', joint: 'feedback-drive', on: false }, ...act('take-lock-off', 'switch-on', 'enable')],
    ['enabled-without-feedback'],
  ],
  [
    'powered with bonding wires in place',
    [...safe, leadsOff, { act: 'bond', except: 'U' }, ...act('take-lock-off', 'switch-on')],
    ['powered-with-bonds'],
  ],
  ['enabled with an open end', [...safe, unplugged, ...act('take-lock-off', 'switch-on', 'enable')], ['live-open-end']],
];

describe('each unsafe act is recorded with its code, and no other', () => {
  test.each(cases)('%s', (_, acts, unsafe) => {
    expect(run('nuisance', acts).machine.unsafe).toEqual(unsafe);
  });
});

test('power after a failed reading is unsafe until the reading is repeated with a better result', () => {
  const back: Action[] = [{ act: 'join', joint: 'leads', on: true }, ...act('take-lock-off', 'switch-on', 'enable')];
  const failed = run('frame-U', [...safe, leadsOff, insulation('cable.drive.U', 'ground'), ...back]);
  expect(failed.machine.unsafe).toEqual(['powered-after-failure']);
  const short = run('short-upper-U', [...safe, leadsOff, measure('ohms', 'DC+', 'drive.U'), ...back]);
  expect(short.machine.unsafe).toEqual(['powered-after-failure']);
  const wet: Action[] = [
    insulation('cable.drive.U', 'ground'),
    ...act('dry-connector'),
    insulation('cable.drive.U', 'ground'),
  ];
  expect(run('connector-wet', [...safe, leadsOff, ...wet, ...back]).machine.unsafe).toEqual([]);
});

test('tripping it again with nothing changed is unsafe', () => {
  const again = run('short-upper-U', act('support', 'reset', 'enable', 'reset', 'enable'));
  expect(again.machine.unsafe).toContain('tried-again-untested');
});
