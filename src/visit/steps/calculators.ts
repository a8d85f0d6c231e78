import type { Assessment } from '../../calc/index.ts';
import { bridgeForm } from '../../islands/bridge/form.ts';
import type { CalculatorForm } from '../../islands/form/calculator-form.ts';
import { insulationForm } from '../../islands/insulation/form.ts';
import { isolationForm } from '../../islands/isolation/form.ts';
import { windingForm } from '../../islands/winding/form.ts';
import type { MeasuredStepId } from './questions.ts';

// Their codes as plain strings: a visit treats all calculators alike.
const plain = (form: unknown) => form as CalculatorForm<string, string, Assessment>;

/** The calculator of each measured step. */
export const stepCalculators: Record<MeasuredStepId, CalculatorForm> = {
  bridge: plain(bridgeForm),
  insulation: plain(insulationForm),
  isolation: plain(isolationForm),
  winding: plain(windingForm),
  'winding-motor': plain(windingForm),
};
