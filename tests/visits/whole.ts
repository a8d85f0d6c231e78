import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readVisitText } from '../../src/visit/record/read-visit.ts';
import type { VisitRecord } from '../../src/visit/record/visit-schema.ts';
import type { Expected } from './row.ts';

/** A visit as a file that was exported once: these stand for every file out there, which must go on to open. */
interface WholeVisit {
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
  return { name, text, visit: read.value, expected };
}

/** Never refreshed: it is what the first version wrote. */
export const versionOne = whole('version-1', {
  decision: 'no-fault-found',
  stay: ['drive', 'motor', 'motor-cable'],
  why: 'Re-seated, everything passes, no trip.',
});

export const halfDone = whole('half-done', {
  due: 'bus-again',
  why: 'The bridge passes; the bus is measured once more, then the insulation comes.',
});

export const complete = whole('drive-and-motor', {
  decision: 'replace',
  replace: { drive: ['trips-without-motor', 'bridge-bad'], motor: ['isolation-bad'] },
  stay: ['motor-cable'],
  why: 'The motor alone reads 3 MΩ, the cable gigaohms.',
});
