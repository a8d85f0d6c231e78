import { z } from 'astro/zod';
import { calculatorNames } from '../../calculators/registry.ts';

const verdict = z.enum(['go', 'no-go', 'undecided', 'stop']);

/** One value for each calculator that the case fills. */
const byCalculator = <Value extends z.ZodType>(value: Value) => z.partialRecord(z.enum(calculatorNames), value);

/** What a person types into one form, field by field, exactly as typed. */
const typed = z.record(z.string(), z.string());

/** Sentences. `{after-trip-point}` is replaced by that limit, so no limit is typed a second time. */
const prose = z.array(z.string()).min(1);

/** The visit with the guide; src/library/cases/case-visit.ts makes its record, which a link carries. */
const guidedVisit = z.strictObject({
  /** Day of the visit. Invented, and in the past. */
  date: z.iso.date(),
  /** What the controller showed. */
  message: z.string(),
  steps: z
    .array(
      z.strictObject({
        /** A step of src/visit/steps/ids.ts; the list is in the order of work. */
        step: z.string(),
        /** Clock time when it was answered. */
        at: z.iso.time({ precision: -1 }),
        /** Its fields, as in src/visit/steps. A measurement without fields uses the readings of its calculator. */
        form: typed.optional(),
      }),
    )
    .min(1),
  /** The decision worked out by hand, with codes of src/visit/guide; checked in a test. */
  decision: z.strictObject({
    kind: z.enum(['replace', 'inconclusive', 'no-fault-found', 'mechanical', 'undecided']),
    /** Bad parts with the proof. */
    replace: z.record(z.string(), z.array(z.string())),
    /** Parts that were measured and kept. */
    good: z.array(z.string()),
    /** Open questions. */
    open: z.array(z.string()),
  }),
});

export const visitCaseSchema = z.strictObject({
  /** Heading of the case. */
  title: z.string(),
  /** Place in the list; a form offers the first case that fills it. */
  order: z.int(),
  /** Always true: all case data is invented and the page says so. */
  invented: z.literal(true),
  /** Axis of the gantry of line 2 at the Marrow Bay Glassworks. */
  axis: z.enum(['Bridge', 'Carriage', 'Lift']),
  /** One or two sentences for the list, without giving away the ending. */
  summary: z.string(),
  /** What happened, in paragraphs. */
  story: prose,
  /** Field values for each calculator of the case. */
  forms: byCalculator(typed),
  /** The verdicts worked out by hand, checked in a test; the page computes its own. */
  expected: byCalculator(verdict),
  /** Shown above the readings of a calculator, if the story does not say whose or from when they are. */
  notes: byCalculator(z.string()).optional(),
  visit: guidedVisit,
  /** What was decided and why, in paragraphs. */
  conclusion: prose,
  /** The lessons, in a sentence or two each. */
  learn: prose,
  /** Ids of articles that explain it; they link back. */
  articles: z.array(z.string()).min(1),
});

export type VisitCase = z.infer<typeof visitCaseSchema>;
