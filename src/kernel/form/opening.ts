import type { Typed } from './field.ts';

/** Fields for what is true of the machine at the moment: not known any more after a break, and never handed on. */
export const trueOfTheMoment: readonly string[] = [
  ...['busVoltage', 'motorLeads', 'supplyLeads', 'others'],
  ...['plugAndLeads', 'axis', 'end'],
];

/** The calculator with which a step goes on, and what it takes along. */
export interface Opening {
  /** Name of that calculator. */
  calculator: string;
  /** The link's words. */
  words: string;
  /** Its fields by the fields here that fill them. What is true of the machine at the moment is never among them. */
  carries?: Readonly<Record<string, string>>;
}

/** A step in words, with the filled calculator that it opens. */
export interface StepLine {
  text: string;
  opens?: { calculator: string; words: string; form: Typed };
}

/** What a step says and opens, with the entries that are known. */
export function stepLine(text: string, opening: Opening | undefined, typed: Typed): StepLine {
  if (opening === undefined) return { text };
  const { calculator, words, carries = {} } = opening;
  const known = Object.entries(carries).flatMap(([here, there]) => {
    const value = (typed[here] ?? '').trim();
    return value === '' ? [] : [[there, value] as const];
  });
  return { text, opens: { calculator, words, form: Object.fromEntries(known) } };
}

/** Fields that have the same name on both pages. */
export const sameFields = (...ids: readonly string[]): Record<string, string> =>
  Object.fromEntries(ids.map((id) => [id, id]));
