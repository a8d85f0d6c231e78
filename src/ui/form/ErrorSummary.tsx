import type { CalculatorForm } from '../../kernel/form/calculator-form.ts';
import type { FormState } from './use-form.ts';

interface Props {
  calculator: Pick<CalculatorForm, 'name' | 'fields'>;
  form: FormState;
}

/** Where two or more entries can't be read, one may be out of sight: all of them, with links. */
export function ErrorSummary({ calculator, form }: Props) {
  const { outcome } = form;
  const errors = outcome.state === 'unreadable' ? outcome.errors : {};
  const bad = calculator.fields.filter(({ id }) => errors[id] !== undefined);
  // The region stays in place while it is empty: only then is its filling announced.
  return (
    <div class="error-summary" role="alert">
      {bad.length > 1 && (
        <>
          <p>{bad.length} fields can’t be read. The other entries are kept.</p>
          <ul>
            {bad.map(({ id, name }) => (
              <li key={id}>
                <a
                  href={`#${calculator.name}-${id}`}
                  onClick={(event) => {
                    // Going by the address would drop a case that stands in it.
                    event.preventDefault();
                    document.getElementById(`${calculator.name}-${id}`)?.focus();
                  }}
                >
                  {name}
                </a>
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
