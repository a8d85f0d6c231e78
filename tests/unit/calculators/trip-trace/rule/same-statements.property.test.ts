import { describe, expect, it } from 'vitest';
import type { Trace } from '../../../../../src/calculators/trip-trace/measure/trace.ts';
import type { TripTraceInput } from '../../../../../src/calculators/trip-trace/rule/input.ts';
import { type Case, cases, statementsOf } from './judged-trips.ts';

// No source: what a trace says must not depend on how its columns are named, scaled or turned.

describe('says the same', () => {
  const times = (factor: number) => (values: Float64Array) => values.map((value) => value * factor);
  const same = (one: Case, trace: Trace, other: Partial<TripTraceInput> = {}) =>
    expect([one.trip.kind, [...statementsOf(one, trace, other)].sort()]).toEqual([one.trip.kind, [...one.says].sort()]);

  it('of a drive of eight times the current with an eighth of the inductance', () => {
    for (const one of cases) {
      const [u, v, w] = one.trace.currents;
      const by = times(8);
      const { inductance = 0, tripAmps = 0 } = one.input;
      same(
        one,
        { ...one.trace, currents: [by(u), by(v), by(w)] },
        { inductance: inductance / 8, tripAmps: tripAmps * 8 },
      );
    }
  });

  it('with the phases named in turn', () => {
    for (const one of cases) {
      const [u, v, w] = one.trace.currents;
      same(one, { ...one.trace, currents: [v, w, u] });
    }
  });

  it('with V and W exchanged, and the speed counted the other way', () => {
    for (const one of cases) {
      const [u, v, w] = one.trace.currents;
      const { speed, torque } = one.trace;
      same(one, {
        ...one.trace,
        currents: [u, w, v],
        ...(speed && { speed: times(-1)(speed) }),
        ...(torque && { torque: times(-1)(torque) }),
      });
    }
  });

  it('with all current clamps turned around', () => {
    for (const one of cases) {
      const [u, v, w] = one.trace.currents;
      const by = times(-1);
      same(one, { ...one.trace, currents: [by(u), by(v), by(w)] });
    }
  });

  it('at another time of day', () => {
    for (const one of cases) same(one, { ...one.trace, time: one.trace.time.map((t) => t + 4096) });
  });
});
