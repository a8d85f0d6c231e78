import { type CalculatorName, calculators } from '../../calculators/registry.ts';
import type { CalculatorForm } from '../../kernel/form/calculator-form.ts';

const forms = import.meta.glob<CalculatorForm>('../../calculators/*/form.ts', { eager: true, import: 'calculator' });

/** The form of a calculator, and its title. */
export function caseForm(name: CalculatorName): { title: string; form: CalculatorForm } {
  const form = forms[`../../calculators/${name}/form.ts`];
  const about = calculators.find((calculator) => calculator.name === name);
  if (form === undefined || about === undefined) throw new Error(`the calculator ${name} has no form`);
  return { title: about.title, form };
}
