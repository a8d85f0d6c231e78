import { expect, it } from 'vitest';
import { measureTrace } from '../../../../../src/calculators/trip-trace/measure/measure-trace.ts';
import { assessTripTrace } from '../../../../../src/calculators/trip-trace/rule/assess.ts';
import { type Computed, computedTrace, turning } from '../figures.ts';
import { drive, judged, moving, turned, type WorkedCase, workedCases } from './worked.ts';

// The sources are named in worked.ts.

const cases: WorkedCase[] = [
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
    {
      speed: () => 0,
      bus: () => 560,
      polePairs: 4,
      currents: () => [0, 25, -25],
    },
    ['zero-nothing'],
    // That it holds with so much current is remarkable by itself; with an open core, or a dead sensor, it does not start either.
    ['mechanics', 'feedback', 'open-core', 'sensing'],
  ],
  [
    'currents that stop turning while the motor turns',
    'f = 4 · 1500/60 = 100 Hz by the speed, and 0 Hz before the trip',
    {
      ...moving,
      currents: (t) => (t > 0.37 ? turning(10, 0)(t) : turning(10, 100)(t)),
    },
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
    {
      ...moving,
      speed: (t) => (t > 0.3985 ? 0 : 1500),
      currents: turning(10, 100),
    },
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
    // 0.5 · 1 mF · (860² − 560²) = 213 J go into the bus.
    '213 J into 1 mF raise 560 V to 860 V, by 54 %, while the motor slows down',
    {
      ...moving,
      speed: (t) => 1500 - (t > 0.3 ? 10000 * (t - 0.3) : 0),
      bus: (t) => Math.sqrt(560 ** 2 + (t > 0.3 ? (2 * 213 * (t - 0.3)) / 0.1 / 1e-3 : 0)),
      currents: turning(10, 100),
    },
    ['bus-braking'],
    ['supply-braking'],
  ],
  [
    'a supply that dips',
    '560 V to 380 V is a fall of 32 %',
    {
      ...moving,
      bus: (t) => (t > 0.37 ? 380 : 560),
      currents: turning(10, 100),
    },
    ['bus-supply'],
    ['supply-braking', 'sensing'],
  ],
];

workedCases(cases);

it('says nothing on an open core at a sample each 0.3 of a turn: 100 Hz at 3 ms', () => {
  const open = (t: number): [number, number, number] => [10 * Math.cos(628.3 * t), 0, -10 * Math.cos(628.3 * t)];
  const coarse = judged({
    ...moving,
    step: 0.003,
    seconds: 0.6,
    currents: open,
  });
  expect(coarse.findings).toContainEqual(expect.objectContaining({ code: 'zero-nothing', why: 'coarse' }));
  expect(coarse.points).not.toContain('open-core');
});

it('says nothing on a load if the file ends at 18 A of 30 A, below what a drive lets a load take', () => {
  const slowing: Computed = {
    ...moving,
    speed: (t) => (t < 0.3 ? 1500 : 1500 - 12000 * (t - 0.3)),
    torque: (t) => (t < 0.3 ? 2 : 10),
    currents: (t) => turned(t < 0.3 ? 4 : 18, 100 * t - (t < 0.3 ? 0 : 400 * (t - 0.3) ** 2)),
  };
  const load = (tripFrom: 'typed' | 'file-end') => {
    const figures = measureTrace({ ...computedTrace(slowing), tripFrom });
    return assessTripTrace({ ...drive, polePairs: 4, figures }).findings.find(({ code }) => code.startsWith('motion'));
  };
  expect(load('typed')?.code).toBe('motion-lost');
  expect(load('file-end')).toMatchObject({
    code: 'motion-nothing',
    why: 'trip-not-seen',
  });
});

it('says nothing on a bus that rises by 43 %, from 560 to 800 V: a braking circuit may hold it only there', () => {
  const rising: Computed = {
    ...moving,
    speed: (t) => 1500 - (t > 0.3 ? 10000 * (t - 0.3) : 0),
    bus: (t) => 560 + (t > 0.3 ? 2400 * (t - 0.3) : 0),
    currents: turning(10, 100),
  };
  expect(judged(rising).findings).toContainEqual(expect.objectContaining({ code: 'bus-nothing', why: 'between' }));
});

it('says nothing on a jump of 28 min⁻¹ of a shaft that trembles with 40', () => {
  const trembling: Computed = { ...moving, speed: (t) => (t > 0.3985 ? 12 : 40), currents: () => [10, -5, -5] };
  expect(judged(trembling).findings.map(({ code }) => code)).not.toContain('speed-jump-for');
});

it('says nothing on a load if the speed swings and is there again at the trip', () => {
  // By 250 min⁻¹ at 20 Hz; each fall of 500 is under a torque in the direction of motion. After 8.25 swings the speed is highest.
  const angle = (t: number) => 2 * Math.PI * 20 * t;
  const swinging = (cycles: number): Computed => ({
    seconds: cycles / 20,
    speed: (t) => 1250 + 250 * Math.sin(angle(t)),
    torque: (t) => Math.max(-2, -6 * Math.cos(angle(t))),
    currents: turning(18, 83),
  });
  const codes = (cycles: number) => judged(swinging(cycles)).findings.map(({ code }) => code);
  expect(codes(8.25)).not.toContain('motion-lost');
  // Half a swing later a third of the speed is missing.
  expect(codes(8.75)).toContain('motion-lost');
});
