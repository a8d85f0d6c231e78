import * as z from 'zod/mini';
import { text, visitId } from '../../kernel/link/schema-parts.ts';

/** What joins a visit to an axis over the years. All of it may be absent, as in every record before it. */
export const axisPart = {
  /** The axis in the register. Absent: the names of machine and axis say which it is. */
  axisId: z.optional(visitId),
  /** The motor cable as the register knows it: length, cross-section in mm² and insulation as the forms take them. */
  cable: z.optional(z.strictObject({ metres: text, section: text, material: text })),
  /** A visit without a trip: readings of a sound axis, to compare later ones with. */
  purpose: z.optional(z.literal('baseline')),
};
