import * as z from 'zod/mini';
import { limitValue } from '../limits.ts';

/** What a person typed or chose in one field, exactly; may be empty. */
export const text = z.string().check(z.maxLength(limitValue('record-text')));

/** Notes, and sentences that were shown. */
export const longText = z.string().check(z.maxLength(limitValue('record-notes')));

/** A running number: never negative, never so large that the next one is lost. */
export const runningNumber = z.int().check(z.minimum(0), z.maximum(limitValue('record-number')));

/** ISO 8601 with the offset of the place: `2026-03-02T05:58:00+01:00`. Shown to people, never compared. */
export const time = z.iso.datetime({ offset: true });

/** A stable name from the program, such as `proven-bad`. */
export const code = z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/), z.maxLength(limitValue('record-text')));

/** Id of a visit: safe in an address and a file name. */
export const visitId = z.string().check(z.regex(/^[A-Za-z0-9_-]{8,64}$/));

/** The id of a field in a form. */
export const fieldId = z.string().check(z.regex(/^[A-Za-z][A-Za-z0-9]{0,39}$/));

export const list = <Item extends z.ZodMiniType>(item: Item) =>
  z.array(item).check(z.maxLength(limitValue('record-items')));

/** Values by field id. The pattern leaves no room for names that JavaScript treats specially. */
export const byField = <Value extends z.ZodMiniType>(value: Value) =>
  z
    .record(fieldId, value)
    .check(
      z.refine((fields) => Object.keys(fields).length <= limitValue('record-items'), { error: 'too many fields' }),
    );
