import type { Entries } from '../../ui/form/use-entries.ts';
import type { DetailField } from './details-fields.ts';
import { TextInput } from './TextInput.tsx';

interface Props<Words extends Partial<Record<DetailField['id'], string>>> {
  fields: readonly DetailField[];
  entries: Entries<Words>;
}

/** Fields for words about a visit. */
export function DetailFields<Words extends Partial<Record<DetailField['id'], string>>>({
  fields,
  entries,
}: Props<Words>) {
  return (
    <>
      {fields.map(({ id, label, hint, long }) => (
        <TextInput
          key={id}
          id={`visit-${id}`}
          label={label}
          hint={hint}
          long={long}
          value={entries.typed[id] ?? ''}
          onInput={(value) => entries.type((before) => ({ ...before, [id]: value }))}
          onLeave={entries.leave}
        />
      ))}
    </>
  );
}
