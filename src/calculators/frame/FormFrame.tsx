import type { ComponentChildren } from 'preact';
import type { CalculatorForm } from '../../kernel/form/calculator-form.ts';
import { ErrorSummary } from '../../ui/form/ErrorSummary.tsx';
import { FormActions } from '../../ui/form/FormActions.tsx';
import { useUnfoldedPrint } from '../../ui/form/folded-parts.ts';
import { formProps } from '../../ui/form/form-behaviour.ts';
import type { CalculatorProps, FormState } from '../../ui/form/use-form.ts';
import { VerdictPanel } from '../../ui/verdict/VerdictPanel.tsx';
import { SharedForm } from './SharedForm.tsx';
import { ShareForm } from './ShareForm.tsx';

interface Props extends CalculatorProps {
  calculator: Pick<CalculatorForm, 'name' | 'title' | 'fields'>;
  form: FormState;
  children: ComponentChildren;
  /** Drawing that follows the form, between the fields and the verdict. */
  drawing: ComponentChildren;
}

/** What all calculators have in common around their own fields. */
export function FormFrame({ calculator, form, visits, children, drawing, visit }: Props) {
  const { name, title, fields } = calculator;
  // Within a visit the whole visit is shared, not one form of it.
  const alone = visit === undefined;
  return (
    <form ref={useUnfoldedPrint<HTMLFormElement>()} class="calculator" aria-label={title} {...formProps}>
      {alone && (
        <SharedForm name={name} fields={fields} onTake={(typed) => form.fill(typed, 'Filled in from the link.')} />
      )}
      <FormActions visits={visits} form={form} />
      {children}
      <ErrorSummary calculator={calculator} form={form} />
      {drawing}
      <VerdictPanel name={name} label={title} outcome={form.outcome} pending={form.pending} />
      {alone && <ShareForm name={name} typed={form.typed} />}
    </form>
  );
}
