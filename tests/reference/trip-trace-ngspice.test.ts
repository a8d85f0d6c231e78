import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { measureTrace } from '../../src/calculators/trip-trace/measure/measure-trace.ts';
import { proposedColumns, statedUnits } from '../../src/calculators/trip-trace/read/columns.ts';
import { makeTrace } from '../../src/calculators/trip-trace/read/make-trace.ts';
import { TraceReader } from '../../src/calculators/trip-trace/read/trace-reader.ts';
import { restingRise } from '../../src/calculators/trip-trace/rule/allowed-rise.ts';
import { assessTripTrace } from '../../src/calculators/trip-trace/rule/assess.ts';
import type { TripTraceInput } from '../../src/calculators/trip-trace/rule/input.ts';
import { between, seeded } from '../../src/kernel/random.ts';

// The reference is ngspice, a general circuit simulator: the netlists are in trip-trace-ngspice, their results beside them.

const motor: Partial<TripTraceInput> = { inductance: 0.012, busVolts: 560, stored: 'raw', sensors: 'three' };

function figuresOf(name: string) {
  const reader = new TraceReader();
  reader.push(readFileSync(join(import.meta.dirname, 'trip-trace-ngspice', `${name}.csv`)));
  const read = reader.end();
  if (!read.ok) throw new Error(read.problem);
  const columns = proposedColumns(read.table);
  const made = makeTrace(`${name}.csv`, read.table, { ...columns, ...statedUnits(read.table, columns) });
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  // The simulator has no sensors. Three of their own have each its noise; without it a sum of zero looks computed.
  const random = seeded(1);
  const sensed = (one: Float64Array) => one.map((value) => value + between(random, -0.1, 0.1));
  const [u, v, w] = made.trace.currents;
  return measureTrace({ ...made.trace, currents: [sensed(u), sensed(v), sensed(w)] });
}

const findings = (name: string, tripAmps: number) => {
  const figures = figuresOf(name);
  return { figures, ...assessTripTrace({ ...motor, figures, tripAmps }) };
};

describe('a motor at rest in ngspice', () => {
  it('never rises faster than the winding allows without saturation', () => {
    const figures = figuresOf('locked-rotor');
    // At rest the bus drives U / (1.5 · L of a phase).
    const atRest = restingRise(figures, motor) ?? 0;
    expect(Math.max(figures.slope.rise, figures.slope.riseBefore)).toBeLessThanOrEqual(atRest + 0.2);
    // 560 V · 125 µs / 9 mH = 7.78 A, less what 2 Ω take of the voltage at some tens of amperes.
    expect(Math.max(figures.slope.rise, figures.slope.riseBefore)).toBeGreaterThan(0.75 * atRest);
  });

  it('with its own current at the trip: no short circuit, and the currents add up', () => {
    const { findings: found, points } = findings('locked-rotor', 72);
    expect(points).toEqual([]);
    expect(found.map(({ code }) => code)).not.toContain('slope-for');
  });

  it('with a short circuit in its cable: the slope speaks for it', () => {
    const { findings: found, points } = findings('short-in-cable', 100);
    expect(found.map(({ code }) => code)).toContain('slope-for');
    expect(points[0]).toBe('short-outside');
  });

  it('with 20 Ω to earth: the sum speaks for it, by 280 V / 20 Ω', () => {
    const { findings: found, figures, points } = findings('path-to-earth', 100);
    expect(found.map(({ code }) => code)).toContain('sum-for');
    expect(figures.sum?.atTrip).toBeGreaterThan(0.9 * 14);
    expect(figures.sum?.atTrip).toBeLessThanOrEqual(14.4);
    expect(points).toContain('earth-path');
  });
});
