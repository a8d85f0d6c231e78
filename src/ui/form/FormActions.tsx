import type { FormState, WorkedVisit } from './use-form.ts';

/** What has changed the whole form at once, and the way back. */
export function FormChange({ form: { change, undo } }: { form: FormState }) {
  return (
    <p class="form-change">
      <span role="status">{change?.text}</span>{' '}
      {change && (
        <button type="button" class="plain" onClick={undo}>
          {change.back.label}
        </button>
      )}
    </p>
  );
}

interface Props {
  visits: readonly WorkedVisit[];
  form: FormState;
}

/**
 * Filling and clearing at once. Both can be undone, so neither asks first. One worked case is offered here, so that the
 * buttons stay smaller than the form; links bring the others.
 */
export function FormActions({ visits, form }: Props) {
  return (
    <div class="form-actions">
      {visits.slice(0, 1).map(({ id, title, form: values }) => (
        <button
          key={id}
          type="button"
          class="plain"
          onClick={() => form.fill(values, `Filled in: ${title} (invented).`)}
        >
          Fill in the worked visit ({title}, invented)
        </button>
      ))}
      <button type="button" class="plain" onClick={form.clear}>
        Clear the form
      </button>
    </div>
  );
}
