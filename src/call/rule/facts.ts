import type { Symptom } from '../../kernel/vocabulary.ts';

/** What was done or happened before the first trip, as the caller says. */
export type Before =
  | 'motor-changed'
  | 'drive-changed'
  | 'cable-changed'
  | 'parameters-changed'
  | 'load-changed'
  | 'water'
  | 'standstill'
  | 'jam'
  | 'power-cut'
  | 'new-neighbour';

/** What was seen from outside, or is in a photograph. */
export type Seen = 'drive-burnt' | 'drive-dirty' | 'motor-burnt' | 'motor-wet' | 'cable-damaged' | 'feedback-damaged';

/** What was tried on site. */
export type Trial = 'leads-off' | 'feedback-off' | 'other-drive' | 'other-motor';

export type YesNo = 'yes' | 'no';

/** What the caller says. Absent: not asked, or the caller does not know. Nothing of it was measured. */
export interface CallFacts {
  moment?: Symptom;
  /** Nobody saw the moment: it is not asked for again. */
  momentUnseen: boolean;
  again?: 'each' | 'sometimes' | 'once';
  /** The trip came `came` times in `of` starts or moves. */
  came?: number;
  of?: number;
  /** How often it was reset and started since. */
  resets?: number;
  canFall?: YesNo;
  propped?: YesNo;
  /** The drive serves other axes as well. */
  sharedDrive?: YesNo;
  /** Motor and cable are above what can be reached from the floor. */
  high?: YesNo;
  /** Somebody on site may lock out, and may switch on. */
  switcher?: YesNo;
  before: readonly Before[];
  /** The caller says that nothing was done and nothing happened. */
  nothingBefore: boolean;
  seen: readonly Seen[];
  /** Somebody looked from outside and saw nothing. */
  nothingSeen: boolean;
  tried: Partial<Record<Trial, 'trips' | 'runs' | 'not-tried'>>;
  /** Which of the words that the sheet needs are noted. */
  noted: { message: boolean; detail: boolean; plates: boolean; spares: boolean; until: boolean };
}

const changes: readonly Before[] = [
  'motor-changed',
  'drive-changed',
  'cable-changed',
  'parameters-changed',
  'load-changed',
];

/** Whether parts or parameters were changed before the first trip; undefined if it is not known or contradictory. */
export function changedBefore({ before, nothingBefore }: CallFacts): 'something' | 'nothing' | undefined {
  if (before.some((one) => changes.includes(one))) return nothingBefore ? undefined : 'something';
  return nothingBefore && before.length === 0 ? 'nothing' : undefined;
}
