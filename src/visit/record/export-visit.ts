import { type Photograph, writtenPhotograph } from './photograph.ts';
import { byteLength } from './read-visit.ts';
import type { VisitRecord } from './visit-schema.ts';

export interface ExportedFile {
  name: string;
  text: string;
}

/** The visit with its photographs as a JSON file. Needs no storage, so that a browser that can't save can still export. */
export function exportVisit(visit: VisitRecord, photographs: readonly Photograph[] = []): ExportedFile {
  return { name: fileName(visit), text: `${JSON.stringify(withPhotographs(visit, photographs), null, 2)}\n` };
}

/** The content of the file. Without photographs it is the record alone, which older editions can read too. */
export function withPhotographs<T extends object>(record: T, photographs: readonly Photograph[]): T {
  return photographs.length === 0 ? record : { ...record, photographs: photographs.map(writtenPhotograph) };
}

/** `visit-line-2-Lift-2026-03-02.json`: letters and digits of any script, and nothing that a file system refuses. */
export function fileName({ machine, axis, createdAt }: VisitRecord): string {
  const parts = [machine, axis].map(safe).filter((part) => part !== '');
  return `${['visit', ...parts, createdAt.slice(0, 10)].join('-')}.json`;
}

/** Limits for one part: the whole name stays below the 255 bytes that file systems allow, in any script. */
const partLimits = { characters: 40, bytes: 100 };

function safe(text: string): string {
  const joined = text.normalize('NFC').replaceAll(/[^\p{L}\p{N}]+/gu, '-');
  const characters = [...joined].slice(0, partLimits.characters);
  while (byteLength(characters.join('')) > partLimits.bytes) characters.pop();
  return characters.join('').replaceAll(/^-+|-+$/g, '');
}
