import { limitValue } from '../../kernel/limits.ts';
import type { Picture } from './content.ts';
import { changedOn, compareVersions, joined, type Versions } from './versions.ts';

/** What was done to one photograph of a visit, on all devices. */
export interface PictureCount {
  /** Grows when it is attached, taken off or put back: there if odd. */
  turns: number;
  /** How often each device has changed its caption. */
  captions: Versions;
}

/** By the id of the photograph; those that were taken off stay, or another device would bring them back. */
export type PictureCounts = Readonly<Record<string, PictureCount>>;

/** What a device remembers of the last exchange. */
export type KnownPictures = Readonly<Record<string, PictureCount & { caption: string }>>;

const none: PictureCount = { turns: 0, captions: {} };
const countOf = (counts: PictureCounts, id: string): PictureCount => new Map(Object.entries(counts)).get(id) ?? none;
const idsOf = (all: readonly PictureCounts[]) => [...new Set(all.flatMap((counts) => Object.keys(counts)))].sort();

/** The counts of these photographs: one more turn for each that is there, or gone, against them. */
export function fitted(counts: PictureCounts, pictures: readonly Picture[]): PictureCounts {
  const there = new Set(pictures.map(({ id }) => id));
  const ids = [...new Set([...Object.keys(counts), ...there])].sort();
  return Object.fromEntries(
    ids.map((id) => {
      const { turns, captions } = countOf(counts, id);
      const fits = (turns % 2 === 1) === there.has(id);
      return [id, { turns: fits ? turns : turns + 1, captions }];
    }),
  );
}

/** The counts of the photographs on this device, whose captions may have been changed since the last exchange. */
export function countsHere(device: string, pictures: readonly Picture[], known: KnownPictures = {}): PictureCounts {
  const texts = new Map(pictures.map(({ id, caption }) => [id, caption]));
  const counts = Object.entries(known).map(([id, { turns, captions, caption }]) => {
    const isSame = (texts.get(id) ?? caption) === caption;
    return [id, { turns, captions: isSame ? captions : changedOn(device, captions) }];
  });
  return fitted(Object.fromEntries(counts), pictures);
}

export function knownPictures(counts: PictureCounts, pictures: readonly Picture[]): KnownPictures {
  const captions = new Map(pictures.map(({ id, caption }) => [id, caption]));
  return Object.fromEntries(
    Object.entries(counts).map(([id, count]) => [id, { ...count, caption: captions.get(id) ?? '' }]),
  );
}

/** All that any of these has counted. */
export function joinedCounts(all: readonly PictureCounts[]): PictureCounts {
  return Object.fromEntries(
    idsOf(all).map((id) => {
      const counts = all.map((one) => countOf(one, id));
      const turns = Math.max(...counts.map((count) => count.turns));
      return [id, { turns, captions: counts.reduce<Versions>((both, { captions }) => joined(both, captions), {}) }];
    }),
  );
}

/** The photographs of one visit as a device has them. */
export interface Counted {
  counts: PictureCounts;
  pictures: readonly Picture[];
}

/**
 * Photographs that were changed apart as one: each that nobody has taken off with its caption in sight, with its newest
 * caption, or with the captions of all who did not see each other's. Undefined if these are too long for one field.
 */
export function joinedPictures(all: readonly Counted[]): Counted | undefined {
  const counts = joinedCounts(all.map((one) => one.counts));
  const pictures = idsOf([counts]).flatMap((id) => {
    const held = all.flatMap((one) =>
      one.pictures.flatMap((picture) => (picture.id === id ? [{ picture, count: countOf(one.counts, id) }] : [])),
    );
    const { turns } = countOf(counts, id);
    const stays = turns % 2 === 1 || captionedUnseen(held, all, id, turns);
    return stays ? withCaptions(held) : [];
  });
  if (pictures.some(({ caption }) => caption.length > limitValue('record-text'))) return undefined;
  return { counts: fitted(counts, pictures), pictures };
}

interface Held {
  picture: Picture;
  count: PictureCount;
}

/** Whether a caption was typed that those who took the photograph off had not seen: then it stays. */
function captionedUnseen(held: readonly Held[], all: readonly Counted[], id: string, turns: number): boolean {
  const removers = all.map(({ counts }) => countOf(counts, id)).filter((count) => count.turns === turns);
  const seen = removers.reduce<Versions>((both, { captions }) => joined(both, captions), {});
  return held.some(({ count }) => ['after', 'apart'].includes(compareVersions(count.captions, seen)));
}

const between = ' / ';

/** One photograph as several devices have it. A picture never changes, and one copy of it may be without its bytes. */
function withCaptions(held: readonly Held[]): Picture[] {
  const newest = held
    .filter(({ count }) => !held.some((other) => compareVersions(other.count.captions, count.captions) === 'after'))
    .map(({ picture }) => picture)
    .sort((a, b) => (a.changedAt < b.changedAt ? 1 : -1));
  const [first] = newest;
  if (first === undefined) return [];
  const isOne = newest.every(({ caption }) => caption === first.caption);
  const texts = [...new Set(newest.flatMap(({ caption }) => caption.split(between)))].filter(Boolean).sort();
  const jpeg = held.map(({ picture }) => picture.jpeg).find((bytes) => bytes !== undefined);
  return [{ ...first, caption: isOne ? first.caption : texts.join(between), ...(jpeg && { jpeg }) }];
}
