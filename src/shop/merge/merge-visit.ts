import { byRecord, type Content, fingerprint, keepsId, picturesOf, secondVersion, withPictures } from './content.ts';
import {
  countsHere,
  fitted,
  joinedCounts,
  joinedPictures,
  type KnownPictures,
  type PictureCounts,
} from './pictures.ts';
import { changedOn, compareVersions, joined, type Versions } from './versions.ts';

/** One state of a visit, as devices exchange it. Without a visit it is deleted. */
export interface Shared {
  id: string;
  versions: Versions;
  /**
   * The version in which the visit got its content, if a deletion has been outvoted since: a device that has seen this has seen
   * all that stands in it. Absent: `versions`.
   */
  contentVersions?: Versions;
  /** Absent if it never had a photograph, or comes from an edition that did not count. */
  pictures?: PictureCounts;
  visit: Content | undefined;
}

/** What this device knows of a visit that it has exchanged: the version, and its fingerprint; empty if it was deleted. */
export interface Known extends Pick<Shared, 'versions' | 'contentVersions'> {
  print: string;
  pictures?: KnownPictures;
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
  // With a deleted visit its photographs are gone, but nobody has taken them off it.
  const pictures = here === undefined ? known?.pictures : countsHere(device, picturesOf(here), known?.pictures);
  const counted = { ...(pictures && Object.keys(pictures).length > 0 && { pictures }), visit: here };
  if (changed) return { id, versions: changedOn(device, known?.versions ?? {}), ...counted };
  const { versions, contentVersions } = known;
  return { id, versions, ...(contentVersions && { contentVersions }), ...counted };
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
  const unreplaced = states.filter(
    (state, index) => !states.some((other, place) => replaces(other, state, place < index)),
  );
  const newest = unreplaced.filter((state) => !unreplaced.some((other) => hasSeen(other, state)));
  // Of what is left out too: a number of a version never goes back.
  const versions = unreplaced.reduce<Versions>((all, state) => joined(all, state.versions), {});
  const held = newest.filter(({ visit }) => visit !== undefined);
  const content = held.reduce<Versions>((all, state) => joined(all, contentVersionsOf(state)), {});
  const isOlder = held.length > 0 && compareVersions(content, versions) === 'before';
  const contents = alikeJoined(
    newest.flatMap(({ visit, pictures }) => (visit === undefined ? [] : [{ visit, pictures }])),
  );
  const [kept, ...others] = contents.sort((a, b) => (keepsId(a.visit, b.visit) ? -1 : 1));
  const first = kept?.visit;
  const counted = joinedCounts([...states.map(({ pictures = {} }) => pictures), kept?.pictures ?? {}]);
  const pictures = first === undefined ? counted : fitted(counted, picturesOf(first));
  return {
    state: {
      ...{ id: states[0].id, versions },
      ...(isOlder && { contentVersions: content }),
      ...(Object.keys(pictures).length > 0 && { pictures }),
      visit: first,
    },
    second: others.map(({ visit }) => secondVersion(visit)),
    keptAfterDeletion: first !== undefined && newest.some(({ visit }) => visit === undefined),
  };
}

interface CountedVisit {
  visit: Content;
  pictures?: PictureCounts | undefined;
}

/** Contents whose records are alike as one, with the photographs of all. */
function alikeJoined(contents: readonly CountedVisit[]): CountedVisit[] {
  return byRecord(contents).flatMap((alike) => {
    const [first, ...others] = alike;
    if (first === undefined || others.length === 0) return alike;
    const all = alike.map(({ visit, pictures = {} }) => ({
      counts: fitted(pictures, picturesOf(visit)),
      pictures: picturesOf(visit),
    }));
    const joinedOnes = joinedPictures(all);
    if (joinedOnes === undefined) return alike;
    return [{ visit: withPictures(first.visit, joinedOnes.pictures), pictures: joinedOnes.counts }];
  });
}

const contentVersionsOf = ({ versions, contentVersions = versions }: Shared) => contentVersions;

/**
 * Whether `other` makes `state` superfluous. The same version with another content does not: it comes from a device that
 * was set back to an older state. Of two that are alike the first is enough.
 */
function replaces(other: Shared, state: Shared, isBefore: boolean): boolean {
  const order = compareVersions(other.versions, state.versions);
  return order === 'after' || (order === 'same' && isBefore && printOf(other.visit) === printOf(state.visit));
}

/**
 * Whether `other` has seen all that stands in `state`, though not a deletion that was outvoted before. Only a later
 * content or a deletion counts, so that no two states can each be left out for the other.
 */
function hasSeen(other: Shared, state: Shared): boolean {
  if (state.visit === undefined || state.contentVersions === undefined) return false;
  const seen = other.visit === undefined ? other.versions : contentVersionsOf(other);
  return compareVersions(seen, state.contentVersions) === 'after';
}

/** A version that was kept beside a visit, before anybody has changed it: the same on every device. */
export function stateOfSecond(visit: Content): Shared {
  return { id: visit.id, versions: { [visit.id]: 1 }, visit };
}
