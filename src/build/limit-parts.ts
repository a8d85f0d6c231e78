import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';
import type { Limit } from '../schemas/limit.ts';

type Part = 'figure' | 'words' | 'printed';

/** Calculators compute with the figure of a limit, verdicts say its words, and only tables and articles print the rest. */
const partOf: Record<keyof Limit, Part> = {
  value: 'figure',
  range: 'figure',
  points: 'figure',
  constants: 'figure',
  unit: 'figure',
  inputUnit: 'figure',
  label: 'words',
  status: 'words',
  source: 'words',
  clause: 'words',
  recalled: 'words',
  when: 'printed',
  note: 'printed',
  formerIds: 'printed',
};

/**
 * In a browser a file of `content/limits` holds the figures of all its limits, and with `?raw` their words. `LimitData`
 * in src/calc and `LimitWords` have the same fields, so that code which needs another does not compile.
 */
export const limitParts: Plugin = {
  name: 'limit-parts',
  enforce: 'pre',
  // With a filter Vite asks only about these files: a call for each of its modules would slow every build.
  load: {
    filter: { id: /[\\/]content[\\/]limits[\\/][\w-]+\.json\?raw$/ },
    handler: (id) => `export default ${JSON.stringify(onePart(readFileSync(id.replace('?raw', ''), 'utf8'), 'words'))}`,
  },
  transform: {
    filter: { id: /[\\/]content[\\/]limits[\\/][\w-]+\.json$/ },
    handler(json) {
      return this.environment.name === 'client' ? onePart(json, 'figure') : null;
    },
  },
};

/** The limits of a topic, each with the fields of one part alone. */
export function onePart(topic: string, part: Part): string {
  const limits: Record<string, Record<string, unknown>> = JSON.parse(topic).limits;
  const kept = Object.entries(limits).map(([id, limit]) => {
    const fields = Object.entries(limit).filter(([field]) => partOf[field as keyof Limit] === part);
    return [id, Object.fromEntries(fields)];
  });
  return JSON.stringify({ limits: Object.fromEntries(kept) });
}
