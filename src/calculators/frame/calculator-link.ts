import * as z from 'zod/mini';
import { limitValue } from '../../kernel/limits.ts';
import type { JsonObject } from '../../kernel/link/parse-json.ts';
import { failed, succeeded } from '../../kernel/link/problem.ts';
import { byField, code, longText } from '../../kernel/link/schema-parts.ts';
import { packShare, type ShareResult } from '../../kernel/link/share.ts';
import { calculatorNames } from '../registry.ts';

/** A filled calculator, as a link carries it: the texts by the ids of their fields. */
export interface CalculatorEntries {
  calculator: string;
  form: Record<string, string>;
}

/** A pasted table is as long as a note. */
const schema = z.strictObject({ calculator: code, form: byField(longText) });

/** The share text of a filled calculator. */
export function shareEntries({ calculator, form }: CalculatorEntries): ShareResult<string> {
  // What a link could not be read back from is no link.
  const long = Object.values(form).some((value) => value.length > limitValue('record-notes'));
  return long ? failed('too-long-to-share') : packShare({ calculator, form });
}

/** The entries of a calculator of this edition. */
export function readEntries(content: JsonObject): ShareResult<CalculatorEntries> {
  const parsed = schema.safeParse(content);
  if (!parsed.success) return failed('foreign');
  const names: readonly string[] = calculatorNames;
  return names.includes(parsed.data.calculator) ? succeeded(parsed.data) : failed('unknown-calculator');
}
