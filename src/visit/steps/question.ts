import type { FormField } from '../../kernel/form/field.ts';
import { lastIn } from '../../kernel/reading/last-in.ts';
import { shownTime } from '../../kernel/time/iso-time.ts';
import type { Form } from './fields.ts';

/** What a step says of itself. */
export interface StepWords {
  title: string;
  /** What to do, one action a line. */
  instructions: string[];
  /** Why, in a sentence or two. */
  why: string;
  /** When it comes, as long as it lies ahead. */
  when: string;
  /** The caution that stands above the instructions. */
  caution?: string;
  /** The caution is one of power or of a load that hangs: it carries the heavier mark. */
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
   * The guide's answer from the form as typed. A form that is incomplete or can't be read gives none, so that the step
   * stays due. Never throws.
   */
  read: (form: Form) => Answer | undefined;
  /** The answer in one line, of a form in which something stands. `readAt`: when each reading was typed. */
  line: (form: Form, readAt: Times) => string;
}

/** The line of most steps: each answer in short. A voltage stands with the time at which it was measured. */
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
