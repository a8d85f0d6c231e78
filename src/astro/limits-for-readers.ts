import type { Plugin } from 'vite';
import { limitLabels } from '../kernel/limit-labels.ts';

/** What a rule computes with: `LimitData` of kernel/limits.ts. */
const figures = ['unit', 'inputUnit', 'value', 'range', 'points', 'constants'];

/** What a verdict names: `limitLabels` of kernel/limit-labels.ts. The rest is for the tables and the search. */
const labels = ['label', 'status', 'source', 'clause', 'recalled'];

/**
 * Splits the limits for the scripts of pages: the figures, which every form needs, and the labels, which come with a
 * rule. The sentences that only the tables show are left out.
 */
export const limitsForReaders: Plugin = {
  name: 'limits-for-readers',
  enforce: 'pre',
  applyToEnvironment: ({ name }) => name === 'client',
  transform: {
    filter: { id: /\/(content\/limits\/[^/]+\.json|src\/kernel\/limit-labels\.ts)$/ },
    handler: (code, id) => ({ code: id.endsWith('.json') ? onlyFigures(code) : writtenLabels(), map: null }),
  },
};

type Parts = Record<string, unknown>;

const only = (keys: readonly string[], limit: object) =>
  Object.fromEntries(Object.entries(limit).filter(([key]) => keys.includes(key)));

/** The same file of limits, with figures alone. */
export function onlyFigures(json: string): string {
  const { limits } = JSON.parse(json) as { limits: Record<string, Parts> };
  const short = Object.entries(limits).map(([id, limit]) => [id, only(figures, limit)]);
  return JSON.stringify({ limits: Object.fromEntries(short) });
}

/** The module of the labels, without what it takes them from. */
export function writtenLabels(): string {
  const short = Object.entries(limitLabels).map(([id, limit]) => [id, only(labels, limit)]);
  return `export const limitLabels = ${JSON.stringify(Object.fromEntries(short))};`;
}
