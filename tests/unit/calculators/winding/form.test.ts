import { describe, expect, test } from 'vitest';
import { windingBars } from '../../../../src/calculators/winding/bars.ts';
import { calculator as windingForm } from '../../../../src/calculators/winding/form.ts';
import { readForm } from '../../../../src/kernel/form/read-form.ts';

const judged = (typed: Record<string, string>) => {
  const outcome = windingForm.judge(typed);
  return outcome.state === 'judged' ? outcome : undefined;
};
const barsOf = (typed: Record<string, string>) => windingBars(readForm(windingForm.fields, typed));

const odd = { UV: '1.820 Ω', VW: '1.820 Ω', WU: '2.140 Ω', leads: 'four' };
const alike = { UV: '1.820 Ω', VW: '1.822 Ω', WU: '1.819 Ω', leads: 'four' };

// Deviations worked by hand: largest distance from the mean, divided by the mean.
describe('the form from text to verdict', () => {
  test.each([
    // mean 1.8203, 0.09 % away
    [alike, 'go'],
    [{ UV: '1.820 Ω', VW: '1.822 Ω', WU: '1.819 Ω' }, 'undecided'],
    // mean 1.9567, 9.4 % away
    [{ UV: '1.820 Ω', VW: '1.910 Ω', WU: '2.140 Ω' }, 'no-go'],
    // mean 1.870, 4.3 % away: between 2 and 5 %
    [{ UV: '1.820 Ω', VW: '1.840 Ω', WU: '1.950 Ω' }, 'undecided'],
    [{ UV: 'OL', VW: '1.82 Ω', WU: 'OL' }, 'no-go'],
    [{ UV: '1.820 Ω', VW: '1.822 Ω' }, 'undecided'],
    // One step of 0.1 Ω in 0.4 Ω is a quarter.
    [{ UV: '0.4 Ω', VW: '0.4 Ω', WU: '0.4 Ω' }, 'undecided'],
    // In milliohms only four leads are accurate enough.
    [{ UV: '84.2 mΩ', VW: '84.4 mΩ', WU: '84.3 mΩ', leads: 'zeroed' }, 'undecided'],
    [{ UV: '84.2 mΩ', VW: '84.4 mΩ', WU: '84.3 mΩ', leads: 'four' }, 'go'],
    // Minus leads of 0.2 Ω: 6.80, 6.80 and 6.79; with 0.05 Ω of contact more or less still within 2 %.
    [{ UV: '7.00 Ω', VW: '7.00 Ω', WU: '6.99 Ω', leads: 'subtract', leadOhms: '0.20 Ω' }, 'go'],
    [{ UV: '7.00 Ω', VW: '7.00 Ω', WU: '6.99 Ω', leads: 'subtract' }, 'undecided'],
    // Minus leads of 0.2 Ω: 1.80 Ω, of which a contact of 0.05 Ω is almost 3 %.
    [{ UV: '2.00 Ω', VW: '2.00 Ω', WU: '1.99 Ω', leads: 'subtract', leadOhms: '0.20 Ω' }, 'undecided'],
    // A second set that fails in the same way, one that passes, and a connector of 80 mΩ.
    [{ ...odd, UVagain: '1.820 Ω', VWagain: '1.820 Ω', WUagain: '2.140 Ω' }, 'no-go'],
    [{ ...odd, UVagain: '1.820 Ω', VWagain: '1.820 Ω', WUagain: '1.821 Ω' }, 'undecided'],
    [{ ...alike, acrossJoint: '80 mΩ' }, 'no-go'],
    [{ ...alike, acrossJoint: '3 mΩ' }, 'go'],
    // 1.820 at 65 °C is 1.546 at 20 °C, beside 1.55.
    [{ ...alike, windingTemperature: '65', reference: '1.55 Ω', referenceTemperature: '68 °F' }, 'go'],
    [{ ...alike, windingTemperature: '65', reference: '1.82 Ω', referenceTemperature: '20' }, 'undecided'],
  ])('%j is %s', (typed, verdict) => {
    expect(judged(typed)?.verdict).toBe(verdict);
  });

  test('a stated accuracy that spans the limit leaves it undecided', () => {
    const readings = { ...alike, VW: '1.840 Ω', WU: '1.822 Ω' };
    expect(judged(readings)?.verdict).toBe('go');
    expect(judged({ ...readings, accuracyPercent: '3' })?.verdict).toBe('undecided');
  });

  test('a verdict names the limits that it used', () => {
    expect(judged(alike)?.limits).toEqual(['winding-unbalance-good', 'winding-unbalance-bad']);
  });
});

describe('the drawing', () => {
  test('has each deviation with its sign', () => {
    const deviations = barsOf({ UV: '1.82 Ω', VW: '1.84 Ω', WU: '1.95 Ω' })?.bars.map(({ deviation }) => deviation);
    expect(deviations?.map((percent) => percent.toFixed(2))).toEqual(['-2.67', '-1.60', '4.28']);
  });

  test('shows values without the leads if they are subtracted', () => {
    const data = barsOf({ UV: '2.00 Ω', VW: '2.00 Ω', WU: '2.12 Ω', leads: 'subtract', leadOhms: '0.60 Ω' });
    expect(data?.bars.map(({ reading }) => reading.kind === 'value' && reading.value)).toEqual([1.4, 1.4, 1.52]);
  });

  test.each([
    [{ UV: '1.82 Ω', VW: '1.84 Ω' }],
    [{ UV: 'OL', VW: '1.84 Ω', WU: '1.9 Ω' }],
    [{ UV: '0 Ω', VW: '0 Ω', WU: '0 Ω' }],
  ])('is left out for %j, which has no mean to stand against', (typed) => {
    expect(barsOf(typed)).toBeUndefined();
  });
});
