import { assessTrend } from '../../src/calculators/trend/rule/assess.ts';
import type { TrendInput, TrendRow } from '../../src/calculators/trend/rule/input.ts';
import type { Reading } from '../../src/kernel/reading/reading.ts';
import type { Dice } from './dice.ts';
import { minimumOf } from './insulation.ts';
import { absurd, figure, reading, span } from './readings.ts';
import { having, type Subject } from './subject.ts';
import { leastCorrected } from './winding-to-ground.ts';

const missing: Reading = { kind: 'missing' };
const year = 365.25;

function rowsOf(dice: Dice): TrendRow[] {
  const start = dice.pick([6.9, 7.2, 7.6, 8, 8.5, 9.3]);
  const fall = dice.pick([0, 0, 0.01, 0.03, 0.08, 0.2]);
  const scatter = dice.pick([0, 0.01, 0.03, 0.1]);
  const every = dice.pick([30, 90, 180, 365]);
  const celsius = dice.pick([0, 0, 4, 30]);
  let day = 15_000;
  return Array.from({ length: 1 + dice.below(14) }, (_, index) => {
    day += dice.chance(0.05) ? dice.pick([0, 0.3]) : every * dice.between(0.8, 1.2);
    const height =
      start - (fall * (day - 15_000)) / year + scatter * dice.between(-1, 1) - (dice.chance(0.02) ? 0.4 : 0);
    return {
      line: index + 1,
      cells: [],
      day: dice.chance(0.003) ? dice.pick([...absurd, 1e9, 0]) : day,
      reading: reading(dice, () => 10 ** height, 'Ω', 0.01),
      temperature: reading(dice, () => 40 + celsius * dice.between(-1, 1), '°C', 0.005),
    };
  });
}

/** The newest day's rows: all of them count. */
const newestOf = (rows: readonly TrendRow[]) => {
  const last = Math.floor(Math.max(...rows.map(({ day }) => day)));
  return rows.filter(({ day }) => Math.floor(day) === last);
};

/** What a row proves by the chosen method and at least by all valid ones, in Ω at 40 °C. */
const provenBy = ({ reading: one, temperature }: TrendRow, input: TrendInput) =>
  leastCorrected(span(one)?.lo ?? Number.NaN, figure(temperature), 40, input.correction);

function median(values: number[]): number {
  const sorted = values.sort((a, b) => a - b);
  const at = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(at)] ?? Number.NaN) + (sorted[Math.ceil(at)] ?? Number.NaN)) / 2;
}

/**
 * Log10 of ohms a year after the last reading, by the plain median of the slopes of all pairs. The rule takes the
 * steepest possible fall, so if even the median one meets the minimum there can be no go.
 */
function yearAhead(rows: readonly TrendRow[], lastDay: number, input: TrendInput): number {
  // Only rows at one temperature are used, so that the correction cancels.
  const points = rows.flatMap(({ day, reading: one, temperature }) => {
    const ohms = leastCorrected(figure(one), figure(temperature), 40, input.correction);
    return ohms > 0 ? [[(day - lastDay) / year, Math.log10(ohms)] as const] : [];
  });
  const slopes = points.flatMap(([x, y], index) =>
    points.slice(0, index).flatMap(([ox, oy]) => (ox < x ? [(y - oy) / (x - ox)] : [])),
  );
  const slope = median(slopes);
  return median(points.map(([x, y]) => y - slope * x)) + Math.min(slope, 0);
}

export const trend: Subject<TrendInput> = {
  name: 'trend',
  signed: ['day', 'today'],
  make: (dice) => {
    const rows = rowsOf(dice);
    const last = rows.at(-1)?.day ?? 15_000;
    return {
      table: {
        rows,
        keptOut: dice.chance(0.95)
          ? []
          : [
              {
                line: 99,
                cells: [],
                code: 'reading-missing',
                ...(dice.chance(0.7) && { day: dice.pick([last, last - 1, last - 400, Number.NaN]) }),
              },
            ],
        unused: [],
        ...(dice.chance(0.01) && { problem: 'column-missing' as const }),
      },
      correction: dice.pick(['halving', 'thermosetting', 'table'] as const),
      machineClass: dice.pick(['random-wound', 'random-wound', 'form-wound', 'pre-1970'] as const),
      ratedVoltage: reading(dice, () => dice.pick([400, 690, 3000]), 'V', 0.1),
      ...(dice.chance(0.5) && {
        today: dice.chance(0.9) ? last + dice.pick([0, 30, 365, 366, 4000, -2, -400]) : dice.pick([...absurd, 1e12, 0]),
      }),
    };
  },
  verdict: (input) => assessTrend(input).verdict,
  mayGo: (input) => {
    const { table, today, machineClass, ratedVoltage } = input;
    const { rows, keptOut, problem } = table;
    const days = rows.map(({ day }) => day);
    if (problem !== undefined || rows.length < 5 || !days.every((day) => Math.abs(day) < 1e5)) return false;
    const last = Math.max(...days);
    if (keptOut.some(({ day }) => day === undefined || !(day < Math.floor(last)))) return false;
    if (today !== undefined && !(today > last - 1 && today <= last + year)) return false;
    const minimum = minimumOf(machineClass, ratedVoltage);
    if (!newestOf(rows).every((row) => provenBy(row, input) >= minimum * (1 - 1e-9))) return false;
    const values = rows.filter(({ reading: one, temperature }) => figure(one) > 0 && temperature.kind === 'value');
    const spanned = Math.max(...values.map(({ day }) => day)) - Math.min(...values.map(({ day }) => day));
    if (!(spanned >= year) || values.length < 5) return false;
    const oneTemperature = new Set(values.map(({ temperature }) => figure(temperature))).size === 1;
    return !oneTemperature || yearAhead(values, last, input) >= Math.log10(minimum) - 1e-6;
  },
  lacking: (input, dice) => {
    const { rows } = input.table;
    const row = dice.pick(newestOf(rows.filter(({ day }) => Number.isFinite(day))));
    if (row === undefined) return having(input, 'table', having(input.table, 'rows', []));
    const lost = having(row, dice.pick(['reading', 'temperature'] as const), missing);
    return having(
      input,
      'table',
      having(
        input.table,
        'rows',
        rows.map((one) => (one === row ? lost : one)),
      ),
    );
  },
  worse: (input, dice) => {
    const { rows } = input.table;
    const row = rows.at(-1);
    const factor = dice.pick([1.01, 1.3, 2, 100]);
    if (
      row?.reading.kind !== 'value' ||
      !Number.isFinite(row.reading.value) ||
      rows.some(({ day }) => !(day <= row.day))
    )
      return undefined;
    const lower = having(row, 'reading', { ...row.reading, value: row.reading.value / factor });
    return having(input, 'table', having(input.table, 'rows', [...rows.slice(0, -1), lower]));
  },
};
