import type { Quantity } from '../reading/quantity.ts';
import type { Reading } from '../reading/reading.ts';

/** What stands in a form, by field id, exactly as typed or chosen. */
export type Typed = Record<string, string>;

/** A field that takes what an instrument showed, as text. */
export interface ReadingField {
  kind: 'reading';
  id: string;
  /** Beside its neighbours in a row, so it may be short. */
  label: string;
  /** Used without its neighbours, as in the error summary. */
  name: string;
  hint?: string;
  /** How it is named in the line that sums up a step of a visit. */
  inLine?: string;
  quantity: Quantity;
  /** The units that what is measured here can have, if not those of its quantity. */
  units?: readonly string[];
  /**
   * Readings with the same word are taken one after the other with one instrument: `rowUnit` offers the unit of one to
   * those after it.
   */
  row?: string;
  /** The lower, the worse, in every verdict: a figure that is taken for less than it is makes nothing pass. */
  lowIsWorse?: true;
  /** The choice field that says which unit a bare number has. */
  bareUnitFrom?: string;
  /** What is wrong with a reading that can be read, and what to do. */
  check?: (reading: Reading) => string | undefined;
}

export interface Option {
  value: string;
  label: string;
  hint?: string;
}

/** A field with a few answers; `initial` is the answer before one is chosen, `''` for none. */
export interface ChoiceField {
  kind: 'choice';
  id: string;
  name: string;
  hint?: string;
  options: Option[];
  initial: string;
  /** Without an answer there is no verdict. */
  required?: true;
}

/** A field whose text is taken as typed. */
export interface TextField {
  kind: 'text';
  id: string;
  name: string;
  hint?: string;
  /** Has room for several lines. */
  long?: true;
  /** Asks for a keypad of digits. */
  digits?: true;
  /** What is said of its text in a list of entries, if the text is nothing to read. */
  inWords?: (text: string) => string;
}

/** Something that is confirmed: 'yes' or ''. */
export interface TickField {
  kind: 'tick';
  id: string;
  name: string;
  /** How it is named in the line that sums up a step of a visit; without it, it is left out. */
  inLine?: string;
}

/**
 * A question that can have several answers at once. Its text is their values with a space between them. An answer that is
 * `alone` can't stand beside another one.
 */
export interface SeveralField {
  kind: 'several';
  id: string;
  name: string;
  hint?: string;
  options: (Option & { alone?: true })[];
}

/** The fields of every form: calculators and the questions of a visit. */
export type FormField = ReadingField | ChoiceField | SeveralField | TextField | TickField;

/** The form as it is before anybody has typed. */
export function blankForm(fields: readonly FormField[]): Typed {
  return Object.fromEntries(fields.map((field) => [field.id, field.kind === 'choice' ? field.initial : '']));
}

/**
 * Whether no reading has been typed; choices and ticks alone judge nothing, and neither does what was only `offered` to the
 * person, such as a reading of an earlier step.
 */
export function isBlank(fields: readonly FormField[], typed: Typed, offered: Typed = {}): boolean {
  return fields.every(({ kind, id }) => {
    const text = (typed[id] ?? '').trim();
    const readsNothing = kind === 'choice' || kind === 'several' || kind === 'tick';
    return readsNothing || text === '' || text === offered[id];
  });
}

/** Whether the form is as it was before anybody typed or chose. */
export function isUntouched(fields: readonly FormField[], typed: Typed): boolean {
  return Object.entries(blankForm(fields)).every(([id, blank]) => (typed[id] ?? blank) === blank);
}

/** Takes only what the form has fields for, so that foreign data can't leave anything behind. */
export function fillForm(fields: readonly FormField[], values: Typed): Typed {
  const blank = blankForm(fields);
  return Object.fromEntries(Object.entries(blank).map(([id, initial]) => [id, values[id] ?? initial]));
}
