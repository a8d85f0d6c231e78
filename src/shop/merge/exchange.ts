import { type Content, fromElsewhere, picturesOf } from './content.ts';
import { type Known, mergeStates, printOf, type Shared, stateHere, stateOfSecond } from './merge-visit.ts';
import { knownPictures } from './pictures.ts';
import { compareVersions } from './versions.ts';

/** What this device has, before an exchange. */
export interface DeviceState {
  /** Random, made once on each device. */
  device: string;
  visits: ReadonlyMap<string, Content>;
  /** Ids whose record here can't be read: it may be of a newer edition, so it is left alone. */
  unreadable: ReadonlySet<string>;
  known: ReadonlyMap<string, Known>;
}

/** A visit that was changed on two devices: both versions are kept. */
export interface ChangedApart {
  id: string;
  second: string;
}

/** What an exchange changes. */
export interface Exchange {
  /** The state of every visit after it: what the others are to know. */
  states: Map<string, Shared>;
  /** Visits to store here, new ones and replaced ones. */
  store: Content[];
  /** Visits to delete here: they were deleted on another device, and not changed here since. */
  remove: string[];
  known: Map<string, Known>;
  apart: ChangedApart[];
  /** Deleted on one device, changed on another: kept. */
  keptAfterDeletion: string[];
}

/**
 * What this device and `theirs`, states from files in any order, make together. Pure: it stores nothing. Repeating an
 * exchange changes nothing more, and the order in which devices exchange makes no difference in the end.
 */
export function exchange(here: DeviceState, theirs: readonly Shared[]): Exchange {
  const groups = new Map<string, [Shared, ...Shared[]]>();
  const add = (state: Shared) => {
    const group = groups.get(state.id);
    if (group === undefined) groups.set(state.id, [state]);
    else group.push(state);
  };
  for (const id of new Set([...here.visits.keys(), ...here.known.keys()])) {
    const state = stateHere(here.device, id, here.visits.get(id), here.known.get(id));
    if (state !== undefined) add(state);
  }
  for (const state of theirs) add(state);
  const states = new Map<string, Shared>();
  const apart: ChangedApart[] = [];
  const kept: string[] = [];
  const waiting = [...groups.keys()].filter((id) => !here.unreadable.has(id));
  for (let id = waiting.shift(); id !== undefined; id = waiting.shift()) {
    const group = groups.get(id);
    if (group === undefined) continue;
    const { state, second, keptAfterDeletion } = mergeStates(group);
    states.set(id, state);
    if (keptAfterDeletion) kept.push(id);
    for (const visit of second) {
      apart.push({ id, second: visit.id });
      add(stateOfSecond(visit));
      waiting.push(visit.id);
    }
  }
  return { states, ...changesHere(here, states), apart, keptAfterDeletion: kept };
}

function changesHere(here: DeviceState, states: ReadonlyMap<string, Shared>) {
  const store: Content[] = [];
  const remove: string[] = [];
  const known = new Map<string, Known>();
  for (const { id, versions, contentVersions, pictures, visit } of states.values()) {
    const mine = here.visits.get(id);
    known.set(id, {
      ...{ versions, print: printOf(visit) },
      ...(contentVersions && { contentVersions }),
      ...(pictures && { pictures: knownPictures(pictures, visit ? picturesOf(visit) : []) }),
    });
    if (printOf(mine) === printOf(visit)) continue;
    if (visit === undefined) remove.push(id);
    else store.push(fromElsewhere(visit));
  }
  return { store, remove, known };
}

/** The states that a folder lacks: those of which none of its files has the newest version. */
export function missingIn(files: readonly Shared[], states: ReadonlyMap<string, Shared>): Shared[] {
  return [...states.values()].filter(
    (state) =>
      !files.some(
        (file) =>
          file.id === state.id &&
          compareVersions(file.versions, state.versions) === 'same' &&
          printOf(file.visit) === printOf(state.visit),
      ),
  );
}
