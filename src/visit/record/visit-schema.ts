import * as z from 'zod/mini';
import { byField, list, longText, runningNumber, text, time, visitId } from '../../kernel/link/schema-parts.ts';
import { stepIds } from '../steps/ids.ts';
import { axisPart } from './axis-part.ts';
import { instrumentSchema } from './instrument-schema.ts';
import { reportedSchema } from './reported-schema.ts';
import { decisionSnapshotSchema, snapshotSchema } from './snapshot-schema.ts';

export const visitFormat = 'overcurrent-fieldbook-visit';
export const visitVersion = 2;

/** An earlier proof, now replaced, that the drive was dead or the axis held. */
const earlierProofSchema = z.strictObject({ stretch: runningNumber, at: time, form: byField(text) });

const stepRecordSchema = z.strictObject({
  /** From the record's `seq`: grows with each answer given or changed. Unlike a clock it can't run backwards. */
  seq: runningNumber,
  at: time,
  /** The stretch of work in which it was answered: see stretch.ts. 0: from version 1, which had no stretches. */
  stretch: runningNumber,
  /** Exactly as typed or chosen; the fields are listed in src/visit/steps and in the calculators. */
  form: byField(text),
  /** When each reading was typed. */
  readAt: byField(time),
  snapshot: z.optional(snapshotSchema),
  /** For a step that is proved again in each stretch: its earlier proofs, the oldest first. */
  provedBefore: z.optional(list(earlierProofSchema)),
});

/** A visit, version 2. The typed texts are the truth; snapshots are for reading. */
export const visitSchema = z.strictObject({
  format: z.literal(visitFormat),
  version: z.literal(visitVersion),
  id: visitId,
  /** Grows with each save, so that two tabs detect that both have changed the visit. */
  revision: runningNumber,
  createdAt: time,
  changedAt: time,
  /** The number of the last answer. */
  seq: runningNumber,
  /** The stretch of work in which the last answer was given. An imported visit begins a new one. */
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
  instruments: list(instrumentSchema),
  conditions: z.strictObject({ airTemperature: text, humidity: text, surroundings: text }),
  steps: z.partialRecord(z.enum(stepIds), stepRecordSchema),
  decision: z.optional(decisionSnapshotSchema),
  notes: longText,
  ...axisPart,
  /** Since visits begin with a call: absent in older records. */
  reported: z.optional(reportedSchema),
  /** What was done from the decision to the machine that runs, as typed; the fields are in src/visit/restart. */
  restart: z.optional(byField(text)),
  /** The visit that two devices had changed without sight of each other; this is the version beside it. */
  secondVersionOf: z.optional(visitId),
});

export type StepRecord = z.output<typeof stepRecordSchema>;
export type VisitRecord = z.output<typeof visitSchema>;
