import { defineCalculator } from '../../kernel/form/calculator-form.ts';
import type { ReadForm } from '../../kernel/form/read-form.ts';
import { correctionOf } from '../../kernel/form/shared-fields.ts';
import { millisecondsADay } from '../../kernel/reading/calendar-date.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { trend } from './about.ts';
import { cellsOf } from './cells.ts';
import { trendFields } from './fields.ts';
import { trendHeadline } from './headline.ts';
import { assessTrend } from './rule/assess.ts';
import type { TrendAssessment, TrendInput, TrendTable } from './rule/input.ts';
import { readTrendTable } from './rule/table.ts';
import { tableOptions } from './table-options.ts';
import { trendFindings, trendSteps } from './words.ts';

function tableOf(read: ReadForm, now: number): TrendTable {
  const cells = cellsOf(read.texts.rows ?? '');
  if (cells === undefined) return { rows: [], keptOut: [], unused: [], problem: 'quote-not-closed' };
  return readTrendTable(cells, tableOptions(read, now));
}

/** `now` in ms from 1970-01-01. */
function trendInput(read: ReadForm, now: number): TrendInput {
  const { machineClass } = read.choices;
  return {
    table: tableOf(read, now),
    correction: correctionOf(read),
    machineClass: machineClass === 'form-wound' || machineClass === 'pre-1970' ? machineClass : 'random-wound',
    ratedVoltage: read.readings.ratedVoltage ?? missing,
    today: now / millisecondsADay,
  };
}

/**
 * The calculator on a given day: a trend's go expires a year after its last value. `clock` gives ms from 1970-01-01, as
 * `Date.now` does.
 */
export const trendAt = (clock: () => number) =>
  defineCalculator<TrendAssessment>({
    ...trend,
    fields: trendFields,
    assess: (read) => assessTrend(trendInput(read, clock())),
    findingTexts: trendFindings,
    stepTexts: trendSteps,
    headline: trendHeadline,
    inSight: ['trend-only-the-record', 'trend-holds-until'],
    opens: {
      'judge-reading-itself': { calculator: 'insulation', words: 'Insulation' },
      'separate-and-repair': { calculator: 'isolation', words: 'Cable or motor' },
    },
  });

export const calculator = trendAt(Date.now);
