import { describe, expect, it } from 'vitest';
import { measureTrace } from '../../../../../src/calculators/trip-trace/measure/measure-trace.ts';
import { allowedRise } from '../../../../../src/calculators/trip-trace/rule/allowed-rise.ts';
import { assessTripTrace } from '../../../../../src/calculators/trip-trace/rule/assess.ts';
import type { Branch, TripTraceFinding, TripTraceInput } from '../../../../../src/calculators/trip-trace/rule/input.ts';
import { type Computed, computedTrace, turning } from '../figures.ts';

// Worked by hand from textbook laws, recalled from memory: i = U/R · (1 − e^(−t·R/L)) and di/dt = U/L at its beginning,
// Kirchhoff's current law, f = p · n / 60 of a synchronous machine, W = ½ · C · U² (any textbook of electrical machines, such
// as Fitzgerald, Electric Machinery). The limits are those of content/limits/trace.json.

type Code = TripTraceFinding['code'];

/** 560 V, 12 mH from terminal to terminal, trips at 30 A, 4 pole pairs, each sample as measured. */
const drive: Partial<TripTraceInput> = {
  inductance: 0.012,
  busVolts: 560,
  tripAmps: 30,
  stored: 'raw',
  sensors: 'three',
};

function judged(computed: Computed, data: Partial<TripTraceInput> = drive) {
  const figures = measureTrace(computedTrace(computed));
  return assessTripTrace({
    ...data,
    figures,
    ...(computed.polePairs !== undefined && { polePairs: computed.polePairs }),
  });
}

/** `amplitude` until the trip at 0.3 s, then this rise in phase U that comes back through V, cut off 1 ms later. */
const rising =
  (rise: (t: number) => number) =>
  (t: number): [number, number, number] => {
    const more = t > 0.3 ? rise(t - 0.3) : 0;
    return [4 + more, -2 - more, -2];
  };

/** U and W with a little noise of their own, as sensors of their own have it. */
const noisy =
  (of: (t: number) => readonly [number, number, number]) =>
  (t: number): readonly [number, number, number] => {
    const [u, v, w] = of(t);
    return [u + 0.05 * Math.sin(t * 7e5), v, w + 0.05 * Math.sin(t * 1e6)];
  };

const atRest = { speed: () => 0, bus: () => 560, tripAt: 0.3, seconds: 0.31 };
const moving = { speed: () => 1500, bus: () => 560, polePairs: 4 };

