import { parseReading } from '../reading/parse-reading.ts';
import { missing, type Reading } from '../reading/reading.ts';
import type { ReadingErrorCode } from '../reading/reading-error.ts';
import type { ChoiceField, FormField, ReadingField, Typed } from './field.ts';

/** What is wrong with an entry, what to do, and texts that would be readable. */
export interface FieldError {
  /** Absent if the text can be read and the field's own check refuses it. */
  code?: ReadingErrorCode;
  message: string;
  suggestions: string[];
}

/** A form as it was understood: readings and choices by field id, and what could not be understood. */
export interface ReadForm {
  readings: Record<string, Reading>;
  /** A tick counts as the choice 'yes' or ''. */
  choices: Record<string, string>;
  /** Texts as typed. */
  texts: Record<string, string>;
  errors: Record<string, FieldError>;
  /** Required choices without an answer. */
  unchosen: ChoiceField[];
}

/** Reads every field by itself, so that a bad entry costs nothing but its own reading. */
export function readForm(fields: readonly FormField[], typed: Typed): ReadForm {
  const read: ReadForm = { readings: {}, choices: {}, texts: {}, errors: {}, unchosen: [] };
  for (const field of fields) {
    switch (field.kind) {
      case 'reading':
        readReading(field, typed, read);
        break;
      case 'choice':
        readChoice(field, typed, read);
        break;
      case 'tick':
        read.choices[field.id] = typed[field.id] === 'yes' ? 'yes' : '';
        break;
      case 'several':
      case 'text':
        read.texts[field.id] = typed[field.id] ?? '';
    }
  }
  return read;
}

function readChoice(field: ChoiceField, typed: Typed, read: ReadForm): void {
  const value = typed[field.id] ?? field.initial;
  const known = value === '' || field.options.some((option) => option.value === value);
  if (!known)
    read.errors[field.id] = { message: 'This is not one of the answers. Choose one of them.', suggestions: [] };
  if (value === '' && field.required) read.unchosen.push(field);
  read.choices[field.id] = known ? value : '';
}

function readReading(field: ReadingField, typed: Typed, read: ReadForm): void {
  const bareUnit = field.bareUnitFrom === undefined ? '' : (typed[field.bareUnitFrom] ?? '');
  const { reading, error } = understood(field, typed[field.id] ?? '', bareUnit);
  read.readings[field.id] = reading;
  if (error !== undefined) read.errors[field.id] = error;
}

function understood(field: ReadingField, text: string, bareUnit: string): { reading: Reading; error?: FieldError } {
  const result = parseReading(text, field.quantity, bareUnit, field.units);
  if (!result.ok) return { reading: missing, error: result.error };
  const complaint = field.check?.(result.reading);
  if (complaint !== undefined) return { reading: missing, error: { message: complaint, suggestions: [] } };
  return { reading: result.reading };
}
