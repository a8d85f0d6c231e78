import * as z from 'zod/mini';
import { code, list, runningNumber, text, time, visitId } from '../../kernel/link/schema-parts.ts';
import { fieldIds } from './axis-fields.ts';

export const axisFormat = 'overcurrent-fieldbook-axis';
export const axisVersion = 1;

/** When a text was typed. `count`: one more than the highest count that the person saw there; clocks may be wrong. */
const typed = { at: time, count: runningNumber };

const entrySchema = z.strictObject({ value: text, ...typed });
const nameSchema = z.strictObject({ machine: text, axis: text, ...typed });

/** A part that was changed. A later entry with the same id replaces it; `dropped` is how one is taken back. */
const changeSchema = z.strictObject({
  id: visitId,
  part: code,
  /** `2026-03-02`. */
  on: text,
  note: text,
  /** The visit that decided it. */
  visit: z.optional(visitId),
  dropped: z.boolean(),
  ...typed,
});

/**
 * One axis of a machine, version 1. Every text keeps what it replaced, so that two devices' records merge without loss:
 * see src/axes/README.md.
 */
export const axisSchema = z.strictObject({
  format: z.literal(axisFormat),
  version: z.literal(axisVersion),
  id: visitId,
  /** Grows with each save on one device, so that two tabs detect that both have changed it. Not merged. */
  revision: runningNumber,
  createdAt: time,
  /** All names that it ever had; the present one is the newest, the others are aliases. */
  names: list(nameSchema),
  fields: z.partialRecord(z.enum(fieldIds), list(entrySchema)),
  changes: list(changeSchema),
});

export type AxisRecord = z.output<typeof axisSchema>;
export type Entry = z.output<typeof entrySchema>;
export type NameEntry = z.output<typeof nameSchema>;
export type PartChange = z.output<typeof changeSchema>;
