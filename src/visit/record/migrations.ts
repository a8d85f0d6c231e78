import { isObject, type JsonObject } from '../../kernel/link/parse-json.ts';
import { oneReadingField } from '../steps/ids.ts';

/** Makes a record of the next version from one of version n. Pure; may take for granted that version n fits. */
export type Migration = (old: JsonObject) => JsonObject;

/**
 * By the version that they start from. To change the format: raise `visitVersion`, change the schema, and put here
 * what turns the version before into it. Never change or remove one: files of every version stay on people's disks.
 */
export const migrations: Readonly<Record<number, Migration>> = { 1: withStretches };

/**
 * Version 1 knew no stretches of work: all that it holds is of an earlier one. Its lockouts had one reading, the highest
 * of all points, and it asked of the axis that tripped alone whether it can fall.
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
