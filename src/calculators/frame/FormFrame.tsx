import type { ComponentChildren } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Assessment } from '../../kernel/assessment/assessment.ts';
import type { Outcome } from '../../kernel/form/calculator-form.ts';
import { ErrorSummary } from '../../ui/form/ErrorSummary.tsx';
import { FormActions, FormChange } from '../../ui/form/FormActions.tsx';
import { useUnfoldedPrint } from '../../ui/form/folded-parts.ts';
import { formProps } from '../../ui/form/form-behaviour.ts';
import type { CalculatorProps, FormState, LateCalculator } from '../../ui/form/use-form.ts';
import { VerdictPanel } from '../../ui/verdict/VerdictPanel.tsx';
import { nextCalculator, StartVisit } from './Onward.tsx';
import { SharedForm } from './SharedForm.tsx';
import { ShareForm } from './ShareForm.tsx';

interface Props<A extends Assessment> extends CalculatorProps {
  calculator: Pick<LateCalculator<A>, 'name' | 'title' | 'fields'>;
  form: FormState<A>;
  children: ComponentChildren;
  /** What is drawn of the verdict. */
  drawing: (outcome: Outcome<A>) => ComponentChildren;
}

/** What all calculators have in common around their own fields: the fields first, then the verdict, then the rest. */
export function FormFrame<A extends Assessment>({ calculator, form, visits, children, drawing, visit }: Props<A>) {
  const { name, title, fields } = calculator;
  // Drawn once for each outcome, not with each key.
  const drawn = useMemo(() => drawing(form.outcome), [form.outcome]);
  // Within a visit the whole visit is shared, and the guide says what comes next.
  const alone = visit === undefined;
  return (
    <form ref={useUnfoldedPrint<HTMLFormElement>()} class="calculator" aria-label={title} {...formProps}>
      {alone && (
        <SharedForm name={name} fields={fields} onTake={(typed) => form.fill(typed, 'Filled in from the link.')} />
      )}
      <FormChange form={form} />
      <div class="calculator-fields">
        {children}
        <ErrorSummary calculator={calculator} form={form} />
      </div>
      <div class="calculator-outcome">
        <VerdictPanel
          name={name}
          label={title}
          outcome={form.outcome}
          pending={form.pending}
          retry={form.retry}
          earlier={visit?.earlier}
          {...(alone && { link: nextCalculator, onward: <StartVisit name={name} typed={form.settled} /> })}
        >
          {drawn}
        </VerdictPanel>
      </div>
      <FormActions visits={visits} form={form} />
      {alone && <ShareForm name={name} typed={form.typed} />}
    </form>
  );
}
