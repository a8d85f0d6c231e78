import * as z from 'zod/mini';
import { byField, list, longText, runningNumber, text, time, visitId } from '../../kernel/link/schema-parts.ts';
import { stepIds } from '../steps/ids.ts';
import { decisionSnapshotSchema, snapshotSchema } from './snapshot-schema.ts';

export const visitFormat = 'overcurrent-fieldbook-visit';
export const visitVersion = 2;

/** An earlier proof that this step has replaced: when the drive was shown to be dead, or the axis held, before. */
const earlierProofSchema = z.strictObject({ stretch: runningNumber, at: time, form: byField(text) });

export const stepRecordSchema = z.strictObject({
  /** From the record's `seq`: grows with each answer given or changed. Unlike a clock it can't be set back. */
  seq: runningNumber,
  at: time,
  /** The stretch of work in which it was answered: see stretch.ts. 0: before anything was known of stretches. */
  stretch: runningNumber,
  /** Exactly as typed or chosen; the fields are listed in src/visit/steps and in the calculators. */
  form: byField(text),
  /** When each reading was typed. */
  readAt: byField(time),
  snapshot: z.optional(snapshotSchema),
  /** Of a step that is proved anew in each stretch: what stood here before, the oldest first. */
  provedBefore: z.optional(list(earlierProofSchema)),
});

/** A visit, version 2. The typed texts are the truth; snapshots are for reading. */
export const visitSchema = z.strictObject({
  format: z.literal(visitFormat),
  version: z.literal(visitVersion),
  id: visitId,
  /** Grows with each save; two tabs find out by it that both have changed the visit. */
  revision: runningNumber,
  createdAt: time,
  changedAt: time,
  /** The last number that was given to an answer. */
  seq: runningNumber,
  /** The stretch of work in which the last answer was given. A visit that comes from elsewhere begins a new one. */
  stretch: runningNumber,
  machine: text,
  axis: text,
  drive: text,
  motor: text,
  controllerMessage: text,
  site: text,
  person: text,
  /** Which drive serves which axes, in the order of the drive's own indications. */
  servedAxes: list(z.strictObject({ drive: text, axes: list(text) })),
  instruments: list(z.strictObject({ what: text, identification: text, accuracy: text })),
  conditions: z.strictObject({ airTemperature: text, humidity: text, surroundings: text }),
  steps: z.partialRecord(z.enum(stepIds), stepRecordSchema),
  decision: z.optional(decisionSnapshotSchema),
  notes: longText,
});

export type StepRecord = z.output<typeof stepRecordSchema>;
export type VisitRecord = z.output<typeof visitSchema>;
