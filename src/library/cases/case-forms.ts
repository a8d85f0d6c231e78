import { absorptionForm } from '../../calculators/absorption/form.ts';
import { bridgeForm } from '../../calculators/bridge/form.ts';
import { bridgeDiodeForm } from '../../calculators/bridge-diode/form.ts';
import { cableLengthForm } from '../../calculators/cable-length/form.ts';
import { dischargeForm } from '../../calculators/discharge/form.ts';
import { insulationForm } from '../../calculators/insulation/form.ts';
import { isolationForm } from '../../calculators/isolation/form.ts';
import { testVoltageForm } from '../../calculators/test-voltage/form.ts';
import { trendForm } from '../../calculators/trend/form.ts';
import { windingForm } from '../../calculators/winding/form.ts';
import type { CalculatorForm } from '../../kernel/form/calculator-form.ts';
import type { CaseCalculator } from './case-schema.ts';

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
