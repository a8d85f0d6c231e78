import type { ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';
import { SharedForm } from '../share/SharedForm.tsx';
import { ShareForm } from '../share/ShareForm.tsx';
import type { CalculatorForm } from './calculator-form.ts';
import { ErrorSummary } from './ErrorSummary.tsx';
import { FormActions } from './FormActions.tsx';
import type { FormState, IslandProps } from './use-form.ts';
import { VerdictPanel } from './VerdictPanel.tsx';

interface Props extends IslandProps {
  definition: Pick<CalculatorForm, 'name' | 'fields'>;
  /** What the form is for, as its name. */
  label: string;
  form: FormState;
  children: ComponentChildren;
  /** Drawing that follows the form, between the fields and the verdict. */
  drawing: ComponentChildren;
}

/** What all calculators have in common around their own fields. */
export function FormFrame({ definition, label, form, visits, children, drawing, onSettled }: Props) {
  const { name, fields } = definition;
  // Within a visit the whole visit is shared, not one form of it.
  const alone = onSettled === undefined;
  // Between two verdicts many keys are pressed: what the verdict shows is not built again for each.
  const verdict = useMemo(
    () => <VerdictPanel name={name} label={label} outcome={form.outcome} />,
    [name, label, form.outcome],
  );
  return (
    <form
      class="calculator"
      aria-label={label}
      noValidate
      onSubmit={(event) => event.preventDefault()}
      onKeyDown={enterMovesOn}
    >
      {alone && (
        <SharedForm name={name} fields={fields} onTake={(typed) => form.fill(typed, 'Filled in from the link.')} />
      )}
      <FormActions visits={visits} form={form} />
      {children}
      <ErrorSummary definition={definition} form={form} />
      {drawing}
      {verdict}
      {alone && <ShareForm name={name} typed={form.typed} />}
    </form>
  );
}

/** The "next" key of an on-screen keyboard goes to the next text field, as its label says. */
function enterMovesOn(event: KeyboardEvent & { currentTarget: HTMLFormElement }): void {
  if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
  event.preventDefault();
  const inputs = [...event.currentTarget.querySelectorAll<HTMLInputElement>('input[type="text"]')];
  const shown = inputs.filter((input) => input.getClientRects().length > 0);
  const next = shown[shown.indexOf(event.target) + 1];
  if (next === undefined) event.target.blur();
  else next.focus();
}
