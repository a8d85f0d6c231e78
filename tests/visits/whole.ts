import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readVisitText } from '../../src/visit/record/read-visit.ts';
import type { VisitRecord } from '../../src/visit/record/visit-schema.ts';
import type { Expected } from './row.ts';

/** An exported visit. These represent all files that people have, which must still open. */
export interface WholeVisit {
  name: string;
  /** The text of the file. */
  text: string;
  visit: VisitRecord;
  expected: Expected;
}

function whole(name: string, expected: Expected): WholeVisit {
  const text = readFileSync(join(import.meta.dirname, `${name}.json`), 'utf8');
  const read = readVisitText(text);
  if (!read.ok) throw new Error(`${name}: ${JSON.stringify(read)}`);
  return { name, text, visit: read.value.visit, expected };
}

/** Never refreshed: it is what the first version wrote. */
export const versionOne = whole('version-1', {
  due: 'support-axis',
  stored: 'no-fault-found',
  offPath: ['insulation', 'reconnect', 'retry-all'],
  why: 'Nobody noted where the idle cores were in the insulation test: it is asked for again, and before it the support.',
});

export const halfDone = whole('half-done', {
  due: 'bus-again',
  why: 'The bridge passes; the bus is measured once more, then the insulation comes.',
});

export const complete = whole('drive-and-motor', {
  decision: 'replace',
  replace: { drive: ['bridge-bad'], motor: ['isolation-bad'] },
  stay: ['motor-cable'],
  why: 'DC− to V reads 3.8 Ω, twice; the motor alone reads 3 MΩ, dried too, and the cable gigaohms.',
});
