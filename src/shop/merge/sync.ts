import type { AxisRecord } from '../../axes/record/axis-schema.ts';
import { failed, type Problem } from '../../kernel/link/problem.ts';
import { type Content, type Picture, picturesOf, withPictures } from './content.ts';
import { type ChangedApart, type DeviceState, type Exchange, exchange, missingIn } from './exchange.ts';
import { exchangeAxes } from './exchange-axes.ts';
import type { Known, Shared } from './merge-visit.ts';
import { type TakenAway, takenAway } from './taken-away.ts';

/** A folder that all devices read and write, or a file chosen by hand. Throws what the browser throws. */
export interface Folder {
  /** Every file, with its text; `undefined` if it can't be read at the moment. */
  files(): Promise<{ name: string; text: string | undefined }[]>;
  /** Replaces the file or makes it: the whole text, or nothing. */
  write(name: string, text: string): Promise<void>;
}

/** The visits of this device. Each change is refused if the visit has changed since `read`. */
export interface Device {
  read(): Promise<DeviceState>;
  /** True if it is stored. `before`: the visit that it replaces. */
  store(visit: Content, before: Content | undefined): Promise<boolean>;
  /** True if it is deleted. */
  remove(before: Content): Promise<boolean>;
  /** The photographs of a visit that is stored here, with their pictures. */
  pictures(id: string): Promise<readonly Picture[]>;
  remember(known: ReadonlyMap<string, Known>): Promise<void>;
  axes(): Promise<readonly AxisRecord[]>;
  /** Unites these with what is stored. */
  uniteAxes(axes: readonly AxisRecord[]): Promise<void>;
}

/** How a file is read and written: see src/shop/file. */
export interface Format {
  read(
    text: string,
  ): { states: Shared[]; axes: AxisRecord[]; problems: { name: string; problem: Problem }[] } | Problem;
  write(state: Shared): string;
  writeAxis(axis: AxisRecord): string;
}

export interface SyncReport {
  stored: Content[];
  removed: Content[];
  written: number;
  storedAxes: number;
  writtenAxes: number;
  apart: ChangedApart[];
  keptAfterDeletion: string[];
  /** In the files, and gone since: it stays so. */
  takenAway: TakenAway;
  /** Files, or records in them, that can't be read: nothing of them was taken, and none was changed. */
  problems: { name: string; problem: Problem }[];
  /** Visits that were being changed meanwhile: they wait for the next exchange. */
  busy: number;
}

/**
 * One exchange with a folder: reads every file, merges by visit, stores here, then writes what the folder lacks. Files
 * that can't be read are never written over: a synchronising client may still be bringing them.
 */
export async function syncFolder(device: Device, folder: Folder, format: Format): Promise<SyncReport> {
  const files = await folder.files();
  const { theirs, theirAxes, problems, unreadable } = readAll(files, format);
  const here = await device.read();
  const result = exchange(here, theirs);
  const done = await applied(device, here, result);
  const states = new Map([...result.states].filter(([id]) => !done.busy.has(id)));
  const known = new Map([...result.known].filter(([id]) => !done.busy.has(id)));
  // Remembered before it is written: if this ends in between, the number of this version is not given to another one.
  await device.remember(known);
  const missing = missingIn(theirs, states);
  for (const state of missing) {
    const text = format.write(await withStoredPictures(device, state));
    await folder.write(nameFor(`visit-${state.id}`, here.device, unreadable), text);
  }
  const register = exchangeAxes(await device.axes(), theirAxes);
  await device.uniteAxes(register.store);
  for (const axis of register.write) {
    await folder.write(nameFor(`axis-${axis.id}`, here.device, unreadable), format.writeAxis(axis));
  }
  const { apart, keptAfterDeletion } = result;
  const axes = { storedAxes: register.store.length, writtenAxes: register.write.length };
  const reported = {
    ...axes,
    stored: done.stored,
    removed: done.removed,
    written: missing.length,
    busy: done.busy.size,
  };
  return { ...reported, apart, keptAfterDeletion, takenAway: takenAway(theirs, result.states), problems };
}

/** Everything that is written is stored here by now. */
export async function withStoredPictures(device: Pick<Device, 'pictures'>, state: Shared): Promise<Shared> {
  const { visit } = state;
  const wanted = new Set((visit === undefined ? [] : picturesOf(visit)).map(({ id }) => id));
  if (visit === undefined || wanted.size === 0) return state;
  const stored = (await device.pictures(visit.id)).filter(({ id }) => wanted.has(id));
  return {
    ...state,
    visit: withPictures(visit, [...stored, ...picturesOf(visit).filter(({ jpeg }) => jpeg !== undefined)]),
  };
}

function readAll(files: Awaited<ReturnType<Folder['files']>>, format: Format) {
  const theirs: Shared[] = [];
  const theirAxes: AxisRecord[] = [];
  const problems: SyncReport['problems'] = [];
  const unreadable = new Set<string>();
  for (const { name, text } of files) {
    const read = text === undefined ? failed('unreadable').problem : format.read(text);
    if ('states' in read) {
      theirs.push(...read.states);
      theirAxes.push(...read.axes);
      problems.push(...read.problems.map((one) => ({ ...one, name: `${name}, ${one.name}` })));
    } else {
      unreadable.add(name);
      problems.push({ name, problem: read });
    }
  }
  return { theirs, theirAxes, problems, unreadable };
}

async function applied(device: Device, here: DeviceState, { store, remove, apart }: Exchange) {
  const busy = new Set<string>();
  const stored: Content[] = [];
  const removed: Content[] = [];
  const put = async (visit: Content) => {
    if (await device.store(visit, here.visits.get(visit.id))) stored.push(visit);
    else busy.add(visit.id);
  };
  // The versions beside come first: a visit is replaced only once what stood in it is stored beside it.
  const isNew = ({ id }: Content) => !here.visits.has(id);
  for (const visit of store.filter(isNew)) await put(visit);
  for (const { id, second } of apart) if (busy.has(second)) busy.add(id);
  for (const visit of store) if (!isNew(visit) && !busy.has(visit.id)) await put(visit);
  for (const id of remove) {
    const before = here.visits.get(id);
    if (before === undefined) continue;
    if (await device.remove(before)) removed.push(before);
    else busy.add(id);
  }
  return { stored, removed, busy };
}

/** One file a record; a name of this device's own while the usual file can't be read. */
function nameFor(record: string, device: string, unreadable: ReadonlySet<string>): string {
  const usual = `${record}.json`;
  return unreadable.has(usual) ? `${record}-${device.slice(0, 8)}.json` : usual;
}
