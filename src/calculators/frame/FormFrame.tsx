import type { ComponentChildren } from 'preact';
import type { CalculatorForm } from '../../kernel/form/calculator-form.ts';
import { ErrorSummary } from '../../ui/form/ErrorSummary.tsx';
import { FormActions } from '../../ui/form/FormActions.tsx';
import { formProps } from '../../ui/form/form-props.ts';
import type { FormState, IslandProps } from '../../ui/form/use-form.ts';
import { useUnfoldedPrint } from '../../ui/form/use-unfolded-print.ts';
import { VerdictPanel } from '../../ui/verdict/VerdictPanel.tsx';
import { SharedForm } from './SharedForm.tsx';
import { ShareForm } from './ShareForm.tsx';

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
export function FormFrame({ definition, label, form, visits, children, drawing, visit }: Props) {
  const { name, fields } = definition;
  // Within a visit the whole visit is shared, not one form of it.
  const alone = visit === undefined;
  return (
    <form ref={useUnfoldedPrint<HTMLFormElement>()} class="calculator" aria-label={label} {...formProps}>
      {alone && (
        <SharedForm name={name} fields={fields} onTake={(typed) => form.fill(typed, 'Filled in from the link.')} />
      )}
      <FormActions visits={visits} form={form} />
      {children}
      <ErrorSummary definition={definition} form={form} />
      {drawing}
      <VerdictPanel name={name} label={label} outcome={form.outcome} pending={form.pending} />
      {alone && <ShareForm name={name} typed={form.typed} />}
    </form>
  );
}
