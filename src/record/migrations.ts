import type { JsonObject } from './parse-json.ts';

/** Makes a record of the next version from one of version n. Pure; may take for granted that version n fits. */
export type Migration = (old: JsonObject) => JsonObject;

/**
 * By the version that they start from. To change the format: raise `visitVersion`, change the schema, and put here
 * what turns the version before into it. Never change or remove one: files of every version stay on people's disks.
 * Version 1 is the first that was published, so there is none yet.
 */
export const migrations: Readonly<Record<number, Migration>> = {};

/** A record brought to version `to` step by step; undefined where a step is missing or can't use what it was given. */
export function migrate(
  record: JsonObject,
  from: number,
  to: number,
  known: Readonly<Record<number, Migration>> = migrations,
): JsonObject | undefined {
  let migrated = record;
  try {
    for (let version = from; version < to; version += 1) {
      const step = known[version];
      if (step === undefined) return undefined;
      migrated = { ...step(migrated), version: version + 1 };
    }
  } catch {
    return undefined;
  }
  return migrated;
}
