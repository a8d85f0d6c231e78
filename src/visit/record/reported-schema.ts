import * as z from 'zod/mini';
import { byField, text, time } from '../../kernel/link/schema-parts.ts';
import { stepIds } from '../steps/ids.ts';

/**
 * What somebody on site said on the phone, by step and field. No answer of the visit: nothing counts before the person
 * at the machine has confirmed it, and then it stands in `steps`.
 */
export const reportedSchema = z.strictObject({
  /** When it was said. */
  at: time,
  steps: z.partialRecord(z.enum(stepIds), byField(text)),
});
