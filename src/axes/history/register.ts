import type { AxisRecord } from '../record/axis-schema.ts';
import { namesOf, textIn } from '../record/change-axis.ts';
import { type AxisNames, idOfNames, isNamed, nameKey } from '../record/names.ts';
import type { VisitHead } from '../record/visit-digest.ts';

/** One axis with everything that belongs to it. */
export interface Axis {
  id: string;
  names: AxisNames;
  /** Absent while nothing but visits says that it exists. */
  record?: AxisRecord;
  /** Other spellings that a person has merged into it. */
  merged: Axis[];
  /** Those of merged spellings included, the newest first. */
  visits: VisitHead[];
}

export interface Register {
  /** The axis that was last visited first. */
  axes: Axis[];
  /** Visits without machine and axis. */
  unnamed: VisitHead[];
}

/** Puts every visit to its axis: by its `axisId`, else by name, by former names, and by what was merged. */
export function registerOf(records: readonly AxisRecord[], visits: readonly VisitHead[]): Register {
  const byId = new Map(records.map((record) => [record.id, record]));
  const claims = claimsOf(records, visits);
  const groups = new Map<string, Axis>();
  const group = (id: string, names: AxisNames): Axis => {
    const known = groups.get(id);
    if (known !== undefined) return known;
    const record = byId.get(id);
    const { machine, axis } = record ? namesOf(record) : names;
    const made: Axis = { id, names: { machine, axis }, merged: [], visits: [] };
    groups.set(id, record ? { ...made, record } : made);
    return groups.get(id) ?? made;
  };
  for (const record of records) if (textIn(record, 'removed') !== 'yes') group(record.id, namesOf(record));
  const unnamed: VisitHead[] = [];
  for (const visit of visits) {
    const id = visit.axisId ?? claims.get(nameKey(visit));
    if (id !== undefined || isNamed(visit)) group(id ?? idOfNames(visit), visit).visits.push(visit);
    else unnamed.push(visit);
  }
  return { axes: inOrder(merged(groups, byId, group)), unnamed };
}

/** The axis on the list that a name means: by its present name, a former one, or one that was merged into it. */
export function axisNamed({ axes }: Register, names: AxisNames): Axis | undefined {
  const key = nameKey(names);
  const isNow = (axis: Axis) => [axis, ...axis.merged].some((one) => nameKey(one.names) === key);
  const wasOnce = (axis: Axis) =>
    [axis, ...axis.merged].some(({ record }) => record?.names.some((former) => nameKey(former) === key) === true);
  return axes.find(isNow) ?? axes.find(wasOnce);
}

/** Which axis a name means: a present name before a former one, the older record before the younger. */
function claimsOf(records: readonly AxisRecord[], visits: readonly VisitHead[]): Map<string, string> {
  const claims = new Map<string, string>();
  const claim = (names: AxisNames, id: string) => {
    const key = nameKey(names);
    if (isNamed(names) && !claims.has(key)) claims.set(key, id);
  };
  const older = [...records].sort(
    (a, b) => Date.parse(a.createdAt) - Date.parse(b.createdAt) || (a.id < b.id ? -1 : 1),
  );
  for (const record of older) claim(namesOf(record), record.id);
  for (const record of older) for (const names of record.names) claim(names, record.id);
  // The record may be on another device: its visits know the id.
  for (const visit of visits) if (visit.axisId !== undefined) claim(visit, visit.axisId);
  return claims;
}

function merged(
  groups: Map<string, Axis>,
  records: ReadonlyMap<string, AxisRecord>,
  group: (id: string, names: AxisNames) => Axis,
): Axis[] {
  for (const axis of [...groups.values()]) {
    const root = rootOf(axis.id, records);
    if (root === axis.id) continue;
    const into = group(root, axis.names);
    into.merged.push(axis);
    into.visits.push(...axis.visits);
  }
  return [...groups.values()].filter(({ id }) => rootOf(id, records) === id);
}

/** Where a chain of merges ends. Two devices may have merged two axes into each other: then the lower id is the end. */
export function rootOf(id: string, records: ReadonlyMap<string, AxisRecord>): string {
  const seen: string[] = [];
  let at = id;
  while (!seen.includes(at)) {
    seen.push(at);
    const record = records.get(at);
    const into = record === undefined ? '' : textIn(record, 'mergedInto');
    if (into === '') return at;
    at = into;
  }
  return seen.slice(seen.indexOf(at)).sort()[0] ?? id;
}

function inOrder(axes: Axis[]): Axis[] {
  // Each time is read once: sorting compares it many times, and thousands of visits are usual.
  const times = new Map<VisitHead, number>();
  for (const { visits } of axes) for (const visit of visits) times.set(visit, Date.parse(visit.at));
  const timeOf = (visit: VisitHead) => times.get(visit) ?? 0;
  for (const axis of axes) axis.visits.sort((a, b) => timeOf(b) - timeOf(a) || (a.id < b.id ? 1 : -1));
  const last = ({ visits: [visit], record }: Axis) => (visit ? timeOf(visit) : Date.parse(record?.createdAt ?? ''));
  return axes.sort((a, b) => last(b) - last(a) || (a.id < b.id ? -1 : 1));
}

/** The axis that a visit belongs to. */
export function axisOfVisit({ axes }: Register, visit: { id: string }): Axis | undefined {
  return axes.find(({ visits }) => visits.some(({ id }) => id === visit.id));
}
