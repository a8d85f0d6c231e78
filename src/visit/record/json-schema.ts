import * as z from 'zod/mini';
import { photographList } from './photograph.ts';
import { visitSchema } from './visit-schema.ts';

/** The published JSON Schema of a visit file (draft 2020-12). Made at build time and not part of any page. */
export function visitJsonSchema(): Record<string, unknown> {
  return {
    title: 'A visit of the Overcurrent Fieldbook, version 2',
    description:
      'The typed texts in steps.*.form are the truth. Snapshots keep what was said about them at the time. Times are ' +
      'for reading: the order of the answers is that of seq.',
    ...z.toJSONSchema(z.extend(visitSchema, { photographs: z.optional(photographList) })),
  };
}
