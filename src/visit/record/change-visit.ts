import { limitValue } from '../../kernel/limits.ts';
import type { Form } from '../steps/fields.ts';
import { oneReadingField, type StepId } from '../steps/ids.ts';
import { holdsOneStretch } from '../steps/rules.ts';
import type { DecisionSnapshot, Snapshot } from './snapshot-schema.ts';
import { asNewStretch, stretchAt } from './stretch.ts';
import { type StepRecord, type VisitRecord, visitFormat, visitVersion } from './visit-schema.ts';

/** What a person notes about a visit besides its steps. */
export type VisitDetails = Omit<
  VisitRecord,
  | 'format'
  | 'version'
  | 'id'
  | 'revision'
  | 'createdAt'
  | 'changedAt'
  | 'seq'
  | 'stretch'
  | 'steps'
  | 'decision'
  | 'reported'
  | 'secondVersionOf'
>;

const blank: VisitDetails = {
  machine: '',
  axis: '',
  drive: '',
  motor: '',
  controllerMessage: '',
  site: '',
  person: '',
  servedAxes: [],
  instruments: [],
  conditions: { airTemperature: '', humidity: '', surroundings: '' },
  notes: '',
};

/** A new visit. `now`: ISO time with offset (`isoTime`). `id`: a random id. */
export function newVisit(id: string, now: string, details: Partial<VisitDetails> = {}): VisitRecord {
  return {
    format: visitFormat,
    version: visitVersion,
    id,
    revision: 0,
    createdAt: now,
    changedAt: now,
    seq: 0,
    stretch: 1,
    ...blank,
    ...details,
    steps: {},
  };
}

export function changeDetails(visit: VisitRecord, details: Partial<VisitDetails>, now: string): VisitRecord {
  return { ...visit, ...details, changedAt: now };
}

/** A baseline visit that found something goes on as a visit after a trip, with everything that was measured. */
export function asTripVisit({ purpose: _baseline, ...visit }: VisitRecord, now: string): VisitRecord {
  return { ...visit, changedAt: now };
}

export interface StepEntry {
  /** Exactly as typed or chosen. */
  form: Form;
  /** The fields that are readings: their times are recorded. */
  readings?: readonly string[];
  snapshot?: Snapshot | undefined;
}

/**
 * The visit with a step answered, corrected or confirmed. Each of these takes the next number, so that the guide sees
 * which later answers rest on it. A reading with an unchanged text keeps its time.
 */
export function answerStep(visit: VisitRecord, id: StepId, entry: StepEntry, now: string): VisitRecord {
  const before = visit.steps[id];
  const readAt = Object.fromEntries(
    (entry.readings ?? [])
      .filter((field) => (entry.form[field] ?? '').trim() !== '')
      .map((field) => {
        const same = before?.form[field] === entry.form[field];
        return [field, (same ? before?.readAt[field] : undefined) ?? now];
      }),
  );
  const seq = nextSeq(visit);
  const { snapshot } = entry;
  const stretch = stretchAt(visit, now);
  const { [oneReadingField]: _ofVersion1, ...form } = entry.form;
  const provedBefore = earlierProofs(id, before, stretch);
  const step = {
    ...{ seq, at: now, stretch, form, readAt },
    ...(snapshot && { snapshot }),
    ...(provedBefore.length > 0 && { provedBefore }),
  };
  return { ...visit, seq, stretch, changedAt: now, steps: { ...visit.steps, [id]: step } };
}

/** Keeps the proof of an earlier stretch when the step is proved again: the report says when that was. */
function earlierProofs(id: StepId, before: StepRecord | undefined, stretch: number) {
  const known = before?.provedBefore ?? [];
  const replaced = before !== undefined && holdsOneStretch(id) && before.stretch < stretch;
  const answered = Object.values(before?.form ?? {}).some((value) => value.trim() !== '');
  if (!replaced || !answered) return known;
  const { stretch: old, at, form } = before;
  return [...known, { stretch: old, at, form }].slice(-limitValue('record-items'));
}

/** Higher than every number in the record, even if one was edited by hand. */
function nextSeq(visit: VisitRecord): number {
  return Math.max(visit.seq, ...Object.values(visit.steps).map((step) => step?.seq ?? 0)) + 1;
}

/** The visit with its decision of this moment, for reading later. */
export function noteDecision(
  visit: VisitRecord,
  decision: Omit<DecisionSnapshot, 'seq' | 'at'>,
  now: string,
): VisitRecord {
  return { ...visit, changedAt: now, decision: { ...decision, seq: visit.seq, at: now } };
}

/**
 * A copy of a visit with its own id, to keep two versions. Neither knows what was done since in the other, steps with
 * power included, so the copy begins a new stretch of work.
 */
export function copyOf(visit: VisitRecord, id: string): VisitRecord {
  return { ...asNewStretch(visit), id, revision: 0 };
}
