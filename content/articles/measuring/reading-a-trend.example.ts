import { assessTrend } from '../../../src/calculators/trend/rule/assess.ts';
import type { TrendAssessment } from '../../../src/calculators/trend/rule/input.ts';
import { percentPerYear } from '../../../src/calculators/trend/rule/line-fit.ts';
import { readTrendTable } from '../../../src/calculators/trend/rule/table.ts';
import { limitConstant } from '../../../src/kernel/limits.ts';
import { formatQuantity } from '../../../src/kernel/reading/format-reading.ts';
import { missing } from '../../../src/kernel/reading/reading.ts';

/** Invented record of Marrow Bay's Carriage: date, reading joined to PE, winding temperature. */
export const record = [
  ['2018-03-12', '2.0 GΩ', '22 °C'],
  ['2019-03-11', '1.5 GΩ', '25 °C'],
  ['2020-03-16', '2.3 GΩ', '18 °C'],
  ['2021-03-15', '1.3 GΩ', '26 °C'],
  ['2022-03-14', '1.6 GΩ', '21 °C'],
  ['2023-03-13', '1.2 GΩ', '24 °C'],
  ['2024-03-11', '1.5 GΩ', '20 °C'],
  ['2025-03-10', '260 MΩ', '23 °C'],
];
/** Taken two days later, with the connector dried. */
export const afterDrying = ['2025-03-12', '1.2 GΩ', '22 °C'];

const assess = (rows: string[][]): TrendAssessment =>
  assessTrend({
    table: readTrendTable(rows),
    correction: 'halving',
    machineClass: 'random-wound',
    ratedVoltage: missing,
  });

export const dropped = assess(record);
export const dried = assess([...record, afterDrying]);

const nbsp = (text: string) => text.replace(' ', '\u00a0');
export const ohms = (value: number) => nbsp(formatQuantity(Number(value.toPrecision(2)), 'Ω'));
/** What a reading of the record is when carried to the temperature of the minima. */
export const corrected = ({ rows }: TrendAssessment, index: number) => ohms(rows.at(index)?.corrected ?? Number.NaN);

const percent = (slope = Number.NaN) => `${Math.abs(percentPerYear(slope)).toFixed(1)}\u00a0%`;
export const confidence = `${limitConstant('trend-confidence', 'percent')}\u00a0%`;
/** Loss a year: the line, and the least and the greatest that the scatter leaves open. */
export const loss = {
  middle: percent(dried.fit?.slope),
  least: percent(dried.fit?.range.hi),
  greatest: percent(dried.fit?.range.lo),
};
