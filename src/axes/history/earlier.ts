import { type MeasuredId, measuredIds, type ReadingSet, type VisitHead } from '../record/visit-digest.ts';

/** A reading taken earlier: `400 MΩ` at `24 °C` on `2026-03-02`. */
export interface EarlierReading {
  text: string;
  celsius: string;
  on: string;
}

/** An earlier visit to an axis. */
export interface Earlier {
  visit: VisitHead;
  sets: readonly ReadingSet[];
}

/** A sister axis with its visits. */
export interface Sister {
  name: string;
  /** The newest first. */
  visits: readonly Earlier[];
}

/** The fields with a reading that means the same on each visit, in each step. */
export const comparedFields: Record<MeasuredId, readonly string[]> = {
  insulation: ['together', 'U', 'V', 'W', 'PE'],
  isolation: [
    ...['joinedTogether', 'joinedU', 'joinedV', 'joinedW', 'joinedPE'],
    ...['cableU', 'cableV', 'cableW', 'cablePE', 'bondedU', 'bondedV', 'bondedW'],
    ...['motorTogether', 'motorU', 'motorV', 'motorW', 'motorPE'],
  ],
  winding: ['UV', 'VW', 'WU'],
  'winding-motor': ['UV', 'VW', 'WU'],
  bridge: ['plusU', 'plusV', 'plusW', 'minusU', 'minusV', 'minusW'],
};

/** The joined stage is a step of its own and part of another. */
const sameElsewhere: Record<string, [MeasuredId, string]> = Object.fromEntries(
  comparedFields.insulation.flatMap((id): [string, [MeasuredId, string]][] => {
    const joined = id === 'together' ? 'joinedTogether' : `joined${id}`;
    return [
      [`insulation/${id}`, ['isolation', joined]],
      [`isolation/${joined}`, ['insulation', id]],
    ];
  }),
);

export function readingIn({ sets }: Earlier, step: MeasuredId, field: string): EarlierReading | undefined {
  const own = inSet(sets, step, field);
  const [otherStep, otherField] = sameElsewhere[`${step}/${field}`] ?? [step, field];
  return own ?? inSet(sets, otherStep, otherField);
}

function inSet(sets: readonly ReadingSet[], step: MeasuredId, field: string): EarlierReading | undefined {
  const set = sets.find((one) => one.step === step);
  const text = (set?.form[field] ?? '').trim();
  if (set === undefined || text === '') return undefined;
  return { text, celsius: celsiusOf(set, field), on: set.at.slice(0, 10) };
}

/** The temperature of the winding, where it changes the reading. */
function celsiusOf({ step, form }: ReadingSet, field: string): string {
  if (step === 'bridge' || field.endsWith('PE') || /^(cable|bonded)/.test(field)) return '';
  const own = field.startsWith('motor') ? (form.motorTemperature ?? '').trim() : '';
  const typed = own || (form.windingTemperature ?? '').trim();
  return /^[-+]?[\d.,]+$/.test(typed) ? `${typed} °${form.temperatureUnit ?? 'C'}` : typed;
}

export function isMeasuredId(step: string): step is MeasuredId {
  return (measuredIds as readonly string[]).includes(step);
}