const cases: [string, string, Computed, Code[], Branch[]][] = [
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
    { ...atRest, currents: rising((t) => (560 / 1.5) * (1 - Math.exp((-t * 1.5) / 0.012))), tripAt: 0.3006 },
    ['slope-nothing'],
    [],
  ],
  [
    'a slow rise to the trip level',
    '40 A within 20 ms is 0.25 A in a sample, seen on its whole way',
    { ...atRest, currents: rising((t) => 2000 * t), tripAt: 0.3132, seconds: 0.32 },
    ['slope-against', 'sum-nothing'],
    [],
  ],
  [
    'a path from U to earth',
    'Kirchhoff: 12 A of U come back through nothing',
    { ...moving, tripAt: 0.3, currents: (t) => add(turning(10, 100)(t), [t > 0.29 ? 12 : 0, 0, 0]) },
    ['sum-for'],
    ['earth-path', 'sensing'],
  ],
  [
    'a sensor of V that reads 20 % too much',
    'the sum is a fifth of iV all the time: its share of the shown 1.2 · iV is 1/6',
    { ...moving, currents: (t) => add(turning(10, 100)(t), [0, 0.2 * turning(10, 100)(t)[1], 0]) },
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
  [
    'a core of V that opens',
    'V carries nothing for 100 ms; at 1500 min⁻¹ and 4 pairs that is 100 Hz, ten turns',
    {
      ...moving,
      currents: (t) => (t > 0.3 ? [10 * Math.cos(628.3 * t), 0, -10 * Math.cos(628.3 * t)] : turning(10, 100)(t)),
    },
    ['zero-for'],
    // W is minus U here, so nothing shows that the sum was measured.
    ['open-core', 'sensing', 'earth-path'],
  ],
  [
    'a phase at zero at rest',
    'at this angle a sound motor holds with V and W alone',
    { speed: () => 0, bus: () => 560, polePairs: 4, currents: () => [0, 25, -25] },
    ['zero-nothing'],
    // That it holds with so much current is remarkable by itself; with an open core, or a dead sensor, it does not start either.
    ['mechanics', 'feedback', 'open-core', 'sensing'],
  ],
  [
    'currents that stop turning while the motor turns',
    'f = 4 · 1500/60 = 100 Hz by the speed, and 0 Hz before the trip',
    { ...moving, currents: (t) => (t > 0.37 ? turning(10, 0)(t) : turning(10, 100)(t)) },
    ['rotation-for'],
    ['feedback'],
  ],
  [
    'currents that turn as they should',
    '100 Hz = 4 · 1500/60; that they agree says nothing',
    { ...moving, currents: turning(25, 100) },
    ['rotation-nothing', 'zero-against', 'bus-against'],
    [],
  ],
  [
    'a speed signal that drops in one sample',
    'no mass loses 1500 min⁻¹ in 0.25 ms',
    { ...moving, speed: (t) => (t > 0.3985 ? 0 : 1500), currents: turning(10, 100) },
    ['speed-jump-for'],
    ['feedback', 'mechanics'],
  ],
  [
    'a swing of 180 Hz that grows',
    'two torque commands: 2 sin growing to 8, at 180 Hz, while the currents turn with 25 Hz',
    {
      ...moving,
      speed: () => 375,
      currents: turning(25, 25),
      torque: (t) => 3 + 8 * Math.exp(30 * (t - 0.4)) * Math.sin(2 * Math.PI * 180 * t),
    },
    ['oscillation-for'],
    ['tuning', 'feedback'],
  ],
  [
    'a motor that is braked by its load',
    '1500 to 300 min⁻¹ in 100 ms under a growing torque in the direction of motion',
    {
      ...moving,
      speed: (t) => (t < 0.3 ? 1500 : 1500 - 12000 * (t - 0.3)),
      torque: (t) => (t < 0.3 ? 2 : Math.min(10, 2 + 400 * (t - 0.3))),
      currents: (t) =>
        turned(t < 0.3 ? 4 : Math.min(20, 4 + 800 * (t - 0.3)), 100 * t - (t < 0.3 ? 0 : 400 * (t - 0.3) ** 2)),
    },
    ['motion-lost'],
    ['mechanics', 'feedback', 'open-core', 'sensing'],
  ],
  [
    'a motor that runs away against its torque',
    'from 0 to −1500 min⁻¹ under a torque command of +10',
    {
      ...moving,
      speed: (t) => (t < 0.25 ? 0 : -10000 * (t - 0.25)),
      torque: (t) => (t < 0.25 ? 0 : 10),
      currents: (t) => turning(t < 0.25 ? 1 : 25, 60)(t),
    },
    ['motion-against-torque'],
    ['feedback', 'mechanics', 'sensing'],
  ],
  [
    'braking without a braking circuit',
    // 0.5 · 1 mF · (800² − 560²) = 163 J go into the bus.
    '163 J into 1 mF raise 560 V to 800 V, by 43 %, while the motor slows down',
    {
      ...moving,
      speed: (t) => 1500 - (t > 0.3 ? 10000 * (t - 0.3) : 0),
      bus: (t) => Math.sqrt(560 ** 2 + (t > 0.3 ? (2 * 163.2 * (t - 0.3)) / 0.1 / 1e-3 : 0)),
      currents: turning(10, 100),
    },
    ['bus-braking'],
    ['supply-braking'],
  ],
  [
    'a supply that dips',
    '560 V to 380 V is a fall of 32 %',
    { ...moving, bus: (t) => (t > 0.37 ? 380 : 560), currents: turning(10, 100) },
    ['bus-supply'],
    ['supply-braking', 'sensing'],
  ],
];

/** Currents of this amplitude after so many electrical turns. */
const turned = (amplitude: number, turns: number) => turning(amplitude, 1)(turns);

const add = (a: readonly number[], b: readonly number[]): [number, number, number] => [
  (a[0] ?? 0) + (b[0] ?? 0),
  (a[1] ?? 0) + (b[1] ?? 0),
  (a[2] ?? 0) + (b[2] ?? 0),
];

