import * as z from 'zod/mini';
import { type AxisRecord, axisFormat } from '../../axes/record/axis-schema.ts';
import { readAxis } from '../../axes/record/read-axis.ts';
import { isObject, type JsonObject, parseJson } from '../../kernel/link/parse-json.ts';
import { failed, type Problem, type ReadProblemKind, type Result, succeeded } from '../../kernel/link/problem.ts';
import { type Photograph, writtenPhotograph } from '../../visit/record/photograph.ts';
import { readVisit, readVisitText } from '../../visit/record/read-visit.ts';
import { visitFormat } from '../../visit/record/visit-schema.ts';
import { type Content, fingerprint, picturesOf, withPictures } from '../merge/content.ts';
import type { Shared } from '../merge/merge-visit.ts';
import { sha256 } from '../merge/sha256.ts';
import { picturesSchema, recordFormat, shopFormat, shopVersion, versionsSchema } from './shop-schema.ts';

/** What a file of the shop holds: states of visits, axes, and what in it can't be read. */
export interface ShopContent {
  states: Shared[];
  axes: AxisRecord[];
  problems: { id: string; problem: Problem }[];
}

/** One state as a file of the shared folder. `now`: ISO time with offset. */
export function writeState(state: Shared, now: string): string {
  return `${JSON.stringify(writtenState(state, now), null, 1)}\n`;
}

/** One axis as a file of the shared folder. */
export function writeAxis(axis: AxisRecord): string {
  return `${JSON.stringify(writtenAxis(axis), null, 1)}\n`;
}

const writtenAxis = (axis: AxisRecord): JsonObject => ({
  ...{ format: recordFormat, version: shopVersion, id: axis.id },
  ...{ kind: 'axis', axis },
});

function writtenState({ id, versions, contentVersions, pictures, visit }: Shared, now: string): JsonObject {
  const head = { format: recordFormat, version: shopVersion, id, versions, ...(pictures && { pictures }) };
  if (visit === undefined) return { ...head, kind: 'deleted', deletedAt: now };
  const { photographs: _pictures, ...record } = visit;
  const whole = picturesOf(visit).filter((one): one is Photograph => one.jpeg !== undefined);
  return {
    ...head,
    kind: 'visit',
    ...(contentVersions && { contentVersions }),
    visit: record,
    ...(whole.length > 0 && { photographs: whole.map(writtenPhotograph) }),
  };
}

/** All states and axes in one file. */
export function writeShop(states: readonly Shared[], axes: readonly AxisRecord[], now: string): string {
  const records = [...states.map((state) => writtenState(state, now)), ...axes.map(writtenAxis)];
  return `${JSON.stringify({ format: shopFormat, version: shopVersion, writtenAt: now, records }, null, 1)}\n`;
}

/**
 * The content of a file: of the shared folder, of a whole shop, or of one visit that was exported. Never throws: a text
 * that is damaged or foreign gives a problem, and one visit that does not fit costs no other.
 */
export function readShopText(text: string): Result<ShopContent, Problem<ReadProblemKind>> {
  const json = parseJson(text.replace(/^\uFEFF/, ''));
  if (!json.ok) return json;
  const data = json.value;
  if (!isObject(data)) return failed('foreign');
  if (data.format === visitFormat) return plainVisit(data);
  if (data.format === axisFormat) return plainAxis(data);
  if (data.format !== shopFormat && data.format !== recordFormat) return failed('foreign');
  if (typeof data.version !== 'number' || !Number.isInteger(data.version)) return failed('unknown-version');
  if (data.version > shopVersion) return failed('newer');
  if (data.version < shopVersion) return failed('unknown-version');
  if (data.format === recordFormat) {
    const content: ShopContent = { states: [], axes: [], problems: [] };
    const problem = readInto(content, data);
    return problem === undefined ? succeeded(content) : { ok: false, problem };
  }
  if (!Array.isArray(data.records)) return failed('does-not-fit', 'records');
  const content: ShopContent = { states: [], axes: [], problems: [] };
  for (const [index, record] of (data.records as unknown[]).entries()) {
    const problem = readInto(content, record);
    if (problem !== undefined) content.problems.push({ id: idOf(record) ?? `record ${index + 1}`, problem });
  }
  return succeeded(content);
}

/** A visit that was exported by itself has no version: it counts as one more device, once for each content. */
function plainVisit(data: JsonObject): Result<ShopContent, Problem<ReadProblemKind>> {
  const read = contentOf(data);
  if (!read.ok) return read;
  const visit = read.value;
  return succeeded({
    states: [{ id: visit.id, versions: { [`file-${sha256(fingerprint(visit)).slice(0, 24)}`]: 1 }, visit }],
    axes: [],
    problems: [],
  });
}

function plainAxis(data: JsonObject): Result<ShopContent, Problem<ReadProblemKind>> {
  const read = readAxis(data);
  return read.ok ? succeeded({ states: [], axes: [read.value], problems: [] }) : read;
}

/** Adds a record to the content; the problem if it can't be read. */
function readInto(content: ShopContent, data: unknown): Problem<ReadProblemKind> | undefined {
  if (isObject(data) && data.format === recordFormat && data.kind === 'axis') {
    const axis = readAxis(data.axis);
    if (axis.ok && axis.value.id !== data.id) return failed('does-not-fit', 'axis.id').problem;
    if (axis.ok) content.axes.push(axis.value);
    return axis.ok ? undefined : axis.problem;
  }
  const state = readState(data);
  if (state.ok) content.states.push(state.value);
  return state.ok ? undefined : state.problem;
}

function readState(data: unknown): Result<Shared, Problem<ReadProblemKind>> {
  if (!isObject(data) || data.format !== recordFormat) return failed('foreign');
  const id = idOf(data);
  if (id === undefined) return failed('does-not-fit', 'id');
  const versions = versionsSchema.safeParse(data.versions);
  if (!versions.success) return failed('does-not-fit', 'versions');
  const pictures = z.safeParse(z.optional(picturesSchema), data.pictures);
  if (!pictures.success) return failed('does-not-fit', 'pictures');
  const state = { id, versions: versions.data, ...(pictures.data && { pictures: pictures.data }) };
  if (data.kind === 'deleted') return succeeded({ ...state, visit: undefined });
  if (data.kind !== 'visit') return failed('does-not-fit', 'kind');
  if (!isObject(data.visit)) return failed('does-not-fit', 'visit');
  const { photographs } = data;
  const visit = contentOf(photographs === undefined ? data.visit : { ...data.visit, photographs });
  if (!visit.ok) return visit;
  if (visit.value.id !== id) return failed('does-not-fit', 'visit.id');
  if (data.contentVersions === undefined) return succeeded({ ...state, visit: visit.value });
  const content = versionsSchema.safeParse(data.contentVersions);
  if (!content.success) return failed('does-not-fit', 'contentVersions');
  return succeeded({ ...state, contentVersions: content.data, visit: visit.value });
}

/** A visit with its photographs, as the file of a visit holds them. */
function contentOf(data: JsonObject): Result<Content, Problem<ReadProblemKind>> {
  if (data.photographs === undefined) return readVisit(data);
  const read = readVisitText(JSON.stringify(data));
  return read.ok ? succeeded(withPictures(read.value.visit, read.value.photographs)) : read;
}

function idOf(data: unknown): string | undefined {
  return isObject(data) && typeof data.id === 'string' && /^[A-Za-z0-9_-]{8,64}$/.test(data.id) ? data.id : undefined;
}
