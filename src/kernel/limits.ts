import absorption from '../../content/limits/absorption.json' with { type: 'json' };
import air from '../../content/limits/air.json' with { type: 'json' };
import axisHistory from '../../content/limits/axis-history.json' with { type: 'json' };
import brakesAndSpares from '../../content/limits/brakes-and-spares.json' with { type: 'json' };
import bridge from '../../content/limits/bridge.json' with { type: 'json' };
import cable from '../../content/limits/cable.json' with { type: 'json' };
import formEntries from '../../content/limits/form-entries.json' with { type: 'json' };
import instruments from '../../content/limits/instruments.json' with { type: 'json' };
import insulation from '../../content/limits/insulation.json' with { type: 'json' };
import liveWork from '../../content/limits/live-work.json' with { type: 'json' };
import protectiveConductor from '../../content/limits/protective-conductor.json' with { type: 'json' };
import residualVoltage from '../../content/limits/residual-voltage.json' with { type: 'json' };
import retries from '../../content/limits/retries.json' with { type: 'json' };
import temperature from '../../content/limits/temperature.json' with { type: 'json' };
import testVoltage from '../../content/limits/test-voltage.json' with { type: 'json' };
import trace from '../../content/limits/trace.json' with { type: 'json' };
import trend from '../../content/limits/trend.json' with { type: 'json' };
import winding from '../../content/limits/winding.json' with { type: 'json' };

export const allLimits = {
  ...residualVoltage.limits,
  ...liveWork.limits,
  ...bridge.limits,
  ...insulation.limits,
  ...testVoltage.limits,
  ...temperature.limits,
  ...protectiveConductor.limits,
  ...brakesAndSpares.limits,
  ...instruments.limits,
  ...air.limits,
  ...formEntries.limits,
  ...retries.limits,
  ...winding.limits,
  ...cable.limits,
  ...trend.limits,
  ...trace.limits,
  ...absorption.limits,
  ...axisHistory.limits,
};

export type LimitId = keyof typeof allLimits;

/** What rules use of a limit; `limit-labels.ts` has the words, src/library/tables/limit-schema.ts explains the full shape. */
interface LimitData {
  unit: string;
  inputUnit?: string;
  value?: number;
  range?: { from?: number; to?: number };
  points?: number[][];
  constants?: Record<string, number>;
}

export const limitIds = Object.keys(allLimits) as LimitId[];

export function limit(id: LimitId): LimitData {
  return allLimits[id] as LimitData;
}

/** The single figure of a limit, in its base unit. Throws if the limit is a range or a table: a mistake in code. */
export function limitValue(id: LimitId): number {
  const { value } = limit(id);
  if (value === undefined) throw new Error(`limit ${id} has no single value`);
  return value;
}

/** The range of a limit in its base unit, open ends as ±Infinity. */
export function limitRange(id: LimitId): { from: number; to: number } {
  const { range } = limit(id);
  if (range === undefined) throw new Error(`limit ${id} has no range`);
  return { from: range.from ?? Number.NEGATIVE_INFINITY, to: range.to ?? Number.POSITIVE_INFINITY };
}

/** The published table of a limit as pairs of input and output. */
export function limitPoints(id: LimitId): [number, number][] {
  const { points } = limit(id);
  if (points === undefined) throw new Error(`limit ${id} has no table`);
  return points as [number, number][];
}

/** A named constant of a published formula. */
export function limitConstant(id: LimitId, name: string): number {
  const constant = limit(id).constants?.[name];
  if (constant === undefined) throw new Error(`limit ${id} has no constant ${name}`);
  return constant;
}
