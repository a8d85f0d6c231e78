import { isObject } from '../../kernel/link/parse-json.ts';
import { asNewStretch } from '../../visit/record/stretch.ts';
import type { VisitRecord } from '../../visit/record/visit-schema.ts';
import { sha256 } from './sha256.ts';

/** JSON text that does not depend on the order of the keys. */
export function canonical(value: unknown): string {
  return JSON.stringify(value, (_key, part: unknown) =>
    isObject(part) ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1))) : part,
  );
}

/**
 * The same for the same content on any device: 64 hexadecimal digits. The revision belongs to one device, and so does the
 * present stretch of work: a visit that comes from another device begins a new one.
 */
export function fingerprint({ revision: _here, stretch: _now, ...content }: VisitRecord): string {
  return sha256(canonical(content));
}

/**
 * Which of two versions that were changed apart keeps the id: the one with more answers, then the later change, then by
 * content. It only has to be the same on every device: the other one is kept beside it.
 */
export function keepsId(a: VisitRecord, b: VisitRecord): boolean {
  if (a.seq !== b.seq) return a.seq > b.seq;
  const later = Date.parse(a.changedAt) - Date.parse(b.changedAt);
  return later === 0 ? fingerprint(a) >= fingerprint(b) : later > 0;
}

/** The id of the version that is kept beside the visit: the same on every device, so that there is only one of it. */
export function secondId(visit: VisitRecord): string {
  return sha256(`${visit.id} ${fingerprint(visit)}`).slice(0, 32);
}

/** The version that is kept beside the visit. Neither knows what was done in the other, so it begins a new stretch. */
export function secondVersion(visit: VisitRecord): VisitRecord {
  return { ...asNewStretch(visit), id: secondId(visit), revision: 0, secondVersionOf: visit.id };
}

/** A visit from another device, as it is kept here: nothing is known here of what was proved safe there. */
export function fromElsewhere(visit: VisitRecord): VisitRecord {
  return asNewStretch(visit);
}
