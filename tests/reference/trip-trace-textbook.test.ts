import { expm, matrix } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { noiseOf } from '../../src/calculators/trip-trace/measure/statistics.ts';
import { currentVector } from '../../src/calculators/trip-trace/measure/vector.ts';
import { seeded } from '../../src/kernel/random.ts';
import { type AxisInMotion, drawAxisInMotion } from '../../src/practice/simulator/trip-run/axis-in-motion.ts';
import { electricStep, park, type State } from '../../src/practice/simulator/trip-run/axis-parts.ts';
import { currentSlopes, windingOf } from '../../src/practice/simulator/trip-run/winding.ts';

// Textbook laws, recalled from memory: di/dt = U/L and i = U/R · (1 − e^(−t·R/L)) of a coil (Hughes, Electric Motors and
// Drives); the voltage equations of a synchronous machine in its rotor's frame, ud = R·id + Ld·did/dt − ω·Lq·iq and
// uq = R·iq + Lq·diq/dt + ω·(Ld·id + ψ) (Krause, Analysis of Electric Machinery; Krishnan, Permanent Magnet Synchronous and
// Brushless DC Motor Drives). The matrix exponential of mathjs, a general library, solves the latter at constant speed.

const drawn = drawAxisInMotion(seeded(3));
const motor = (changes: Partial<AxisInMotion>): AxisInMotion => ({
  ...drawn,
  ...{ resistance: 0.8, inductance: 0.006, polePairs: 4, flux: 0.11, bus: 560, unsaturated: 1, saliency: 0 },
  ...changes,
});

const atRest = (changes: Partial<State> = {}): State => ({
  ...{ i: [0, 0, 0], path: 0, speed: 0, angle: 0, bus: 560, integralD: 0, integralQ: 0, integralSpeed: 0 },
  ...{ shownAngle: 0, shownSpeed: 0, lost: 0, reluctance: 0 },
  ...changes,
});

/** The phase currents after `seconds` at these voltages, in steps of 1 µs. */
function after(axis: AxisInMotion, state: State, voltages: (t: number) => [number, number, number], seconds: number) {
  const step = 1e-6;
  const steps = Math.round(seconds / step);
  for (let n = 0; n < steps; n++)
    electricStep(state, axis, { begins: 0 }, false, voltages((n + 0.5) * step), step, false);
  return state.i;
}

describe('the simulated winding', () => {
  it('between two terminals: di/dt = U / (2 · L of a phase) at first, and the curve of an RL circuit later', () => {
    const axis = motor({});
    const [u, v] = [280, -280];
    const open = { begins: 0, openPhase: 2 as const };
    const state = atRest();
    for (let n = 0; n < 10; n++) electricStep(state, axis, open, true, [u, v, 0], 1e-6, false);
    expect(state.i[0] / 10e-6).toBeCloseTo(560 / 0.012, -2);
    for (let n = 10; n < 5000; n++) electricStep(state, axis, open, true, [u, v, 0], 1e-6, false);
    const expected = (560 / 1.6) * (1 - Math.exp((-5e-3 * 0.8) / 0.006));
    expect(state.i[0] / expected).toBeCloseTo(1, 3);
  });

  it('one terminal against two: di/dt = U / (1.5 · L of a phase)', () => {
    const [slope] = currentSlopes(windingOf(motor({}), 0.4, [0, 0, 0], [1, 1, 1]).mutual, [560, 0, 0], [0, 1, 2]);
    expect(slope).toBeCloseTo(560 / 0.009, 3);
  });

  it.each([0, 0.25])('at constant speed: the equations of the rotor’s frame (saliency %d)', (saliency) => {
    const axis = motor({ saliency });
    const [ld, lq] = [0.006 * (1 - saliency), 0.006 * (1 + saliency)];
    const omega = 4 * 150;
    const [ud, uq] = [-20, 90];
    const { resistance: r, flux } = axis;
    // x' = A · x + b has the solution x = A⁻¹ · (e^(A·t) − 1) · b.
    const a = [
      [-r / ld, (omega * lq) / ld],
      [(-omega * ld) / lq, -r / lq],
    ];
    const b = [ud / ld, (uq - omega * flux) / lq];
    const seconds = 0.004;
    const grown = (expm(matrix(a.map((row) => row.map((one) => one * seconds)))).toArray() as number[][]).map(
      (row, k) => row.map((one, j) => one - (k === j ? 1 : 0)),
    );
    const driven = grown.map((row) => (row[0] ?? 0) * (b[0] ?? 0) + (row[1] ?? 0) * (b[1] ?? 0));
    const [[p = 0, q = 0] = [], [s = 0, t = 0] = []] = a;
    const determinant = p * t - q * s;
    const expected = [
      (t * (driven[0] ?? 0) - q * (driven[1] ?? 0)) / determinant,
      (p * (driven[1] ?? 0) - s * (driven[0] ?? 0)) / determinant,
    ];
    const third = (2 * Math.PI) / 3;
    const phases = (time: number): [number, number, number] => {
      const angle = omega * time;
      const of = (k: number) => ud * Math.cos(angle - k * third) - uq * Math.sin(angle - k * third);
      return [of(0), of(1), of(2)];
    };
    const state = atRest({ speed: 150 });
    after(axis, state, phases, seconds);
    const [d, direct] = park(state.i, omega * seconds);
    expect(d).toBeCloseTo(expected[0] ?? Number.NaN, 1);
    expect(direct).toBeCloseTo(expected[1] ?? Number.NaN, 1);
  });

  it('with Ld and Lq: the torque of the saliency is 3/2 · p · (Ld − Lq) · id · iq', () => {
    const axis = motor({ saliency: 0.2 });
    const [d, q, angle] = [-12, 20, 0.7];
    const third = (2 * Math.PI) / 3;
    const of = (k: number) => d * Math.cos(angle - k * third) - q * Math.sin(angle - k * third);
    const state = atRest({ i: [of(0), of(1), of(2)], angle: angle / 4 });
    electricStep(state, axis, { begins: 0 }, false, [0, 0, 0], 1e-12, false);
    expect(state.reluctance).toBeCloseTo(1.5 * 4 * (0.0048 - 0.0072) * d * q, 6);
  });
});

describe('what is measured in a trace', () => {
  it('the current vector of a sine of 10 A is 10 A long and turns with its frequency (Clarke, amplitudes kept)', () => {
    const third = (2 * Math.PI) / 3;
    const of = (k: number) => Float64Array.from({ length: 400 }, (_, i) => 10 * Math.cos(0.1 * i - k * third));
    const { magnitude, angle } = currentVector({ currents: [of(0), of(1), of(2)] });
    for (const size of magnitude) expect(size).toBeCloseTo(10, 9);
    expect((angle[399] ?? 0) - (angle[0] ?? 0)).toBeCloseTo(39.9, 9);
  });

  it('the deviation of normal noise on a slow sine, within five per cent', () => {
    const random = seeded(5);
    const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const values = Float64Array.from({ length: 8000 }, (_, i) => 10 * Math.sin(i / 200) + 0.3 * normal());
    expect(noiseOf(values, 7999)).toBeGreaterThan(0.285);
    expect(noiseOf(values, 7999)).toBeLessThan(0.315);
  });
});
