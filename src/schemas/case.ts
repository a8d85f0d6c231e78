import { z } from 'astro/zod';

const verdict = z.enum(['go', 'no-go', 'undecided']);

/** What a person types into one calculator, field by field, exactly as typed. */
const typed = z.record(z.string(), z.string());

export const visitCaseSchema = z.strictObject({
  /** Heading of the case. */
  title: z.string(),
  /** Always true: all case data is invented and the page says so. */
  invented: z.literal(true),
  /** Machine and axis of the Marrow Bay scenario. */
  axis: z.string(),
  /** What happened, in paragraphs. */
  story: z.array(z.string()).min(1),
  /** Field values for each calculator; the winding where it was measured. */
  forms: z.strictObject({ bridge: typed, insulation: typed, isolation: typed, winding: typed.optional() }),
  /** The verdicts stated by hand, checked in a test. */
  expected: z.strictObject({ bridge: verdict, insulation: verdict, isolation: verdict, winding: verdict.optional() }),
  /** What was decided and why, in paragraphs. */
  conclusion: z.array(z.string()).min(1),
});

export type VisitCase = z.infer<typeof visitCaseSchema>;
