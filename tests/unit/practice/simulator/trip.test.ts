import { expect, test } from 'vitest';
import { type AxisState, asFound, leadsOff } from '../../../../src/practice/simulator/axis-state.ts';
import { type FaultedAxis, faultedAxis } from '../../../../src/practice/simulator/faulted-axis.ts';
import { drawAxis } from '../../../../src/practice/simulator/parameters.ts';
import { seeded } from '../../../../src/practice/simulator/random.ts';
import { type Reach, tripOf } from '../../../../src/practice/simulator/trip.ts';

const random = seeded(9);
const parameters = drawAxis(random);
const at = (id: string, moment: FaultedAxis['moment']): FaultedAxis => {
  const axis = faultedAxis(id, parameters, random);
  return { ...axis, moment, trips: axis.trips.map((one) => ({ ...one, moment })) };
};

const found = asFound(20, 20);
const off = leadsOff(found);
const unplugged: AxisState = { ...found, feedbackAtDrive: false };
const deviceOff: AxisState = { ...found, feedbackAtDevice: false };

test.each<[string, FaultedAxis, AxisState, Reach, boolean]>([
  ['a shorted switch trips at the enable, motor or not', at('short-upper-U', 'on-enable'), off, 'enable', true],
  ['and not before', at('short-upper-U', 'on-enable'), off, 'power', false],
  ['a dead motor trips at the enable while it is on', at('frame-U', 'on-enable'), found, 'enable', true],
  ['and not with its leads off', at('frame-U', 'on-enable'), off, 'all', false],
  ['a motor that trips on acceleration passes the enable', at('frame-U', 'on-acceleration'), found, 'enable', false],
  ['and trips when it runs', at('frame-U', 'on-acceleration'), found, 'all', true],
  ['a shorted feedback cable trips at power', at('feedback-cable-short', 'control-off'), deviceOff, 'power', true],
  ['and not unplugged', at('feedback-cable-short', 'control-off'), unplugged, 'power', false],
  ['a bad device trips at power', at('feedback-device', 'control-off'), found, 'power', true],
  ['and not without the device', at('feedback-device', 'control-off'), deviceOff, 'power', false],
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
