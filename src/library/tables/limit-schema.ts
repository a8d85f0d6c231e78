import { z } from 'astro/zod';
import { limitUnits } from '../../kernel/words/format-limit.ts';
import { limitStatuses } from '../../kernel/words/limit-status.ts';

const unit = z.enum(limitUnits);

/** Published tables: pairs of input and output, e.g. temperature and factor. */
const points = z.array(z.tuple([z.number(), z.number()])).min(2);

const limitSchema = z
  .strictObject({
    /** What it is, in a few words, e.g. "Insulation go/no-go point after a trip". */
    label: z.string().min(3),
    /** A single limit, in `unit`. Give exactly one of value, range, points, constants. */
    value: z.number().optional(),
    /** A typical range or a range of validity, in `unit`; leave an end out where it is open. */
    range: z.strictObject({ from: z.number().optional(), to: z.number().optional() }).optional(),
    /** A published table as pairs of input and output. */
    points: points.optional(),
    /** Named constants of a published formula. */
    constants: z.record(z.string(), z.number()).optional(),
    /** Base unit of the value, range or table output. */
    unit,
    /** Unit of the input of a table's pairs. */
    inputUnit: unit.optional(),
    /** When it applies, in one plain sentence. */
    when: z.string().min(10),
    /** Id in content/sources, or null for common practice and project judgement. */
    source: z.string().nullable(),
    /** Edition and clause or table, e.g. "IEEE 43-2000, table 3". */
    clause: z.string().optional(),
    status: z.enum(limitStatuses),
    /** True if the figure was recalled and not seen in a text. */
    recalled: z.boolean(),
    /** What a careful reader should know: disagreements, reasons for a judgement. */
    note: z.string().optional(),
    /** Other words that people search for, in the search index only. */
    otherWords: z.array(z.string().min(1)).optional(),
    /** Published ids of limits that this one replaced: their addresses lead to its row. */
    formerIds: z.array(z.string().regex(/^[a-z0-9-]+$/)).optional(),
  })
  .refine((l) => [l.value, l.range, l.points, l.constants].filter((x) => x !== undefined).length === 1, {
    message: 'give exactly one of value, range, points, constants',
  })
  .refine((l) => (l.source === null) === ['common-practice', 'project-judgement'].includes(l.status), {
    message: 'a published figure names its source; common practice and project judgement have none',
  });

/** A file of content/limits: one topic, its limits by id. */
export const limitTopicSchema = z.strictObject({
  /** Heading on the Tables page. */
  title: z.string(),
  /** Place on the Tables page, lowest first. */
  order: z.number(),
  /** Limits by id; the id is part of the published address, so it never changes. */
  limits: z.record(z.string().regex(/^[a-z0-9-]+$/), limitSchema),
});

export type Limit = z.infer<typeof limitSchema>;
