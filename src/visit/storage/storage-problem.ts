import { limitValue } from '../../kernel/limits.ts';
import { type Problem, refusal } from '../../kernel/link/problem.ts';

/** What can go wrong with the browser's storage. */
export type StorageProblemKind =
  | 'no-storage'
  | 'full'
  | 'busy'
  | 'newer-site'
  | 'failed'
  | 'not-found'
  | 'visit-too-large'
  | 'not-savable'
  | 'conflict'
  | 'deleted-elsewhere'
  | 'already-here';

/** In every case earlier saves stay saved, and the open visit stays in the window. */
const messages: Record<StorageProblemKind, (where: string) => string> = {
  'no-storage': () =>
    'This browser keeps nothing for this site (a private window, or storage is switched off). Your visit is only in this window: export it as a file before you close it.',
  full: () =>
    'The storage of this device is full, so the last change is not saved. What was saved before is still there. Export this visit as a file, then make room: delete old visits or other files.',
  busy: () =>
    'Another tab holds the storage with an older edition of this site. Close the other tabs of this site, then save again. Until then your visit is only in this window.',
  'newer-site': () =>
    'This tab is of an older edition than what is stored. Export this visit as a file, then reload the page.',
  failed: () =>
    'The browser could not save. What was saved before is still there. Try again; if it goes on, export this visit as a file.',
  'not-found': () => 'This visit is not on this device. It was deleted, or it is on another device.',
  'visit-too-large': () =>
    `This visit has grown larger than ${limitValue('record-file') / 1_000_000} MB and can’t be saved. Shorten the notes. What was saved before is still there.`,
  'not-savable': (where) =>
    `The entry at ${where} can’t be saved as it stands. Shorten or mend it; all else stays in this window, and what was saved before is still there.`,
  conflict: () =>
    'This visit was changed in another tab since you opened it here. Nothing is lost: keep both, or look at the other one first.',
  'deleted-elsewhere': () =>
    'This visit was deleted in another tab. What you have here is not lost: put it back, or leave it deleted.',
  'already-here': () => 'This visit is on this device already. Keep both, or replace the one that is here.',
};

export const storageRefused = refusal(messages);

/** The database's layout must be changed, but an older tab has it open. */
export class HeldByOtherTab extends Error {
  override name = 'HeldByOtherTab';
}

/** This browser or window has no storage. */
export class NoStorage extends Error {
  override name = 'NoStorage';
}

/** By the name of the exception: the messages differ between browsers, the names do not. */
const kinds: Record<string, StorageProblemKind> = {
  HeldByOtherTab: 'busy',
  NoStorage: 'no-storage',
  SecurityError: 'no-storage',
  InvalidStateError: 'no-storage',
  NotAllowedError: 'no-storage',
  NotSupportedError: 'no-storage',
  QuotaExceededError: 'full',
  NS_ERROR_DOM_QUOTA_REACHED: 'full',
  VersionError: 'newer-site',
};

/** What a refused request means to the person. An unknown error is a plain failure: nothing was changed. */
export function storageProblem(error: unknown): Problem<StorageProblemKind> {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  const kind = Object.keys(kinds).includes(name) ? (kinds[name] ?? 'failed') : 'failed';
  return storageRefused(kind).problem;
}