describe('worked by hand', () => {
  it.each(cases)('%s: %s', (_, __, computed, codes, points) => {
    const assessment = judged(computed);
    expect(assessment.findings.map(({ code }) => code)).toEqual(expect.arrayContaining(codes));
    expect(assessment.points).toEqual(points);
    expect(assessment.verdict).toBe('undecided');
  });

  it('an ordinary current of 6 A at rest, while the drive trips at 30 A: half of 19.4 A lies between two samples at the most', () => {
    const small = { ...atRest, currents: noisy(() => [6, -3, -3] as const), seconds: 0.4 };
    expect(judged(small).points).toEqual(['inside-drive', 'short-outside', 'sensing']);
    // At 1 ms the motor itself could have let it rise by 78 A meanwhile, and 24 A were left: 1 ms · 24/77.8 = 309 µs would do.
    const slow = judged({ ...small, step: 0.001 });
    const coarse = slow.findings.find(({ code }) => code === 'ordinary-nothing');
    expect(coarse).toMatchObject({ why: 'coarse', needed: expect.closeTo(309e-6, 5) });
    expect(slow.points).toEqual([]);
    expect(slow.next).toContainEqual({ code: 'record-so', columns: ['torque'], seconds: expect.closeTo(309e-6, 5) });
  });

  it('ordinary currents of two sensors: the motor is excluded all the same, a path to earth in the third phase is not', () => {
    const small = { ...atRest, currents: () => [6, -3, -3] as const, seconds: 0.4 };
    const all = ['inside-drive', 'short-outside', 'sensing', 'earth-path'];
    expect(judged({ ...small, measured: 2 }).points).toEqual(all);
    expect(judged(small, { ...drive, sensors: 'two' }).points).toEqual(all);
    // Of two sensors too the currents must have been stored as measured.
    expect(judged(small, { ...drive, sensors: 'two', stored: 'filtered' }).points).toEqual([]);
  });

  it('the smaller of two inductances leaves 0.53 of 12 mH: 14.7 A in 125 µs, and a rise of 13.5 A stands out', () => {
    // 19.44 A · 0.4/0.53 = 14.68 A; the vector of (13.5, −13.5, 0) A has 15.6 A.
    const fast: Computed = { ...atRest, currents: noisy(rising(() => 13.5)), tripAt: 0.300125 };
    expect(judged(fast).points).toEqual([]);
    expect(judged(fast).next).toContainEqual({ code: 'state-smaller' });
    const known = judged(fast, { ...drive, inductanceIs: 'smaller' });
    expect(known.points).toEqual(['short-outside']);
    const [slope] = known.findings;
    expect(slope).toMatchObject({ code: 'slope-for', limits: ['trace-least-of-smaller'], of: 'vector' });
    expect(slope).toMatchObject({ allowed: expect.closeTo(14.68, 1), rise: expect.closeTo(15.59, 1) });
    expect(known.next).not.toContainEqual({ code: 'state-smaller' });
  });

  it('560 V and 12 mH: 62.2 kA/s at rest, and √3/2 times as much again at the highest speed', () => {
    const rest = measureTrace(computedTrace({ ...atRest, currents: () => [1, -1, 0] }));
    expect(allowedRise(rest, drive, 1)).toBeCloseTo(7.778, 3);
    const fast = measureTrace(computedTrace({ ...moving, currents: turning(1, 100) }));
    expect(allowedRise(fast, drive, 1)).toBeCloseTo(7.778 * (1 + Math.sqrt(3) / 2), 2);
  });
});

describe('says nothing', () => {
  const short: Computed = { ...atRest, currents: noisy(rising(() => 26)), tripAt: 0.300125 };
  const why = (data: Partial<TripTraceInput>, computed: Computed = short) =>
    judged(computed, data).findings.find(({ code }) => code.startsWith('slope'));

  it.each([
    ['inductance', 'no-inductance'],
    ['busVolts', 'no-bus'],
  ] as const)('on the slope without %s', (lacking, reason) => {
    const { [lacking]: _, ...rest } = drive;
    const { bus: __, ...noBus } = short;
    expect(why(rest, noBus)).toMatchObject({ code: 'slope-nothing', why: reason });
  });

  it('against a short circuit if the recorder filters, or may filter', () => {
    const slow: Computed = { ...atRest, currents: rising((t) => 2000 * t), tripAt: 0.3132, seconds: 0.32 };
    expect(why({ ...drive, stored: 'filtered' }, slow)).toMatchObject({ code: 'slope-nothing', why: 'filtered' });
    const { stored: _, ...unknown } = drive;
    expect(why(unknown, slow)).toMatchObject({ code: 'slope-nothing', why: 'filtered' });
  });

  it('at a sampling at which the motor could do it', () => {
    expect(why(drive, { ...short, step: 0.001, tripAt: 0.301 })).toMatchObject({ code: 'slope-nothing' });
  });

  it('with one sensor that jumped alone, names the sensor too', () => {
    const one: Computed = { ...atRest, tripAt: 0.300125, currents: (t) => [4 + (t > 0.3 ? 26 : 0), -2, -2] };
    expect(judged(one).points).toContain('sensing');
  });

  it('on an open core at a sample each 0.3 of a turn: 100 Hz at 3 ms', () => {
    const open = (t: number): [number, number, number] => [10 * Math.cos(628.3 * t), 0, -10 * Math.cos(628.3 * t)];
    const coarse = judged({ ...moving, step: 0.003, seconds: 0.6, currents: open });
    expect(coarse.findings).toContainEqual(expect.objectContaining({ code: 'zero-nothing', why: 'coarse' }));
    expect(coarse.points).not.toContain('open-core');
  });

  it('on a load if the file ends at 18 A of 30 A, below what a drive lets a load take', () => {
    const slowing: Computed = {
      ...moving,
      speed: (t) => (t < 0.3 ? 1500 : 1500 - 12000 * (t - 0.3)),
      torque: (t) => (t < 0.3 ? 2 : 10),
      currents: (t) => turned(t < 0.3 ? 4 : 18, 100 * t - (t < 0.3 ? 0 : 400 * (t - 0.3) ** 2)),
    };
    const load = (tripFrom: 'typed' | 'file-end') => {
      const figures = measureTrace({ ...computedTrace(slowing), tripFrom });
      return assessTripTrace({ ...drive, polePairs: 4, figures }).findings.find(({ code }) =>
        code.startsWith('motion'),
      );
    };
    expect(load('typed')?.code).toBe('motion-lost');
    expect(load('file-end')).toMatchObject({ code: 'motion-nothing', why: 'trip-not-seen' });
  });

  it('at all without a file', () => {
    expect(assessTripTrace(drive)).toMatchObject({
      verdict: 'undecided',
      points: [],
      next: [{ code: 'open-the-file' }],
    });
  });
});
