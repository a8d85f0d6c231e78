import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { exportVisit } from '../../src/record/export-visit.ts';
import { readVisitText } from '../../src/record/read-visit.ts';
import { loadComponents } from '../bench/load-component.ts';

/**
 * Writes the verdicts and sentences that the program says today into the visits of this folder, as an export would
 * have them: `node_modules/.bin/node tests/visits/refresh.ts`, then `npm run format`. What was typed, and when, is left alone.
 */
type Completing = typeof import('../support/visit-records.ts');
// The words of the limits are gathered as the build gathers them, so Vite loads it.
const { completed } = await loadComponents<Completing>('/tests/support/visit-records.ts');

for (const file of readdirSync(import.meta.dirname).filter((name) => name.endsWith('.json'))) {
  const path = join(import.meta.dirname, file);
  const read = readVisitText(readFileSync(path, 'utf8'));
  if (!read.ok) throw new Error(`${file}: ${JSON.stringify(read)}`);
  const visit = completed(read.value, read.value.changedAt);
  writeFileSync(path, exportVisit({ ...visit, changedAt: read.value.changedAt }).text);
}
