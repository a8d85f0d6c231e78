import type { DetailField } from './details-fields.ts';
import { TextInput } from './TextInput.tsx';
import type { Draft } from './use-draft.ts';

interface Props<Words extends Partial<Record<DetailField['id'], string>>> {
  fields: readonly DetailField[];
  draft: Draft<Words>;
}

/** Fields for words about a visit. */
export function DetailFields<Words extends Partial<Record<DetailField['id'], string>>>({
  fields,
  draft,
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
          value={draft.value[id] ?? ''}
          onInput={(value) => draft.set({ ...draft.value, [id]: value })}
          onLeave={draft.leave}
        />
      ))}
    </>
  );
}
