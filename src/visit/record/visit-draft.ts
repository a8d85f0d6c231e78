import * as z from 'zod/mini';
import { byField, runningNumber, text, time } from '../../kernel/link/schema-parts.ts';
import { stepIds } from '../steps/ids.ts';
import type { VisitDetails } from './change-visit.ts';
import { type VisitRecord, visitSchema } from './visit-schema.ts';

const {
  format,
  version,
  id,
  revision,
  createdAt,
  changedAt,
  seq,
  steps,
  decision,
  reported,
  secondVersionOf,
  ...details
} = visitSchema.shape;

/** What is being typed into a visit and has not settled; until then no verdict uses it. */
const draftSchema = z.strictObject({
  /** Number of keystrokes; see `newerDraft`. */
  count: runningNumber,
  steps: z.partialRecord(z.enum(stepIds), z.strictObject({ form: byField(text), at: time })),
  details: z.optional(z.strictObject({ values: z.partial(z.strictObject(details)), at: time })),
});

export type VisitDraft = z.output<typeof draftSchema>;
type StepId = (typeof stepIds)[number];

/** Something typed, in a step or in the details of the visit. */
export type DraftEntry = { step: StepId; form: Record<string, string> } | { details: Partial<VisitDetails> };

export const emptyDraft: VisitDraft = { count: 0, steps: {} };

/** The draft after one more keystroke. `now`: ISO time with offset. */
export function withEntry(draft: VisitDraft, entry: DraftEntry, now: string): VisitDraft {
  const count = draft.count + 1;
  if ('step' in entry)
    return { ...draft, count, steps: { ...draft.steps, [entry.step]: { form: { ...entry.form }, at: now } } };
  return { ...draft, count, details: { values: { ...draft.details?.values, ...entry.details }, at: now } };
}

/** The part of the draft that is not in the visit yet. An answer given later, perhaps in another tab, is kept. */
export function unsavedPart(draft: VisitDraft, visit: VisitRecord): VisitDraft {
  const open = Object.entries(draft.steps).filter(
    ([step, typed]) => typed !== undefined && isOpen(typed, visit.steps[step as StepId]),
  );
  const values = Object.entries(draft.details?.values ?? {}).filter(
    ([field, value]) => JSON.stringify(value) !== JSON.stringify(visit[field as keyof VisitDetails]),
  );
  // Details that are being typed are newer than the last save; older ones come from a storage that lost later keystrokes.
  const at = isOlder(draft.details?.at, visit.changedAt) ? undefined : draft.details?.at;
  return {
    count: draft.count,
    steps: Object.fromEntries(open),
    ...(at !== undefined && values.length > 0 && { details: { values: Object.fromEntries(values), at } }),
  };
}

function isOlder(time: string | undefined, than: string): boolean {
  return time !== undefined && Date.parse(time) < Date.parse(than);
}

function isOpen(typed: { form: Record<string, string>; at: string }, saved: VisitRecord['steps'][StepId]): boolean {
  if (sameForm(typed.form, saved?.form ?? {})) return false;
  return saved === undefined || !isOlder(typed.at, saved.at);
}

/** Whether two forms have the same texts; an empty field equals an absent one. */
export function sameForm(a: Record<string, string>, b: Record<string, string>): boolean {
  return [...Object.keys(a), ...Object.keys(b)].every((field) => (a[field] ?? '') === (b[field] ?? ''));
}

export function isEmptyDraft({ steps: typed, details: words }: VisitDraft): boolean {
  return Object.keys(typed).length === 0 && words === undefined;
}

/** A draft from the storage; an empty one if there is none or it can't be read. */
export function readDraft(stored: unknown): VisitDraft {
  const read = draftSchema.safeParse(stored);
  return read.success ? read.data : emptyDraft;
}

/**
 * The draft with the later entry; within the same second, the one with more keystrokes. The count alone is not enough:
 * a browser that was killed restores an older `localStorage`, whose draft may be old but have a large count.
 */
export function newerDraft(a: VisitDraft, b: VisitDraft): VisitDraft {
  const [first, second] = [lastTyped(a), lastTyped(b)];
  if (first !== second) return second > first ? b : a;
  return b.count > a.count ? b : a;
}

function lastTyped({ steps: typed, details: words }: VisitDraft): number {
  const times = [...Object.values(typed).map((entry) => entry?.at), words?.at];
  return Math.max(0, ...times.flatMap((time) => (time === undefined ? [] : [Date.parse(time)])));
}
