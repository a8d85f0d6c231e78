import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod';

/** A change that no test can notice, since the program does the same with it. */
const equivalentSchema = z.strictObject({
  /** From the root of the repository. */
  file: z.string(),
  /** The whole line where the change begins, without the spaces around it. */
  line: z.string(),
  from: z.string(),
  to: z.string(),
  reason: z.string().min(20),
});

export type Equivalent = z.infer<typeof equivalentSchema>;
export type Change = Omit<Equivalent, 'reason'>;

export function readEquivalents(target: string): Equivalent[] {
  const file = join(import.meta.dirname, 'equivalent', `${target}.json`);
  return existsSync(file) ? z.array(equivalentSchema).parse(JSON.parse(readFileSync(file, 'utf8'))) : [];
}

const same = (a: Change, b: Change) => a.file === b.file && a.line === b.line && a.from === b.from && a.to === b.to;

export const isListed = (listed: readonly Equivalent[], change: Change) => listed.some((one) => same(one, change));

/** Entries of the list that no surviving change needs: the line has changed, or a test notices it by now. */
export const unneeded = (listed: readonly Equivalent[], survivors: readonly Change[]) =>
  listed.filter((one) => !survivors.some((change) => same(one, change)));
