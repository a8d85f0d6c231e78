import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { exportVisit } from '../../src/visit/record/export-visit.ts';
import { loadComponents } from '../bench/load-component.ts';
import { complete, halfDone } from './whole.ts';

/**
 * Writes the verdicts and sentences of today into the two files of the current version: `node_modules/.bin/node
 * tests/visits/refresh.ts`, then `npm run format`. What was typed, and when, stays. Read the difference before you commit it.
 */
type Completing = typeof import('../support/visit-records.ts');
// The words of the limits are gathered as the build gathers them, so Vite loads it.
const { completed } = await loadComponents<Completing>('/tests/support/visit-records.ts');

for (const { name, visit } of [complete, halfDone]) {
  const refreshed = completed(visit, visit.changedAt);
  writeFileSync(join(import.meta.dirname, `${name}.json`), exportVisit(refreshed).text);
}
