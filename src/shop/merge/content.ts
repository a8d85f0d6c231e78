import { isObject } from '../../kernel/link/parse-json.ts';
import { mergedPhotographs, type Photograph } from '../../visit/record/photograph.ts';
import { asNewStretch } from '../../visit/record/stretch.ts';
import type { VisitRecord } from '../../visit/record/visit-schema.ts';
import { sha256 } from './sha256.ts';

/** A photograph; of one that is stored on this device the picture itself is fetched only when it is written. */
export type Picture = Omit<Photograph, 'jpeg'> & { jpeg?: Photograph['jpeg'] };

/** A visit with its photographs. */
export type Content = VisitRecord & { photographs?: readonly Picture[] };

/** JSON text that does not depend on the order of the keys. */
export function canonical(value: unknown): string {
  return JSON.stringify(value, (_key, part: unknown) =>
    isObject(part) ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1))) : part,
  );
}

/**
 * The same for the same record on any device, without its photographs: 64 hexadecimal digits. The revision belongs to one
 * device, and so does the present stretch of work: a visit that comes from another device begins a new one.
 */
function recordPrint({ revision: _here, stretch: _now, photographs: _pictures, ...record }: Content): string {
  return sha256(canonical(record));
}

/** Which photographs there are, with their captions; a picture itself never changes. */
function picturesPrint(pictures: readonly Picture[]): string {
  const heads = pictures.map(({ id, step, at, changedAt, caption }) => ({ id, step, at, changedAt, caption }));
  return sha256(canonical(heads.sort((a, b) => (a.id < b.id ? -1 : 1))));
}

const prints = new WeakMap<Content, string>();

/** The same for the same content on any device; made once for each object. */
export function fingerprint(content: Content): string {
  const { photographs = [] } = content;
  const record = prints.get(content) ?? recordPrint(content);
  prints.set(content, record);
  return photographs.length === 0 ? record : `${record}-${picturesPrint(photographs)}`;
}

/** In groups that differ in nothing but their photographs; one alone costs no fingerprint. */
export function byRecord<T extends { visit: Content }>(all: readonly T[]): T[][] {
  const groups = new Map<string, T[]>();
  for (const one of all) {
    const { photographs: _pictures, ...record } = one.visit;
    const print = all.length < 2 ? '' : recordPrint(record);
    groups.set(print, [...(groups.get(print) ?? []), one]);
  }
  return [...groups.values()];
}

/** Whether of these photographs one got another caption, or was taken off, in `now`; one that is new there is no change. */
export function picturesChanged(before: readonly Picture[], now: readonly Picture[]): boolean {
  const captions = new Map(now.map(({ id, caption }) => [id, caption]));
  return before.some(({ id, caption }) => captions.get(id) !== caption);
}

export const picturesOf = ({ photographs = [] }: Content): readonly Picture[] => photographs;

export function withPictures({ photographs: _old, ...record }: Content, pictures: readonly Picture[]): Content {
  return pictures.length === 0 ? record : { ...record, photographs: mergedPhotographs(pictures as Photograph[], []) };
}

/**
 * Which of two versions that were changed apart keeps the id: the one with more answers, then the later change, then by
 * content. It only has to be the same on every device: the other one is kept beside it.
 */
export function keepsId(a: Content, b: Content): boolean {
  if (a.seq !== b.seq) return a.seq > b.seq;
  const later = Date.parse(a.changedAt) - Date.parse(b.changedAt);
  return later === 0 ? fingerprint(a) >= fingerprint(b) : later > 0;
}

/** The id of the version that is kept beside the visit: the same on every device, so that there is only one of it. */
export function secondId(visit: Content): string {
  return sha256(`${visit.id} ${fingerprint(visit)}`).slice(0, 32);
}

/** The version that is kept beside the visit. Neither knows what was done in the other, so it begins a new stretch. */
export function secondVersion(visit: Content): Content {
  return { ...begunAgain(visit), id: secondId(visit), revision: 0, secondVersionOf: visit.id };
}

/** A visit from another device, as it is kept here: nothing is known here of what was proved safe there. */
export function fromElsewhere(visit: Content): Content {
  return begunAgain(visit);
}

const begunAgain = (visit: Content): Content => ({ ...visit, ...asNewStretch(visit) });
