import { byteLength } from './read-visit.ts';
import type { VisitRecord } from './visit-schema.ts';

export interface ExportedFile {
  name: string;
  text: string;
}

/** The visit as a JSON file. Needs no storage, so that a visit can be taken out of a browser that can't save. */
export function exportVisit(visit: VisitRecord): ExportedFile {
  return { name: fileName(visit), text: `${JSON.stringify(visit, null, 2)}\n` };
}

/** `visit-line-2-Lift-2026-03-02.json`: letters and figures of any script, and nothing that a file system refuses. */
export function fileName({ machine, axis, createdAt }: VisitRecord): string {
  const parts = [machine, axis].map(safe).filter((part) => part !== '');
  return `${['visit', ...parts, createdAt.slice(0, 10)].join('-')}.json`;
}

/** Short enough that the whole name stays below the 255 bytes that file systems take, in any script. */
const most = { characters: 40, bytes: 100 };

function safe(text: string): string {
  const joined = text.normalize('NFC').replaceAll(/[^\p{L}\p{N}]+/gu, '-');
  const characters = [...joined].slice(0, most.characters);
  while (byteLength(characters.join('')) > most.bytes) characters.pop();
  return characters.join('').replaceAll(/^-+|-+$/g, '');
}
