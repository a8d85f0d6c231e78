import * as z from 'zod/mini';
import { code, list, longText, runningNumber, text, time } from '../../kernel/link/schema-parts.ts';

/** A limit at the time of the verdict, with its value as text, so that an old record stays readable. */
const limitSnapshotSchema = z.strictObject({
  id: code,
  label: text,
  /** With its unit, as shown: `100 MΩ`. */
  value: text,
  status: code,
  /** Its source in words; empty for common practice and project judgement. */
  source: text,
});

/** The outcome of one step at the time. For reading only: the guide judges the typed texts again. */
export const snapshotSchema = z.strictObject({
  verdict: z.enum(['go', 'no-go', 'undecided', 'stop']),
  sentences: list(longText),
  limits: list(limitSnapshotSchema),
  /** State of each part, if the step distinguishes parts: `cable`: `proven-good`. */
  parts: z.optional(z.strictObject({ cable: code, motor: code, protectiveConductor: code })),
});

/** The decision at the time. `seq`: the record's then; if the record's is higher now, the decision is out of date. */
export const decisionSnapshotSchema = z.strictObject({
  kind: z.enum(['replace', 'inconclusive', 'no-fault-found', 'mechanical', 'undecided']),
  sentences: list(longText),
  replace: list(z.strictObject({ part: code, proofs: list(code) })),
  /** Since the guide says more than what is proven: absent in older records. */
  suspect: z.optional(list(z.strictObject({ part: code, reasons: list(code) }))),
  excluded: z.optional(list(z.strictObject({ part: code, by: list(code) }))),
  possible: z.optional(list(code)),
  good: list(code),
  open: list(code),
  baseline: list(code),
  seq: runningNumber,
  at: time,
});

export type LimitSnapshot = z.output<typeof limitSnapshotSchema>;
export type Snapshot = z.output<typeof snapshotSchema>;
export type DecisionSnapshot = z.output<typeof decisionSnapshotSchema>;
