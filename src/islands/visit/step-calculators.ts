import type { MeasurementStepId } from '../../record/step-forms.ts';
import { bridgeForm } from '../bridge/form.ts';
import type { CalculatorForm } from '../form/calculator-form.ts';
import { insulationForm } from '../insulation/form.ts';
import { isolationForm } from '../isolation/form.ts';
import { windingForm } from '../winding/form.ts';

export const stepCalculators: Record<MeasurementStepId, CalculatorForm> = {
  bridge: bridgeForm,
  insulation: insulationForm,
  isolation: isolationForm,
  winding: windingForm,
  'winding-motor': windingForm,
};
