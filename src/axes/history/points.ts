import { calculator as insulationForm } from '../../calculators/insulation/form.ts';
import { calculator as isolationForm } from '../../calculators/isolation/form.ts';
import type { TrendRow } from '../../calculators/trend/rule/input.ts';
import type { CorrectionMethod } from '../../kernel/electrics/correction-validity.ts';
import { type ReadForm, readForm } from '../../kernel/form/read-form.ts';
import { correctionOf } from '../../kernel/form/shared-fields.ts';
import { millisecondsADay } from '../../kernel/reading/calendar-date.ts';
import { missing, type Reading } from '../../kernel/reading/reading.ts';
import type { ReadingSet } from '../record/visit-digest.ts';

/** What an insulation reading was taken of. */
export const insulatedParts = ['joined', 'motor', 'cable'] as const;
export type InsulatedPart = (typeof insulatedParts)[number];

/** The weakest terminal of a part on one visit. */
export interface Point extends TrendRow {
  visit: string;
  /** ISO time. */
  at: string;
  part: InsulatedPart;
  /** The reading as it was typed. */
  text: string;
  correction: CorrectionMethod;
  baseline: boolean;
}

/** The terminals of each part, and the field of the temperature of its winding. */
const sources: { step: ReadingSet['step']; part: InsulatedPart; fields: string[]; temperature: string[] }[] = [
  { step: 'insulation', part: 'joined', fields: ['together', 'U', 'V', 'W'], temperature: ['windingTemperature'] },
  {
    step: 'isolation',
    part: 'joined',
    fields: ['joinedTogether', 'joinedU', 'joinedV', 'joinedW'],
    temperature: ['windingTemperature'],
  },
  {
    step: 'isolation',
    part: 'motor',
    fields: ['motorTogether', 'motorU', 'motorV', 'motorW'],
    temperature: ['motorTemperature', 'windingTemperature'],
  },
  {
    step: 'isolation',
    part: 'cable',
    fields: ['cableU', 'cableV', 'cableW', 'bondedU', 'bondedV', 'bondedW'],
    temperature: [],
  },
];

/** Of the calculators' fields those that a point is made of. */
const wanted = new Set([...sources.flatMap(({ fields, temperature }) => [...fields, ...temperature]), 'correction']);
const fieldsRead = {
  insulation: insulationForm.fields.filter(({ id }) => wanted.has(id)),
  isolation: isolationForm.fields.filter(({ id }) => wanted.has(id)),
};

/** The points of one visit, at most one a part: the joined stage is often in two steps with the same readings. */
export function pointsOf(visit: { id: string; baseline: boolean }, sets: readonly ReadingSet[]): Point[] {
  const points = sources.flatMap(({ step, part, fields, temperature }): Point[] => {
    const set = sets.find((one) => one.step === step);
    if (set === undefined) return [];
    const read = readForm(fieldsRead[step === 'insulation' ? 'insulation' : 'isolation'], set.form);
    const lowest = lowestOf(fields, read);
    if (lowest === undefined) return [];
    const celsius = temperature.map((id) => read.readings[id] ?? missing).find(({ kind }) => kind === 'value');
    return [
      {
        ...{ visit: visit.id, at: set.at, part, baseline: visit.baseline, text: (set.form[lowest] ?? '').trim() },
        ...{ line: 0, cells: [], day: Date.parse(set.at) / millisecondsADay },
        reading: read.readings[lowest] ?? missing,
        temperature: celsius ?? missing,
        correction: correctionOf(read),
      },
    ];
  });
  return points.filter(({ part }, index) => points.findIndex((other) => other.part === part) === index);
}

/** The field with the lowest reading: by its highest possible value, since a fall must be certain. */
function lowestOf(fields: readonly string[], { readings }: ReadForm): string | undefined {
  const taken = fields.filter((id) => (readings[id] ?? missing).kind !== 'missing');
  return taken.reduce<string | undefined>(
    (lowest, id) => (lowest === undefined || mostOf(readings[id]) < mostOf(readings[lowest]) ? id : lowest),
    undefined,
  );
}

/** In Ω. Of two that are over range the one with the lower bound is the weaker. */
function mostOf(reading: Reading = missing): number {
  if (reading.kind === 'value') return reading.value;
  if (reading.kind === 'under') return reading.atMost ?? Number.MIN_VALUE;
  return reading.kind === 'over' ? Number.MAX_VALUE * (reading.atLeast === undefined ? 1 : 0.5) : Number.MAX_VALUE;
}
