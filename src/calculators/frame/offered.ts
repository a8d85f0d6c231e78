import { type FormField, fillForm, type Typed } from '../../kernel/form/field.ts';
import { unpackShare } from '../../kernel/link/share.ts';
import { href } from '../../ui/href.ts';
import { readEntries } from './calculator-link.ts';

/** What a link offers to the form on this page. */
export type Offered =
  | { kind: 'form'; typed: Typed; entries: { name: string; value: string }[] }
  | { kind: 'elsewhere'; address: string }
  | { kind: 'refused'; message: string };

/** Only fields that the form has are taken; what else a link brings is dropped. */
export function offeredBy(share: string, name: string, fields: readonly FormField[]): Offered {
  const unpacked = unpackShare(share);
  if (!unpacked.ok) return { kind: 'refused', message: unpacked.problem.message };
  if ('visit' in unpacked.value) return { kind: 'elsewhere', address: `${href('/visit/')}#share=${share}` };
  const read = readEntries(unpacked.value);
  if (!read.ok) return { kind: 'refused', message: read.problem.message };
  const shared = read.value;
  if (shared.calculator !== name) {
    return { kind: 'elsewhere', address: `${href(`/calculators/${shared.calculator}/`)}#share=${share}` };
  }
  const typed = fillForm(fields, shared.form);
  const entries = fields.flatMap((field) => {
    const value = typed[field.id] ?? '';
    if (value === '' || (field.kind === 'choice' && value === field.initial)) return [];
    const label = field.kind === 'choice' && field.options.find((option) => option.value === value)?.label;
    const inWords = field.kind === 'text' ? field.inWords?.(value) : undefined;
    return [{ name: field.name, value: label || inWords || value }];
  });
  return { kind: 'form', typed, entries };
}
