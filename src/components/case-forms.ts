import { absorptionForm } from '../islands/absorption/form.ts';
import { bridgeForm } from '../islands/bridge/form.ts';
import { bridgeDiodeForm } from '../islands/bridge-diode/form.ts';
import { cableLengthForm } from '../islands/cable-length/form.ts';
import { dischargeForm } from '../islands/discharge/form.ts';
import type { CalculatorForm } from '../islands/form/calculator-form.ts';
import { insulationForm } from '../islands/insulation/form.ts';
import { isolationForm } from '../islands/isolation/form.ts';
import { testVoltageForm } from '../islands/test-voltage/form.ts';
import { trendForm } from '../islands/trend/form.ts';
import { windingForm } from '../islands/winding/form.ts';
import type { CaseCalculator } from '../schemas/case.ts';

/** The calculators that a case may fill, in the order in which its page shows them. */
export const caseForms: Record<CaseCalculator, { title: string; form: CalculatorForm }> = {
  discharge: { title: 'DC-bus discharge', form: dischargeForm },
  bridge: { title: 'Bridge balance', form: bridgeForm },
  'bridge-diode': { title: 'Bridge by diode test', form: bridgeDiodeForm },
  'test-voltage': { title: 'Test voltage', form: testVoltageForm },
  insulation: { title: 'Insulation go/no-go', form: insulationForm },
  absorption: { title: 'Polarization index', form: absorptionForm },
  isolation: { title: 'Cable or motor', form: isolationForm },
  'cable-length': { title: 'Cable insulation by length', form: cableLengthForm },
  winding: { title: 'Winding resistance', form: windingForm },
  trend: { title: 'Trend over the years', form: trendForm(Date.now) },
};

export const caseCalculators = Object.keys(caseForms) as CaseCalculator[];
