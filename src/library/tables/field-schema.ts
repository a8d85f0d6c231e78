import { z } from 'astro/zod';

const id = z.string().regex(/^[a-z0-9-]+$/);

/** Share of visits, 0 to 1. */
const share = z.number().min(0).max(1);

const cause = z.strictObject({
  label: z.string().min(3),
  /** Per cent of the visits to a servo axis for an overcurrent trip. */
  weight: z.number().positive(),
  /** The reason for the weight. */
  why: z.string().min(5),
  /** Ids of simulated faults and combinations; they share the weight equally. */
  faults: z.array(z.string().regex(/^[A-Za-z0-9-]+$/)).min(1),
});

const prevalence = z.strictObject({
  label: z.string().min(3),
  /** Whether it is drawn with the axis or with the person. */
  of: z.enum(['axis', 'person']),
  share,
  why: z.string().min(5),
});

const minutes = z.strictObject({
  /** By step of a visit. */
  steps: z.record(id, z.number().positive()),
  /** One try with power. */
  try: z.number().positive(),
  /** A step that is not listed. */
  other: z.number().positive(),
});

/** The files of content/field: causes with their weights, prevalences of properties and slips, minutes. All are judgement. */
export const fieldSchema = z.union([
  z.strictObject({ about: z.string().min(20), causes: z.record(id, cause) }),
  z.strictObject({ about: z.string().min(20), prevalences: z.record(id, prevalence) }),
  z.strictObject({ about: z.string().min(20), minutes }),
]);
