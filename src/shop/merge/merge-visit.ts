import { alikeJoined, type Content, fingerprint, keepsId, secondVersion } from './content.ts';
import { changedOn, compareVersions, joined, type Versions } from './versions.ts';

/** One state of a visit, as devices exchange it. Without a visit it is deleted. */
export interface Shared {
  id: string;
  versions: Versions;
  visit: Content | undefined;
}

/** What this device knows of a visit that it has exchanged: the version, and its fingerprint; empty if it was deleted. */
export interface Known {
  versions: Versions;
  print: string;
}

/** Empty without a visit. */
export const printOf = (visit: Content | undefined): string => (visit === undefined ? '' : fingerprint(visit));

/**
 * The state of a visit on this device: a change, or a deletion, since the last exchange counts as one more change of this
 * device. Undefined if it was never here.
 */
export function stateHere(
  device: string,
  id: string,
  here: Content | undefined,
  known: Known | undefined,
): Shared | undefined {
  if (known === undefined && here === undefined) return undefined;
  const changed = known === undefined || known.print !== printOf(here);
  return { id, versions: changed ? changedOn(device, known?.versions ?? {}) : known.versions, visit: here };
}

/** The states of one visit as one. */
export interface Merged {
  state: Shared;
  /** Versions that were changed apart: each is kept as a visit of its own. */
  second: Content[];
  /** It was deleted on one device and changed on another without sight of that: it is kept. */
  keptAfterDeletion: boolean;
}

/**
 * All states of one visit as one. What others have seen and replaced is left out; of what was changed apart nothing is
 * lost. The order of the states, and repetition, makes no difference.
 */
export function mergeStates(states: readonly [Shared, ...Shared[]]): Merged {
  const newest = states.filter((state, index) => !states.some((other, place) => replaces(other, state, place < index)));
  const versions = newest.reduce<Versions>((all, state) => joined(all, state.versions), {});
  const contents = alikeJoined(newest.flatMap(({ visit }) => (visit === undefined ? [] : [visit])));
  const [first, ...others] = contents.sort((a, b) => (keepsId(a, b) ? -1 : 1));
  return {
    state: { id: states[0].id, versions, visit: first },
    second: others.map(secondVersion),
    keptAfterDeletion: first !== undefined && newest.some(({ visit }) => visit === undefined),
  };
}

/**
 * Whether `other` makes `state` superfluous. The same version with another content does not: it comes from a device that
 * was set back to an older state. Of two that are alike the first is enough.
 */
function replaces(other: Shared, state: Shared, isBefore: boolean): boolean {
  const order = compareVersions(other.versions, state.versions);
  return order === 'after' || (order === 'same' && isBefore && printOf(other.visit) === printOf(state.visit));
}

/** A version that was kept beside a visit, before anybody has changed it: the same on every device. */
export function stateOfSecond(visit: Content): Shared {
  return { id: visit.id, versions: { [visit.id]: 1 }, visit };
}
