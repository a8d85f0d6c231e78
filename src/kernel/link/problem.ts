import { limitValue } from '../limits.ts';

/** What can be wrong with a text that should be a record of this handbook, or a link. */
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

/** What is wrong, and what to do. `where` names the place in the file that does not fit. */
export interface Problem<Kind extends string = string> {
  kind: Kind;
  message: string;
  where?: string;
}

export interface Refused<Kind extends string> {
  ok: false;
  problem: Problem<Kind>;
}

export type Result<Value, Trouble extends Problem = Problem> =
  | { ok: true; value: Value }
  | { ok: false; problem: Trouble };

const messages: Record<ReadProblemKind, (where: string) => string> = {
  'too-large': () =>
    `This is larger than a visit can be: ${limitValue('visit-file') / 1_000_000} MB as a file, ${limitValue('share-link') / 1000} kB as a link. Check that you chose the right one.`,
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
};

/** The refusals of one set of messages. `where` is the place that a message names. */
export function refusal<Kind extends string>(messages: Record<Kind, (where: string) => string>) {
  return <One extends Kind>(kind: One, where?: string): Refused<One> => {
    const message = messages[kind](where ?? 'an unknown place');
    return { ok: false, problem: where === undefined ? { kind, message } : { kind, message, where } };
  };
}

export const failed = refusal(messages);

export function succeeded<Value>(value: Value): { ok: true; value: Value } {
  return { ok: true, value };
}
