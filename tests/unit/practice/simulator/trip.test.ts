import { describe, expect, test } from 'vitest';
import { seeded } from '../../../../src/kernel/random.ts';
import { type AxisState, asFound, leadsOff } from '../../../../src/practice/simulator/axis-state.ts';
import { type FaultedAxis, faultedAxis } from '../../../../src/practice/simulator/faulted-axis.ts';
import { drawAxis } from '../../../../src/practice/simulator/parameters.ts';
import { type Reach, type Trip, tripOf } from '../../../../src/practice/simulator/trip.ts';

const random = seeded(9);
const parameters = drawAxis(random);
const at = (name: string, moment: FaultedAxis['moment']): FaultedAxis => {
  const always = name.endsWith('-always');
  const drawn = faultedAxis(name.replace('-always', ''), parameters, random);
  const axis = always ? { ...drawn, trips: drawn.trips.map((one) => ({ ...one, every: 1 })) } : drawn;
  return { ...axis, moment, trips: axis.trips.map((one) => ({ ...one, moment })) };
};

const found = asFound(20, 20);
const off = leadsOff(found);
const unplugged: AxisState = { ...found, feedbackAtDrive: false };
const idleOff: AxisState = { ...found, idleCores: 'free' };
const resistorOff: AxisState = { ...found, brakingResistor: false };
const otherOff: AxisState = { ...found, neighbourLeads: false, neighbourFeedback: false };
const deviceOff: AxisState = { ...found, feedbackAtDevice: false };

test.each<[string, FaultedAxis, AxisState, Reach, boolean]>([
  ['a shorted transistor trips at the enable, motor or not', at('short-upper-U', 'on-enable'), off, 'enable', true],
  ['and not before', at('short-upper-U', 'on-enable'), off, 'power', false],
  ['a dead motor trips at the enable while it is on', at('frame-U', 'on-enable'), found, 'enable', true],
  ['and not with its leads off', at('frame-U', 'on-enable'), off, 'all', false],
  ['a motor that trips on acceleration passes the enable', at('frame-U', 'on-acceleration'), found, 'enable', false],
  ['and trips when it runs', at('frame-U', 'on-acceleration'), found, 'all', true],
  ['a shorted feedback cable trips at power', at('feedback-cable-short', 'control-off'), deviceOff, 'power', true],
  ['and not unplugged', at('feedback-cable-short', 'control-off'), unplugged, 'power', false],
  ['a bad device trips at power', at('feedback-device', 'control-off'), found, 'power', true],
  ['and not without the device', at('feedback-device', 'control-off'), deviceOff, 'power', false],
  ['a bad encoder signal trips with motor and feedback', at('commutation', 'on-enable'), found, 'enable', true],
  ['and not without the motor', at('commutation', 'on-enable'), off, 'enable', false],
  ['and not without the feedback', at('commutation', 'on-enable'), unplugged, 'enable', false],
  ['a dip of the supply trips whatever is connected', at('supply-always', 'control-off'), off, 'power', true],
  ['a shorted brake pair trips at the enable', at('brake-cores-shorted', 'on-enable'), found, 'enable', true],
  ['and not with the idle cores off', at('brake-cores-shorted', 'on-enable'), idleOff, 'enable', false],
  ['a bad braking resistor trips at power', at('braking-resistor-earthed', 'control-off'), found, 'power', true],
  ['and not when it is off', at('braking-resistor-earthed', 'control-off'), resistorOff, 'power', false],
  ['another axis trips at the enable with this motor off', at('other-axis-enable-U', 'on-enable'), off, 'enable', true],
  ['and not with its own leads off', at('other-axis-enable-U', 'on-enable'), otherOff, 'enable', false],
  ['feedback of another axis trips at power', at('other-axis-feedback', 'control-off'), unplugged, 'power', true],
  ['and not unplugged', at('other-axis-feedback', 'control-off'), otherOff, 'power', false],
  ['a nuisance does not come again', at('nuisance', 'on-enable'), found, 'all', false],
])('%s', (_, axis, state, reach, trips) => {
  expect(tripOf(axis, state, reach, seeded(1)) !== undefined).toBe(trips);
});

test('an intermittent fault trips as often as its probability says', () => {
  const axis = at('frame-U', 'on-enable');
  const rare = { ...axis, trips: axis.trips.map((one) => ({ ...one, every: 0.3 })) };
  const draws = seeded(2);
  const count = Array.from({ length: 2000 }, () => tripOf(rare, found, 'all', draws)).filter(Boolean).length;
  expect(count / 2000).toBeCloseTo(0.3, 1);
});

describe('stage and message', () => {
  const silent = { withoutMotor: false, withoutFeedback: false };
  const withMessages = (id: string, moment: FaultedAxis['moment'], messages: Partial<typeof silent>) => ({
    ...at(id, moment),
    otherMessages: { ...silent, ...messages },
  });

  test.each<[string, FaultedAxis, AxisState, Reach, Trip | undefined]>([
    [
      'an earth-fault test trips at power',
      at('earth-test-motor-U', 'control-off'),
      found,
      'all',
      { stage: 'at-power', message: 'same' },
    ],
    [
      'a short trips at the enable',
      at('short-upper-U', 'on-enable'),
      found,
      'all',
      { stage: 'at-enable', message: 'same' },
    ],
    ['braking is motion', at('chopper-dead', 'on-braking'), found, 'all', { stage: 'moving', message: 'same' }],
    [
      'a drive that misses its motor gives another message',
      withMessages('nuisance', 'on-enable', { withoutMotor: true }),
      off,
      'enable',
      { stage: 'at-enable', message: 'other' },
    ],
    [
      'not before it is enabled',
      withMessages('nuisance', 'on-enable', { withoutMotor: true }),
      off,
      'power',
      undefined,
    ],
    [
      'an overcurrent comes first',
      withMessages('short-upper-U', 'on-enable', { withoutMotor: true }),
      off,
      'enable',
      { stage: 'at-enable', message: 'same' },
    ],
    [
      'a drive that misses its feedback gives another message',
      withMessages('nuisance', 'on-enable', { withoutFeedback: true }),
      deviceOff,
      'power',
      { stage: 'at-power', message: 'other' },
    ],
    ['many drives give none', withMessages('nuisance', 'on-enable', {}), off, 'enable', undefined],
  ])('%s', (_, axis, state, reach, trip) => {
    expect(tripOf(axis, state, reach, seeded(1))).toEqual(trip);
  });
});
