import { limitValue } from '../../kernel/limits.ts';
import { isObject, parseJson } from '../../kernel/link/parse-json.ts';
import { failed, type Problem, type ReadProblemKind, type Result, succeeded } from '../../kernel/link/problem.ts';
import { type Migration, migrate, migrations } from './migrations.ts';
import { type Photograph, photographList, readPhotograph } from './photograph.ts';
import { overBudget } from './photograph-problem.ts';
import { type VisitRecord, visitFormat, visitSchema, visitVersion } from './visit-schema.ts';

export type ReadResult = Result<VisitRecord, Problem<ReadProblemKind>>;

/** What the file of a visit holds. */
export interface VisitFile {
  visit: VisitRecord;
  photographs: Photograph[];
}

export type FileResult = Result<VisitFile, Problem<ReadProblemKind>>;

/** A visit from the text of a file. Never throws: any text that is not completely a visit gives a problem. */
export function readVisitText(text: string): FileResult {
  if (byteLength(text) > limitValue('visit-file')) return failed('too-large');
  const json = parseJson(text.replace(/^\uFEFF/, ''));
  if (!json.ok) return json;
  if (!isObject(json.value)) return failed('foreign');
  const { photographs: written, ...record } = json.value;
  const visit = readVisit(record);
  if (!visit.ok) return visit;
  const photographs = readPhotographs(written ?? []);
  return photographs.ok ? succeeded({ visit: visit.value, photographs: photographs.value }) : photographs;
}

function readPhotographs(written: unknown): Result<Photograph[], Problem<ReadProblemKind>> {
  const place = (path: PropertyKey[], keys: string[] = []) =>
    failed('does-not-fit', placeOf({ path: ['photographs', ...path], keys }));
  const parsed = photographList.safeParse(written);
  if (!parsed.success) {
    const issue: Issue | undefined = parsed.error.issues[0];
    return place(issue?.path ?? [], issue?.keys);
  }
  const photographs = parsed.data.map(readPhotograph);
  const damaged = photographs.indexOf(undefined);
  if (damaged >= 0) return place([damaged, 'jpeg']);
  const read = photographs.filter((one) => one !== undefined);
  const ids = read.map(({ id }) => id);
  const twice = ids.findIndex((id, index) => ids.indexOf(id) !== index);
  if (twice >= 0) return place([twice, 'id']);
  return overBudget(read) === undefined ? succeeded(read) : place([]);
}

/** A visit from data of any version, as it came from a file, a link or the browser's storage. */
export function readVisit(data: unknown, known: Readonly<Record<number, Migration>> = migrations): ReadResult {
  if (!isObject(data) || data.format !== visitFormat) return failed('foreign');
  const { version } = data;
  if (typeof version !== 'number' || !Number.isInteger(version)) return failed('unknown-version');
  if (version > visitVersion) return failed('newer');
  if (version < visitVersion && !(version in known)) return failed('unknown-version');
  const migrated = migrate(data, version, visitVersion, known);
  if (migrated === undefined) return failed('does-not-fit', `version ${version}`);
  const parsed = visitSchema.safeParse(migrated);
  return parsed.success ? succeeded(parsed.data) : failed('does-not-fit', placeOf(parsed.error.issues[0]));
}

/** Reads a chosen file. One that is too large is refused before it is read. */
export async function readVisitFile(file: Blob): Promise<FileResult> {
  if (file.size > limitValue('visit-file')) return failed('too-large');
  let bytes: ArrayBuffer;
  try {
    bytes = await file.arrayBuffer();
  } catch {
    return failed('unreadable');
  }
  try {
    return readVisitText(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return failed('damaged');
  }
}

export function byteLength(text: string): number {
  return new TextEncoder().encode(text).length;
}

interface Issue {
  path: PropertyKey[];
  keys?: string[];
}

/** The place where a record does not fit, such as `steps.bridge.form.plusU`. Cut to 120 characters: it may be hostile. */
function placeOf(issue: Issue | undefined): string {
  const path = [...(issue?.path ?? []), ...(issue?.keys ?? []).slice(0, 1)].map(String).join('.');
  return path === '' ? 'the top' : path.slice(0, 120);
}
