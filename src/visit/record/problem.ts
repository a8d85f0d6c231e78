import { limitValue } from '../../kernel/limits.ts';

/** What can go wrong with a text that should be a visit, or a share. */
export type ReadProblemKind =
  | 'too-large'
  | 'unreadable'
  | 'damaged'
  | 'foreign'
  | 'unknown-version'
  | 'newer'
  | 'does-not-fit'
  | 'unknown-calculator'
  | 'too-long-to-share'
  | 'too-long-for-code';

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

export type ProblemKind = ReadProblemKind | StorageProblemKind;

/** What is wrong, and what to do. `where` names the place in the file that does not fit. */
export interface Problem<Kind extends ProblemKind = ProblemKind> {
  kind: Kind;
  message: string;
  where?: string;
}

export type Result<Value, Trouble extends Problem = Problem> =
  | { ok: true; value: Value }
  | { ok: false; problem: Trouble };

const megabytes = () => `${limitValue('record-file') / 1_000_000} MB`;

/** What was saved before stays saved in every case; the visit in hand stays in the window. */
const messages: Record<ProblemKind, (where: string) => string> = {
  'too-large': () =>
    `This is larger than a visit can be (${megabytes()}). Check that you chose the right file or link.`,
  unreadable: () => 'The file can’t be read. Copy it to this device first, then choose it again.',
  damaged: () => 'This is damaged or was cut off, so nothing of it was taken. Ask for it again, best as a file.',
  foreign: () => 'This is not a visit of this handbook. Choose a file that was exported here.',
  'unknown-version': () => 'The version number in this file is none that ever existed. Export the visit again.',
  newer: () => 'This was made with a newer edition of the handbook. Reload the page to get the newest, then try again.',
  'does-not-fit': (where) =>
    `This visit does not fit its format at ${where}, so nothing of it was taken. Mend that place, or export it again.`,
  'unknown-calculator': () =>
    'The link fills a calculator that is not in this edition. Reload the page, then try again.',
  'too-long-to-share': () => 'There is too much in this for a link. Send the file instead.',
  'too-long-for-code': () => 'There is too much in this for a QR code. Send the link or the file instead.',
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
    `This visit has grown larger than ${megabytes()} and can’t be saved. Shorten the notes. What was saved before is still there.`,
  'not-savable': (where) =>
    `The entry at ${where} can’t be saved as it stands. Shorten or mend it; all else stays in this window, and what was saved before is still there.`,
  conflict: () =>
    'This visit was changed in another tab since you opened it here. Nothing is lost: keep both, or look at the other one first.',
  'deleted-elsewhere': () =>
    'This visit was deleted in another tab. What you have here is not lost: put it back, or leave it deleted.',
  'already-here': () => 'This visit is on this device already. Keep both, or replace the one that is here.',
};

export function problem<Kind extends ProblemKind>(kind: Kind, where?: string): Problem<Kind> {
  const message = messages[kind](where ?? 'an unknown place');
  return where === undefined ? { kind, message } : { kind, message, where };
}

export function failed<Kind extends ProblemKind>(kind: Kind, where?: string): { ok: false; problem: Problem<Kind> } {
  return { ok: false, problem: problem(kind, where) };
}

export function succeeded<Value>(value: Value): { ok: true; value: Value } {
  return { ok: true, value };
}
