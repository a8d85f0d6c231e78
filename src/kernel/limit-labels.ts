import { allLimits, type LimitId } from './limits.ts';

/** What a verdict says of a limit besides its figure; src/library/tables/limit-schema.ts explains the full shape. */
interface LimitLabel {
  label: string;
  status: string;
  source: string | null;
  clause?: string;
  recalled: boolean;
}

/**
 * The labels of all limits. In scripts of pages `allLimits` has the figures alone, and src/astro/limits-for-readers.ts
 * writes this constant out: a form that judges nothing yet needs no label.
 */
export const limitLabels: Readonly<Record<LimitId, LimitLabel>> = allLimits;
