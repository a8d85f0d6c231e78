import * as z from 'zod/mini';
import { code, list, longText, runningNumber, text, time } from '../../kernel/link/schema-parts.ts';

/** A limit as it was when the verdict was given, with its value in words, so that an old record stays readable. */
export const limitSnapshotSchema = z.strictObject({
  id: code,
  label: text,
  /** With unit, as it was shown: `100 MΩ`. */
  value: text,
  status: code,
  /** Where it comes from, as a person reads it; empty for common practice and project judgement. */
  source: text,
});

/** What was said about the readings of one step at the time. For reading only: the guide judges the typed texts anew. */
export const snapshotSchema = z.strictObject({
  verdict: z.enum(['go', 'no-go', 'undecided', 'stop']),
  sentences: list(longText),
  limits: list(limitSnapshotSchema),
  /** State of each part, where the step tells parts apart: `cable`: `proven-good`. */
  parts: z.optional(z.strictObject({ cable: code, motor: code, protectiveConductor: code })),
});

/** The decision as it was given. `seq` is the record's at that moment: older than the record's now means out of date. */
export const decisionSnapshotSchema = z.strictObject({
  kind: z.enum(['replace', 'inconclusive', 'no-fault-found', 'mechanical', 'undecided']),
  sentences: list(longText),
  replace: list(z.strictObject({ part: code, proofs: list(code) })),
  good: list(code),
  open: list(code),
  baseline: list(code),
  seq: runningNumber,
  at: time,
});

export type LimitSnapshot = z.output<typeof limitSnapshotSchema>;
export type Snapshot = z.output<typeof snapshotSchema>;
export type DecisionSnapshot = z.output<typeof decisionSnapshotSchema>;
