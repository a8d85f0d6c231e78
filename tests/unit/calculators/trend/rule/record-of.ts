import { assessTrend } from '../../../../../src/calculators/trend/rule/assess.ts';
import type { TrendFinding, TrendInput, TrendRow } from '../../../../../src/calculators/trend/rule/input.ts';
import { celsius, missing, ohms, type Reading } from '../../../../../src/kernel/reading/reading.ts';
import { found } from '../../../../support/found.ts';
import { lineWithLimits } from '../../../../support/lines.ts';

export const firstDay = 16_000;
export const dayOf = (year: number) => firstDay + year * 365.25;

/** A reading per year, at the temperature of the limit; numbers are in MΩ. */
export function record(readings: (number | Reading)[], more: Partial<TrendInput> = {}): TrendInput {
  const rows = readings.map((one, year): TrendRow => {
    const reading = typeof one === 'number' ? ohms(one * 1e6) : one;
    return { line: year + 1, cells: [`row ${year + 1}`], day: dayOf(year), reading, temperature: celsius(40) };
  });
  const table = { rows, keptOut: [], unused: [] };
  return { table, correction: 'halving', machineClass: 'random-wound', ratedVoltage: missing, ...more };
}

/** The same with one row changed. */
export function changed(input: TrendInput, index: number, change: Partial<TrendRow>): TrendInput {
  const rows = input.table.rows.map((row, at) => (at === index ? { ...row, ...change } : row));
  return { ...input, table: { ...input.table, rows } };
}

export const said = (input: TrendInput) => assessTrend(input).findings.map(lineWithLimits);
export const steps = (input: TrendInput) => assessTrend(input).next.map(({ code }) => code);
export const find = <Code extends TrendFinding['code']>(input: TrendInput, code: Code) =>
  found(assessTrend(input).findings, code);
