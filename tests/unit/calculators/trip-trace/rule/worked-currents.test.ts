import { expect, it } from 'vitest';
import { measureTrace } from '../../../../../src/calculators/trip-trace/measure/measure-trace.ts';
import { allowedRise } from '../../../../../src/calculators/trip-trace/rule/allowed-rise.ts';
import { type Computed, computedTrace, turning } from '../figures.ts';
import { add, atRest, drive, judged, moving, noisy, rising, type WorkedCase, workedCases } from './worked.ts';

// The sources are named in worked.ts.

const cases: WorkedCase[] = [
  [
    'a short circuit beside a motor at rest',
    // 560/(0.75 · 0.012 · 0.4) = 155.6 kA/s, so 19.4 A in 125 µs.
    'the least inductance allows 19.4 A in 125 µs, the current rose by 26 A, and two sensors of their own saw it',
    { ...atRest, currents: noisy(rising(() => 26)), tripAt: 0.300125 },
    ['slope-for'],
    ['short-outside'],
  ],
  [
    'the same with a third current that is the sum of the others',
    'one sensor that jumps alone would look like this too',
    { ...atRest, currents: rising(() => 26), tripAt: 0.300125 },
    ['slope-of-one'],
    ['earth-path', 'short-outside', 'sensing'],
  ],
  [
    'a rise of 18 A from U to V in a sample',
    // From terminal to terminal the bus drives 560/(0.012 · 0.4) · 125 µs = 14.6 A at the most.
    'the vector of (18, −18, 0) A has 2/√3 · 18 = 20.8 A, and 19.4 A are allowed',
    { ...atRest, currents: noisy(rising(() => 18)), tripAt: 0.300125 },
    ['slope-for'],
    ['short-outside'],
  ],
  [
    'a rise of 16 A from U to V in a sample',
    '18.5 A of the vector are less than 19.4 A: a motor of the least inductance may do that',
    { ...atRest, currents: noisy(rising(() => 16)), tripAt: 0.300125 },
    ['slope-nothing'],
    [],
  ],
  [
    'the bus suddenly across the whole winding',
    // From terminal to terminal: 560/0.012 = 46.7 kA/s, 5.8 A in a sample, more than half of the 7.8 A across one phase.
    'U/L = 46.7 kA/s gives 5.8 A in 125 µs: the motor may be the path, at this sampling',
    {
      ...atRest,
      currents: rising((t) => (560 / 1.5) * (1 - Math.exp((-t * 1.5) / 0.012))),
      tripAt: 0.3006,
    },
    ['slope-nothing'],
    [],
  ],
  [
    'a slow rise to the trip level',
    '40 A within 20 ms is 0.25 A in a sample, seen on its whole way',
    {
      ...atRest,
      currents: rising((t) => 2000 * t),
      tripAt: 0.3132,
      seconds: 0.32,
    },
    ['slope-against', 'sum-nothing'],
    [],
  ],
  [
    'a path from U to earth',
    'Kirchhoff: 12 A of U come back through nothing',
    {
      ...moving,
      tripAt: 0.3,
      currents: (t) => add(turning(10, 100)(t), [t > 0.29 ? 12 : 0, 0, 0]),
    },
    ['sum-for'],
    ['earth-path', 'sensing'],
  ],
  [
    'a sensor of V that reads 20 % too much',
    'the sum is a fifth of iV all the time: its share of the shown 1.2 · iV is 1/6',
    {
      ...moving,
      currents: (t) => add(turning(10, 100)(t), [0, 0.2 * turning(10, 100)(t)[1], 0]),
    },
    ['sum-of-one'],
    ['sensing', 'earth-path'],
  ],
  [
    'a sensor of U that is off by 3 A',
    'the sum is 3 A all the time',
    { ...moving, currents: (t) => add(turning(10, 100)(t), [3, 0, 0]) },
    ['sum-offset'],
    ['sensing'],
  ],
  [
    'two measured currents',
    'the third is computed, and the sum zero whatever happens',
    { ...moving, measured: 2, currents: turning(25, 100) },
    ['sum-nothing'],
    [],
  ],
];

workedCases(cases);

it('an ordinary current of 6 A at rest, while the drive trips at 30 A: half of 19.4 A lies between two samples at the most', () => {
  const small = {
    ...atRest,
    currents: noisy(() => [6, -3, -3] as const),
    seconds: 0.4,
  };
  expect(judged(small).points).toEqual(['inside-drive', 'short-outside', 'sensing', 'open-core']);
  // At 1 ms the motor itself could have let it rise by 78 A meanwhile, and 24 A were left: 1 ms · 24/77.8 = 309 µs would do.
  const slow = judged({ ...small, step: 0.001 });
  const coarse = slow.findings.find(({ code }) => code === 'ordinary-nothing');
  expect(coarse).toMatchObject({
    why: 'coarse',
    needed: expect.closeTo(309e-6, 5),
  });
  expect(slow.points).toEqual([]);
  expect(slow.next).toContainEqual({
    code: 'record-so',
    columns: ['torque'],
    seconds: expect.closeTo(309e-6, 5),
  });
});

it('ordinary currents of two sensors: the motor is excluded all the same, a path to earth in the third phase is not', () => {
  const small = {
    ...atRest,
    currents: () => [6, -3, -3] as const,
    seconds: 0.4,
  };
  const all = ['inside-drive', 'short-outside', 'sensing', 'earth-path', 'open-core'];
  expect(judged({ ...small, measured: 2 }).points).toEqual(all);
  expect(judged(small, { ...drive, sensors: 'two' }).points).toEqual(all);
  // Of two sensors too the currents must have been stored as measured.
  expect(judged(small, { ...drive, sensors: 'two', stored: 'filtered' }).points).toEqual([]);
});

it('the smaller of two inductances leaves 0.53 of 12 mH: 14.7 A in 125 µs, and a rise of 13.5 A stands out', () => {
  // 19.44 A · 0.4/0.53 = 14.68 A; the vector of (13.5, −13.5, 0) A has 15.6 A.
  const fast: Computed = {
    ...atRest,
    currents: noisy(rising(() => 13.5)),
    tripAt: 0.300125,
  };
  expect(judged(fast).points).toEqual([]);
  expect(judged(fast).next).toContainEqual({ code: 'state-smaller' });
  const known = judged(fast, { ...drive, inductanceIs: 'smaller' });
  expect(known.points).toEqual(['short-outside']);
  const [slope] = known.findings;
  expect(slope).toMatchObject({
    code: 'slope-for',
    limits: ['trace-least-of-smaller'],
    of: 'vector',
  });
  expect(slope).toMatchObject({
    allowed: expect.closeTo(14.68, 1),
    rise: expect.closeTo(15.59, 1),
  });
  expect(known.next).not.toContainEqual({ code: 'state-smaller' });
});

it('560 V and 12 mH: 62.2 kA/s at rest, and √3/2 times as much again at the highest speed', () => {
  const rest = measureTrace(computedTrace({ ...atRest, currents: () => [1, -1, 0] }));
  expect(allowedRise(rest, drive, 1)).toBeCloseTo(7.778, 3);
  const fast = measureTrace(computedTrace({ ...moving, currents: turning(1, 100) }));
  expect(allowedRise(fast, drive, 1)).toBeCloseTo(7.778 * (1 + Math.sqrt(3) / 2), 2);
});
