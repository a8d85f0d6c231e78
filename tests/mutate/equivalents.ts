import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod';

/** A change of one place: what stood there, and what was put there instead. */
export interface Change {
  /** From the root of the repository. */
  file: string;
  /** The whole line where the change begins, without the spaces around it. */
  line: string;
  from: string;
  to: string;
}

/** Changes of one line that no test can notice, since the program does the same with them. */
const equivalentSchema = z.strictObject({
  file: z.string(),
  line: z.string(),
  /** Each as `from → to`. */
  changes: z.array(z.string()).min(1),
  reason: z.string().min(20),
});

type Equivalent = z.infer<typeof equivalentSchema>;

export function readEquivalents(target: string): Equivalent[] {
  const file = join(import.meta.dirname, 'equivalent', `${target}.json`);
  return existsSync(file) ? z.array(equivalentSchema).parse(JSON.parse(readFileSync(file, 'utf8'))) : [];
}

const textOf = ({ from, to }: Change) => `${from} → ${to}`;
const isOfLine = (one: Equivalent, change: Change) => one.file === change.file && one.line === change.line;

export const isListed = (listed: readonly Equivalent[], change: Change) =>
  listed.some((one) => isOfLine(one, change) && one.changes.includes(textOf(change)));

/** Listed changes that did not survive: the line has changed, or a test notices it by now. */
export function unneeded(listed: readonly Equivalent[], survivors: readonly Change[]): string[] {
  return listed.flatMap((one) => {
    const survived = new Set(survivors.filter((change) => isOfLine(one, change)).map(textOf));
    return one.changes.filter((change) => !survived.has(change)).map((change) => `${one.file}: ${one.line}\n${change}`);
  });
}
