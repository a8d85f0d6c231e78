import { bridgeForm } from '../../islands/bridge/form.ts';
import type { CalculatorForm } from '../../islands/form/calculator-form.ts';
import { insulationForm } from '../../islands/insulation/form.ts';
import { isolationForm } from '../../islands/isolation/form.ts';
import { windingForm } from '../../islands/winding/form.ts';
import type { MeasuredStepId } from './questions.ts';

/** The calculator of each measured step. */
export const stepCalculators: Record<MeasuredStepId, CalculatorForm> = {
  bridge: bridgeForm,
  insulation: insulationForm,
  isolation: isolationForm,
  winding: windingForm,
  'winding-motor': windingForm,
};
