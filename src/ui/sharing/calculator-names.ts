import type { CalculatorName } from '../../kernel/form/calculator-form.ts';

/** The calculators that a link can fill. */
export const calculatorNames: readonly CalculatorName[] = [
  'bridge',
  'insulation',
  'isolation',
  'winding',
  'bridge-diode',
  'test-voltage',
  'discharge',
  'absorption',
  'cable-length',
  'trend',
];
