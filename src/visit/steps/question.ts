import type { FormField } from '../../kernel/form/field.ts';
import { lastIn } from '../../kernel/reading/last-in.ts';
import { shownTime } from '../../kernel/time/iso-time.ts';
import type { Form } from './fields.ts';

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
  return (form, readAt) => {
    const times = Object.values(readAt).sort();
    const measured = times.length === 0 ? [] : [`measured ${shownTime(lastIn(times) ?? '')}`];
    return [...fields.flatMap((field) => answerInLine(field, form)), ...measured].join(', ');
  };
}

function answerInLine(field: FormField, form: Form): string[] {
  const value = (form[field.id] ?? '').trim();
  if (value === '' || field.id === 'remark') return [];
  switch (field.kind) {
    case 'reading':
      return [`${field.inLine ?? field.name} ${value}`];
    case 'tick':
      return field.inLine === undefined ? [] : [field.inLine];
    case 'choice':
      return [field.options.find((option) => option.value === value)?.label ?? value];
    case 'text':
      return [value];
  }
}
