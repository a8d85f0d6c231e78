import * as z from 'zod/mini';
import { axisSchema } from '../../axes/record/axis-schema.ts';
import { limitValue } from '../../kernel/limits.ts';
import { runningNumber, time, visitId } from '../../kernel/link/schema-parts.ts';
import { photographList } from '../../visit/record/photograph.ts';
import { visitSchema } from '../../visit/record/visit-schema.ts';

export const recordFormat = 'overcurrent-fieldbook-shop-record';
export const shopFormat = 'overcurrent-fieldbook-shop';
export const shopVersion = 1;

/** How many changes of each device are in this version: one is newer than another if no number in it is smaller. */
export const versionsSchema = z
  .record(visitId, runningNumber)
  .check(
    z.refine((versions) => Object.keys(versions).length <= limitValue('record-items'), { error: 'too many devices' }),
  );

/** By the id of a photograph: `turns` grows when it is attached, taken off or put back, and is odd while it is there. `captions`: changes by device. */
export const picturesSchema = z.record(visitId, z.strictObject({ turns: runningNumber, captions: versionsSchema }));

const head = {
  format: z.literal(recordFormat),
  version: z.literal(shopVersion),
  id: visitId,
  versions: versionsSchema,
  /** What was done to its photographs; those that were taken off stay in it. */
  pictures: z.optional(picturesSchema),
};

/** A visit as the tablets of a shop exchange it: one file in the shared folder. */
const sharedVisitSchema = z.strictObject({
  ...head,
  kind: z.literal('visit'),
  /** The version in which the visit got its content, if a deletion has been outvoted since. */
  contentVersions: z.optional(versionsSchema),
  visit: visitSchema,
  photographs: z.optional(photographList),
});

/** What is left of a deleted visit, so that it is deleted on every device. */
const deletedSchema = z.strictObject({ ...head, kind: z.literal('deleted'), deletedAt: time });

/** An axis of the register: its record keeps what it replaced, so it needs no versions. */
const { versions: _none, pictures: _neither, ...axisHead } = head;
const sharedAxisSchema = z.strictObject({ ...axisHead, kind: z.literal('axis'), axis: axisSchema });

export const sharedSchema = z.discriminatedUnion('kind', [sharedVisitSchema, deletedSchema, sharedAxisSchema]);

/** Everything of one device in one file. */
export const shopSchema = z.strictObject({
  format: z.literal(shopFormat),
  version: z.literal(shopVersion),
  writtenAt: time,
  records: z.array(sharedSchema),
});
