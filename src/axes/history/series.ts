import { type ReadForm, readForm } from '../../kernel/form/read-form.ts';
import { missing, type Reading } from '../../kernel/reading/reading.ts';
import { stepCalculators } from '../../visit/steps/calculators.ts';
import { type MeasuredId, measuredIds, type ReadingSet } from '../record/visit-digest.ts';
import { comparedFields, type Earlier } from './earlier.ts';

/** One visit in the table of a step. */
export interface SeriesRow {
  /** ISO time. */
  at: string;
  baseline: boolean;
  verdict: string;
  /** By field: as typed, and as read. */
  texts: Record<string, string>;
  readings: Record<string, Reading>;
  limits: ReadingSet['limits'];
}

/** The readings of one step over the years. */
export interface Series {
  step: MeasuredId;
  /** The fields with at least one reading, with their names in the form. */
  fields: { id: string; name: string }[];
  /** The oldest first. */
  rows: SeriesRow[];
}

/** The steps that were measured on any of these visits. */
export function seriesOf(earlier: readonly Earlier[]): Series[] {
  return measuredIds.flatMap((step) => {
    const rows = earlier
      .flatMap(({ visit, sets }) => sets.filter((set) => set.step === step).map((set) => rowOf(visit.baseline, set)))
      .sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
    const fields = comparedFields[step]
      .filter((id) => rows.some(({ texts }) => texts[id] !== undefined))
      .map((id) => ({ id, name: stepCalculators[step].fields.find((field) => field.id === id)?.name ?? id }));
    return fields.length === 0 ? [] : [{ step, fields, rows }];
  });
}

/** Of the limits that a verdict used, those that its readings are held against. */
const heldAgainst = [
  'after-trip-point',
  'pe-dead-short',
  'winding-unbalance-good',
  'winding-unbalance-good-form',
  'bridge-tolerance',
  'bridge-short',
];

function rowOf(baseline: boolean, { step, at, form, verdict, limits: used }: ReadingSet): SeriesRow {
  const fields = stepCalculators[step].fields.filter(({ id }) => comparedFields[step].includes(id));
  const read: ReadForm = readForm(fields, form);
  const limits = used.filter(({ id }) => heldAgainst.includes(id));
  const typed = fields.filter(({ id }) => (form[id] ?? '').trim() !== '');
  return {
    ...{ at, baseline, verdict, limits },
    texts: Object.fromEntries(typed.map(({ id }) => [id, (form[id] ?? '').trim()])),
    readings: Object.fromEntries(typed.map(({ id }) => [id, read.readings[id] ?? missing])),
  };
}
