import type { ChoiceField, FormField, Option, SeveralField, TextField, TickField } from '../../kernel/form/field.ts';
import { parseReading } from '../../kernel/reading/parse-reading.ts';
import type { Quantity } from '../../kernel/reading/quantity.ts';
import type { Reading } from '../../kernel/reading/reading.ts';

/** Texts by field id, exactly as typed or chosen. */
export type Form = Readonly<Record<string, string>>;

/** A question with a few answers; the type knows them. */
export interface Choice<Value extends string> extends ChoiceField {
  options: (Option & { value: Value })[];
}

/** A question with several answers at once; the type knows them. */
export interface Several<Value extends string> extends SeveralField {
  options: (Option & { value: Value; alone?: true })[];
}

/** Fields that are drawn as rows under one heading. */
export interface FieldGroup {
  legend: string;
  hint?: string;
  fields: readonly FormField[];
  /** A field of the group that asks nothing as long as this is so: Next passes it by. */
  moot?: (form: Form) => string | undefined;
  /** Offers this answer for all fields of the group that have none yet. */
  offer?: { label: string; value: string };
}

type Label = string | { label: string; hint: string };

/** A question with these answers, each with the label that it is offered under. */
export function choice<Value extends string>(id: string, name: string, labels: Record<Value, Label>): Choice<Value> {
  const options = (Object.keys(labels) as Value[]).map((value) => {
    const label: Label = labels[value];
    return { value, ...(typeof label === 'string' ? { label } : label) };
  });
  return { kind: 'choice', id, name, options, initial: '' };
}

/** A question with several of these answers. Those that are listed as `alone` exclude the others. */
export function several<Value extends string>(
  id: string,
  name: string,
  labels: Record<Value, Label>,
  alone: readonly NoInfer<Value>[],
): Several<Value> {
  const { options } = choice(id, name, labels);
  return {
    ...{ kind: 'several', id, name },
    options: options.map((option) => ({ ...option, ...(alone.includes(option.value) && { alone: true as const }) })),
  };
}

export function tick(id: string, name: string, inLine?: string): TickField {
  return { kind: 'tick', id, name, ...(inLine !== undefined && { inLine }) };
}

/** A whole number. */
export function digits(id: string, name: string, hint: string): TextField {
  return { kind: 'text', id, name, hint, digits: true };
}

/** Free words; the guide does not read them. */
export const remark: TextField = { kind: 'text', id: 'remark', name: 'What you see, in your words', long: true };

/** The text of a field; empty if the form itself does not hold it. */
export function textOf(form: Form, id: string): string {
  return Object.keys(form).includes(id) ? (form[id] ?? '') : '';
}

export function ticked(form: Form, id: string): boolean {
  return textOf(form, id) === 'yes';
}

/** `others`: answers that are not offered, such as those of older records. */
export function chosen<Value extends string, Other extends string = never>(
  form: Form,
  { id, options }: Choice<Value>,
  ...others: Other[]
): Value | Other | undefined {
  return [...options.map(({ value }) => value), ...others].find((value) => value === textOf(form, id));
}

/** All that is chosen; undefined if nothing is, or answers that exclude each other. */
export function allChosen<Value extends string>(form: Form, { id, options }: Several<Value>): Value[] | undefined {
  const values = textOf(form, id).split(' ').filter(Boolean);
  const known = options.filter(({ value }) => values.includes(value));
  const fits = known.length === new Set(values).size && (known.length === 1 || known.every(({ alone }) => !alone));
  return known.length > 0 && fits ? known.map(({ value }) => value) : undefined;
}

/** A whole number; undefined for anything else and outside the range, both ends included in it. */
export function count(form: Form, id: string, { from, to }: { from: number; to: number }): number | undefined {
  const typed = textOf(form, id).trim();
  const number = /^\d{1,4}$/.test(typed) ? Number(typed) : undefined;
  return number !== undefined && number >= from && number <= to ? number : undefined;
}

/** Undefined for a text that can't be read; `missing` for an empty one. */
export function voltage(form: Form, id: string): Reading | undefined {
  return readingOf(form, id, 'voltage');
}

/** As `voltage`, in Ω. */
export function resistance(form: Form, id: string): Reading | undefined {
  return readingOf(form, id, 'resistance');
}

function readingOf(form: Form, id: string, quantity: Quantity): Reading | undefined {
  const read = parseReading(textOf(form, id), quantity);
  return read.ok ? read.reading : undefined;
}
