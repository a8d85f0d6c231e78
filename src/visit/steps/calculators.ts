import { calculator as bendTestForm } from '../../calculators/bend-test/form.ts';
import { calculator as bridgeForm } from '../../calculators/bridge/form.ts';
import { calculator as inputCircuitForm } from '../../calculators/input-circuit/form.ts';
import { calculator as insulationForm } from '../../calculators/insulation/form.ts';
import { calculator as isolationForm } from '../../calculators/isolation/form.ts';
import { calculator as windingForm } from '../../calculators/winding/form.ts';
import type { CalculatorForm } from '../../kernel/form/calculator-form.ts';
import type { MeasuredStepId } from './questions.ts';

/** The calculator of each measured step. */
export const stepCalculators: Record<MeasuredStepId, CalculatorForm> = {
  bridge: bridgeForm,
  'input-circuit': inputCircuitForm,
  insulation: insulationForm,
  isolation: isolationForm,
  'bend-test': bendTestForm,
  winding: windingForm,
  'winding-motor': windingForm,
};
