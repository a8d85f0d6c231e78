import {
  assessTrend,
  missing,
  readTrendTable,
  type TableReading,
  type TrendAssessment,
  type TrendCode,
  type TrendInput,
  type TrendStepCode,
  type TrendTable,
} from '../../calc/index.ts';
import { trendFindings, trendSteps } from '../../texts/trend.ts';
import type { CalculatorForm } from '../form/calculator-form.ts';
import { correction, correctionOf, temperatureUnit } from '../form/form-choices.ts';
import type { ReadForm } from '../form/read-form.ts';
import { ratedVoltage } from '../insulation/fields.ts';
import { cellsOf } from './cells.ts';
import { bareOhms, dateOrder, decimalMark, rows, windingKind } from './fields.ts';

const millisecondsADay = 86_400_000;

/** How cells are understood, by the answers of the form. `today` allows for the date line. */
export function tableReading({ choices }: Pick<ReadForm, 'choices'>): TableReading {
  const { dateOrder: order, bareOhms: unit, decimalMark: mark, temperatureUnit: celsius } = choices;
  return {
    today: Date.now() / millisecondsADay + 1,
    ...((order === 'day-first' || order === 'month-first') && { dateOrder: order }),
    ...(unit && { bareOhms: unit }),
    ...(mark && { decimalMark: mark === 'comma' ? ',' : '.' }),
    ...(celsius && { bareTemperature: celsius }),
  };
}

function tableOf(read: ReadForm): TrendTable {
  const cells = cellsOf(read.texts.rows ?? '');
  if (cells === undefined) return { rows: [], keptOut: [], unused: [], problem: 'quote-not-closed' };
  return readTrendTable(cells, tableReading(read));
}

export function trendInput(read: ReadForm): TrendInput {
  const { machineClass } = read.choices;
  return {
    table: tableOf(read),
    correction: correctionOf(read),
    machineClass: machineClass === 'form-wound' || machineClass === 'pre-1970' ? machineClass : 'random-wound',
    ratedVoltage: read.readings.ratedVoltage ?? missing,
    today: Date.now() / millisecondsADay,
  };
}

export const trendForm: CalculatorForm<TrendCode, TrendStepCode, TrendAssessment> = {
  name: 'trend',
  fields: [rows, dateOrder, bareOhms, temperatureUnit, decimalMark, windingKind, ratedVoltage, correction],
  assess: (read) => assessTrend(trendInput(read)),
  findingTexts: trendFindings,
  stepTexts: trendSteps,
};
