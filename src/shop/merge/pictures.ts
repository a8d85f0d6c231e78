import { limitValue } from '../../kernel/limits.ts';
import type { Picture } from './content.ts';

/** What was done to one photograph of a visit, on all devices. */
export interface PictureCount {
  /** Grows when it is attached, taken off or put back: there if odd. */
  turns: number;
  /** How often its caption was changed. */
  captions: number;
}

/** By the id of the photograph; those that were taken off stay, or another device would bring them back. */
export type PictureCounts = Readonly<Record<string, PictureCount>>;

/** What a device remembers of the last exchange. */
export type KnownPictures = Readonly<Record<string, PictureCount & { caption: string }>>;

const none: PictureCount = { turns: 0, captions: 0 };
const countOf = (counts: PictureCounts, id: string): PictureCount => new Map(Object.entries(counts)).get(id) ?? none;

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
export function countsHere(pictures: readonly Picture[], known: KnownPictures = {}): PictureCounts {
  const before = new Map(Object.entries(known));
  const typed = pictures.filter(({ id, caption }) => (before.get(id) ?? { caption }).caption !== caption);
  const changed = new Set(typed.map(({ id }) => id));
  const counts = Object.entries(known).map(([id, { turns, captions }]) => [
    id,
    { turns, captions: changed.has(id) ? captions + 1 : captions },
  ]);
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
  const ids = [...new Set(all.flatMap((counts) => Object.keys(counts)))].sort();
  const most = (id: string, which: keyof PictureCount) => Math.max(...all.map((counts) => countOf(counts, id)[which]));
  return Object.fromEntries(ids.map((id) => [id, { turns: most(id, 'turns'), captions: most(id, 'captions') }]));
}

/** The photographs of one visit as a device has them. */
export interface Counted {
  counts: PictureCounts;
  pictures: readonly Picture[];
}

/**
 * Photographs that were changed apart as one: each that nobody has taken off with its caption in sight, with its newest caption, or
 * with both captions of two people who did not see each other's. Undefined if both captions together are too long.
 */
export function joinedPictures(all: readonly Counted[]): Counted | undefined {
  const counts = joinedCounts(all.map((one) => one.counts));
  const pictures: Picture[] = [];
  const captions: Record<string, number> = {};
  const put: Record<string, number> = {};
  for (const [id, { turns, captions: changes }] of Object.entries(counts)) {
    const isTakenOff = turns % 2 === 0;
    if (isTakenOff && !isCaptionedUnseen(all, id, turns)) continue;
    if (isTakenOff) put[id] = turns + 1;
    const newest = all.flatMap((one) =>
      countOf(one.counts, id).captions === changes ? one.pictures.filter((picture) => picture.id === id) : [],
    );
    const [first] = [...newest].sort((a, b) => (a.changedAt < b.changedAt ? 1 : -1));
    if (first === undefined) continue;
    const texts = [...new Set(newest.flatMap(({ caption }) => caption.split(between)))].filter(Boolean).sort();
    const isOne = newest.every(({ caption }) => caption === first.caption);
    const caption = isOne ? first.caption : texts.join(between);
    if (caption.length > limitValue('record-text')) return undefined;
    pictures.push({ ...first, caption, ...jpegOf(all, id) });
    if (!isOne) captions[id] = changes + 1;
  }
  const counted = Object.entries(counts).map(([id, count]) => [
    id,
    { ...count, turns: put[id] ?? count.turns, captions: captions[id] ?? count.captions },
  ]);
  return { counts: Object.fromEntries(counted), pictures };
}

/** Whether a caption was typed that those who took the photograph off had not seen: then it stays. */
function isCaptionedUnseen(all: readonly Counted[], id: string, turns: number): boolean {
  const removers = all.map(({ counts }) => countOf(counts, id)).filter((count) => count.turns === turns);
  const seen = Math.max(...removers.map(({ captions }) => captions));
  return all.some(
    ({ counts, pictures }) => countOf(counts, id).captions > seen && pictures.some((one) => one.id === id),
  );
}

const between = ' / ';

/** A picture never changes, and one copy of it may be without its bytes. */
function jpegOf(all: readonly Counted[], id: string): Pick<Picture, 'jpeg'> {
  const jpeg = all.flatMap(({ pictures }) => pictures.flatMap((one) => (one.id === id && one.jpeg) || []))[0];
  return jpeg === undefined ? {} : { jpeg };
}
