import { createHash } from 'node:crypto';

const seed = '20261128';

/**
 * Whether a change is among those that are tried: one of `FIELDBOOK_MUTATION_ONE_OF`, by a hash of its number, so that
 * runner and list agree and the same ones are tried each time as long as the files stay the same.
 */
export function isSampled({ id }: { id: string }): boolean {
  const oneOf = Number(process.env.FIELDBOOK_MUTATION_ONE_OF ?? 1);
  return createHash('sha256').update(`${seed} ${id}`).digest().readUInt32BE(0) % oneOf === 0;
}
