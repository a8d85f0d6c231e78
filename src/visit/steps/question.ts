import type { FormField } from '../../kernel/form/field.ts';
import { lastIn } from '../../kernel/reading/last-in.ts';
import { shownTime } from '../../kernel/time/iso-time.ts';
import type { FieldGroup, Form } from './fields.ts';

/** The words of a step. */
export interface StepWords {
  title: string;
  /** What to do, one action a line. */
  instructions: string[];
  /** Why, in a sentence or two. */
  why: string;
  /** When the step comes, for the list of steps that may follow. */
  when: string;
  /** The caution above the instructions. */
  caution?: string;
  /** The caution is about power or a hanging load: it gets the heavier mark. */
  danger?: true;
  /** What to do after a later step has undone this one; see `undone` of its rule. */
  undone?: string;
}

/** Times by field id, as ISO texts. */
export type Times = Readonly<Record<string, string>>;

/** A step that asks a few questions. */
export interface Question<Answer> extends StepWords {
  fields: readonly FormField[];
  /** Those of the fields that are drawn together. */
  groups?: readonly FieldGroup[];
  /** Those that only older records hold: drawn while they hold a text, so that nothing that counts is hidden. */
  older?: readonly FormField[];
  /**
   * The guide's answer from the form as typed; undefined if the form is incomplete or can't be read, so that the step
   * stays due. Never throws.
   */
  read: (form: Form) => Answer | undefined;
  /** The answer of a form that is not empty, in one line. `readAt`: when each reading was typed. */
  line: (form: Form, readAt: Times) => string;
}

/** The line of most steps: each answer in short, and the time of the voltages. */
export function lineOf(fields: readonly FormField[]): Question<unknown>['line'] {
  return (form, readAt) => [...fields.flatMap((field) => answerInLine(field, form)), ...measuredAt(readAt)].join(', ');
}

/** When the last of the readings was typed. */
export function measuredAt(readAt: Times): string[] {
  const times = Object.values(readAt).sort();
  return times.length === 0 ? [] : [`measured ${shownTime(lastIn(times) ?? '')}`];
}

/** The answer to one field in short; nothing if there is none. */
export function answerInLine(field: FormField, form: Form): string[] {
  const value = (form[field.id] ?? '').trim();
  if (value === '' || field.id === 'remark') return [];
  switch (field.kind) {
    case 'reading':
      return [`${field.inLine ?? field.name} ${value}`];
    case 'tick':
      return field.inLine === undefined ? [] : [field.inLine];
    case 'choice':
      return [field.options.find((option) => option.value === value)?.label ?? value];
    case 'several':
      return value.split(' ').map((one) => field.options.find((option) => option.value === one)?.label ?? one);
    case 'text':
      return [value];
  }
}
