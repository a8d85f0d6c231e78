import { describe, expect, it } from 'vitest';
import { measureTrace } from '../../../../../src/calculators/trip-trace/measure/measure-trace.ts';
import { medianStep, type Trace } from '../../../../../src/calculators/trip-trace/measure/trace.ts';
import { assessTripTrace } from '../../../../../src/calculators/trip-trace/rule/assess.ts';
import { between, seeded } from '../../../../../src/kernel/random.ts';
import { cases, statements, statementsOf } from './judged-trips.ts';

// No source: poorer data must never make a statement that better data did not make. The trips are simulated, with any of the
// faults.

/** Statements that poorer data made and better data did not. A rise that two sensors saw is one that a sensor saw, too. */
const gained = (
  better: ReadonlySet<string>,
  poorer: ReadonlySet<string>,
  among: (code: string) => boolean = () => true,
) => {
  const isImplied = (code: string) => code === 'slope-of-one' && better.has('slope-for');
  return [...poorer].filter((code) => among(code) && !better.has(code) && !isImplied(code));
};

const without = <T extends object>(all: T, ...names: (keyof T)[]): T =>
  Object.fromEntries(Object.entries(all).filter(([name]) => !names.includes(name as keyof T))) as T;

it('there are statements to lose', () => {
  expect(cases.filter(({ says }) => says.size > 0).length).toBeGreaterThan(cases.length / 3);
});

describe('gains no statement', () => {
  const stated = ['inductance', 'inductanceIs', 'busVolts', 'tripAmps', 'stored', 'sensors'] as const;

  it.each(stated)('without the stated %s', (name) => {
    for (const { input, says, trip } of cases) {
      expect([trip.kind, gained(says, statements(without(input, name)))]).toEqual([trip.kind, []]);
    }
  });

  it('without the pole pairs', () => {
    for (const one of cases) {
      const figures = measureTrace(without(one.trace, 'polePairs'));
      const poorer = statements({ ...without(one.input, 'polePairs'), figures });
      expect([one.trip.kind, gained(one.says, poorer)]).toEqual([one.trip.kind, []]);
    }
  });

  it.each(['bus', 'speed', 'torque'] as const)('without the column of the %s', (name) => {
    for (const one of cases) {
      const poorer = statementsOf(one, without(one.trace, name));
      expect([one.trip.kind, gained(one.says, poorer)]).toEqual([one.trip.kind, []]);
    }
  });

  const ofTwo = (trace: Trace): Trace => {
    const [u, v] = trace.currents;
    return { ...trace, measured: 2, currents: [u, v, u.map((current, i) => -current - (v[i] ?? 0))] };
  };

  it('on slope and sum without the third current', () => {
    for (const one of cases) {
      const poorer = statementsOf(one, ofTwo(one.trace));
      const among = (code: string) => /^(slope-for|sum)/.test(code);
      expect([one.trip.kind, gained(one.says, poorer, among)]).toEqual([one.trip.kind, []]);
    }
  });

  // The third current may be the high one: then two are ordinary, and what the third shows is named as possible.
  it('on ordinary currents without the third current, but one that names the path to earth too', () => {
    for (const one of cases) {
      const { findings, points } = assessTripTrace({ ...one.input, figures: measureTrace(ofTwo(one.trace)) });
      const ordinary = findings.find(({ code }) => code === 'ordinary-for');
      if (ordinary === undefined) continue;
      expect([one.trip.kind, ordinary]).toEqual([one.trip.kind, expect.objectContaining({ earth: 'possible' })]);
      if (points[0] === 'inside-drive')
        expect([one.trip.kind, points]).toContainEqual(expect.arrayContaining(['earth-path']));
    }
  });

  it('if the currents are known in per cent only', () => {
    for (const one of cases) {
      const poorer = statementsOf(one, { ...one.trace, inAmperes: false });
      expect([one.trip.kind, gained(one.says, poorer)]).toEqual([one.trip.kind, []]);
    }
  });

  it('on slope and sum with more noise', () => {
    for (const one of cases) {
      const random = seeded(7);
      const size = 0.05 * one.trip.axis.peakCurrent;
      const add = (values: Float64Array) => values.map((value) => value + between(random, -size, size));
      const [u, v, w] = one.trace.currents;
      const [noisyU, noisyV] = [add(u), add(v)];
      // Noise of its own would show that the third current has a sensor of its own.
      const isSum = one.input.figures?.sum?.zero !== false;
      const noisyW = isSum ? noisyU.map((current, i) => -current - (noisyV[i] ?? 0)) : add(w);
      const noisier = statementsOf(one, { ...one.trace, currents: [noisyU, noisyV, noisyW] });
      const among = (code: string) => /^(slope-(for|of-one)|sum-(for|of-one|offset)|ordinary-for)/.test(code);
      expect([one.trip.kind, gained(one.says, noisier, among)]).toEqual([one.trip.kind, []]);
    }
  });

  // Against a short circuit a coarser one may speak where the noise of each fine sample was too high to.
  it.each([2, 4, 8])('on the slope with one sample of %d', (every) => {
    for (const one of cases) {
      const coarse = statementsOf(one, thinned(one.trace, every));
      const among = (code: string) => /^(slope-for|slope-of-one|ordinary)/.test(code);
      expect([one.trip.kind, gained(one.says, coarse, among)]).toEqual([one.trip.kind, []]);
    }
  });

  it.each([0.002, 0.005, 0.02])('against anything if the file ends %d s before the trip', (seconds) => {
    for (const one of cases) {
      const end = one.trace.trip - Math.round(seconds / one.trace.step);
      if (end < 30) continue;
      const cut = statementsOf(one, { ...sliced(one.trace, end), trip: end, tripFrom: 'file-end' });
      const among = (code: string) => code.endsWith('-against') || code === 'ordinary-for';
      expect([one.trip.kind, gained(one.says, cut, among)]).toEqual([one.trip.kind, []]);
    }
  });
});

/** Each series of a trace by this change. */
function changed(trace: Trace, change: (values: Float64Array) => Float64Array): Trace {
  const [u, v, w] = trace.currents;
  const { bus, speed, torque } = trace;
  return {
    ...trace,
    time: change(trace.time),
    currents: [change(u), change(v), change(w)],
    ...(bus && { bus: change(bus) }),
    ...(speed && { speed: change(speed) }),
    ...(torque && { torque: change(torque) }),
  };
}

/** Every so many samples, the one at the trip among them. */
function thinned(trace: Trace, every: number): Trace {
  const shift = trace.trip % every;
  const coarse = changed(trace, (values) => values.filter((_, i) => i % every === shift));
  return { ...coarse, step: medianStep(coarse.time), trip: Math.floor(trace.trip / every) };
}

const sliced = (trace: Trace, end: number) => changed(trace, (values) => values.slice(0, end + 1));
