import type { StepRecord, VisitRecord } from '../../visit/record/visit-schema.ts';
import type { StepId } from '../../visit/steps/ids.ts';

/** What the list of axes needs of a visit; small, since all of them are read at once. */
export interface VisitHead {
  id: string;
  axisId?: string;
  machine: string;
  axis: string;
  site: string;
  drive: string;
  motor: string;
  cable?: NonNullable<VisitRecord['cable']>;
  /** ISO time of the first reading, or of the beginning. */
  at: string;
  baseline: boolean;
  /** As it was decided at the time. `replace`: codes of parts. */
  decision?: { kind: string; headline: string; replace: string[] };
}

/** The readings of one step as they were typed, with what was said of them at the time. */
export interface ReadingSet {
  step: MeasuredId;
  /** ISO time of the step. */
  at: string;
  form: Record<string, string>;
  verdict: string;
  /** Each with its value: `100 MΩ`. */
  limits: { id: string; label: string; value: string }[];
}

export interface VisitReadings {
  id: string;
  sets: ReadingSet[];
}

/** The steps whose readings are compared over the years, in the order of the page. */
export const measuredIds = [
  'insulation',
  'isolation',
  'winding',
  'winding-motor',
  'bridge',
] as const satisfies StepId[];
export type MeasuredId = (typeof measuredIds)[number];

export function headOf(visit: VisitRecord): VisitHead {
  const { id, axisId, machine, axis, site, drive, motor, purpose, decision } = visit;
  const cable = cableOf(visit);
  return {
    ...{ id, machine, axis, site, drive, motor },
    ...(axisId !== undefined && { axisId }),
    ...(cable !== undefined && { cable }),
    at: firstTime(visit),
    baseline: purpose === 'baseline',
    ...(decision && {
      decision: {
        kind: decision.kind,
        headline: decision.sentences[0] ?? '',
        replace: decision.replace.map(({ part }) => part),
      },
    }),
  };
}

/** Only the measured steps. */
export function readingsOf({ id, steps }: VisitRecord): VisitReadings {
  const sets = measuredIds.flatMap((step): ReadingSet[] => {
    const record = steps[step];
    return record === undefined ? [] : [setOf(step, record)];
  });
  return { id, sets };
}

function setOf(step: MeasuredId, { at, form, snapshot, readAt }: StepRecord): ReadingSet {
  const filled = Object.entries(form).filter(([, value]) => value.trim() !== '');
  const limits = snapshot?.limits.map(({ id, label, value }) => ({ id, label, value })) ?? [];
  const first = Object.values(readAt).sort((a, b) => Date.parse(a) - Date.parse(b))[0];
  return { step, at: first ?? at, form: Object.fromEntries(filled), verdict: snapshot?.verdict ?? '', limits };
}

function firstTime({ createdAt, steps }: VisitRecord): string {
  const times = measuredIds.flatMap((id) => Object.values(steps[id]?.readAt ?? {}));
  return times.sort((a, b) => Date.parse(a) - Date.parse(b))[0] ?? createdAt;
}

/** The cable as this visit noted it, or as its steps state it. */
function cableOf({ cable, steps }: VisitRecord): VisitHead['cable'] {
  const isolation = steps.isolation?.form ?? {};
  const insulation = steps.insulation?.form ?? {};
  const typed = (id: string) => (isolation[id] ?? insulation[id] ?? '').trim();
  const section = typed('peSection') === 'not-stated' ? '' : typed('peSection');
  const known = {
    metres: typed('cableMetres') || typed('peMetres') || (cable?.metres ?? ''),
    section: section || (cable?.section ?? ''),
    material: typed('cableMaterial') || (cable?.material ?? ''),
  };
  return Object.values(known).some((text) => text !== '') ? known : undefined;
}
