import { isObject, type JsonObject } from '../../kernel/link/parse-json.ts';
import { oneReadingField } from '../steps/ids.ts';

/** Turns a record of one version into one of the next. Pure; may assume that the record fits its version. */
export type Migration = (old: JsonObject) => JsonObject;

/**
 * By the version that they start from. To change the format: raise `visitVersion`, change the schema, and add the
 * migration from the version before. Never change or remove a migration: files of every version stay on people's disks.
 */
export const migrations: Readonly<Record<number, Migration>> = { 1: withStretches };

/**
 * Version 1 had no stretches of work: everything in it counts as earlier. Its lockouts had one reading, the highest of
 * all points, and it asked only about the axis that tripped whether it can fall.
 */
function withStretches(old: JsonObject): JsonObject {
  const steps = Object.entries(objectOf(old.steps)).map(([id, step]) => {
    const { form, ...rest } = objectOf(step);
    return [id, { ...rest, stretch: 0, form: formOfVersion2(id, objectOf(form)) }];
  });
  return { ...old, stretch: 1, steps: Object.fromEntries(steps) };
}

function formOfVersion2(id: string, form: JsonObject): JsonObject {
  if (id.startsWith('lockout-')) return { ...form, [oneReadingField]: 'yes' };
  if (id === 'symptom' && form.gravityLoaded === 'no') return { ...form, gravityLoaded: 'own-no' };
  return form;
}

function objectOf(value: unknown): JsonObject {
  if (!isObject(value)) throw new Error('does not fit version 1');
  return value;
}

/** A record brought to version `to` step by step; undefined if a migration is missing or fails. */
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
