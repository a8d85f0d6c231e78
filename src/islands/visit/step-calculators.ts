import type { MeasurementStepId } from '../../record/step-forms.ts';
import { bridgeForm } from '../bridge/form.ts';
import type { CalculatorForm } from '../form/calculator-form.ts';
import { insulationForm } from '../insulation/form.ts';
import { isolationForm } from '../isolation/form.ts';
import { windingForm } from '../winding/form.ts';

// Their codes as plain strings: a visit treats all calculators alike.
const plain = (form: unknown) => form as CalculatorForm;

export const stepCalculators: Record<MeasurementStepId, CalculatorForm> = {
  bridge: plain(bridgeForm),
  insulation: plain(insulationForm),
  isolation: plain(isolationForm),
  winding: plain(windingForm),
  'winding-motor': plain(windingForm),
};
