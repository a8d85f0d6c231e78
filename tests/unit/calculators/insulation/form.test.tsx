import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { calculator as insulationForm, insulationInput } from '../../../../src/calculators/insulation/form.ts';
import { formulaText } from '../../../../src/calculators/insulation/formula.ts';
import { InsulationPlot } from '../../../../src/calculators/insulation/InsulationPlot.tsx';
import { plotData } from '../../../../src/calculators/insulation/plot-data.ts';
import type { Typed } from '../../../../src/kernel/form/field.ts';
import { readForm } from '../../../../src/kernel/form/read-form.ts';
import { liftVisit } from '../visits.ts';

const input = (changes: Typed = {}) =>
  insulationInput(readForm(insulationForm.fields, liftVisit('insulation', changes)));

describe('the insulation form', () => {
  test('a bare temperature has the unit that was chosen; a typed unit wins', () => {
    const winding = (text: string, temperatureUnit: string) =>
      input({ windingTemperature: text, temperatureUnit }).windingTemperature;
    expect(winding('25', 'C')).toMatchObject({ value: 25 });
    expect(winding('77', 'F')).toMatchObject({ value: expect.closeTo(25, 9) });
    expect(winding('25 °C', 'F')).toMatchObject({ value: 25 });
  });

  test('a kind of winding and a method that were not chosen are the usual ones', () => {
    expect(input()).toMatchObject({ machineClass: 'random-wound', correction: 'halving' });
    expect(input({ machineClass: 'pre-1970', correction: 'table' })).toMatchObject({
      machineClass: 'pre-1970',
      correction: 'table',
    });
  });
});

describe('what else is stated', () => {
  test('and what is not stated, counts as not known', () => {
    const { idleCores: _stated, ...form } = liftVisit('insulation');
    const bare = insulationInput(readForm(insulationForm.fields, form));
    expect(bare).toMatchObject({ idleCores: 'not-stated', filter: 'not-stated', rowKind: 'joined' });
    expect(input({ idleCores: 'free', filter: 'none', rowKind: 'single' })).toMatchObject({
      ...{ idleCores: 'free', filter: 'none', rowKind: 'single' },
    });
  });

  test('one reading of U, V and W joined is read', () => {
    expect(input({ U: '', V: '', W: '', together: '3M' }).together).toMatchObject({ value: 3e6 });
  });
});

describe('the plot', () => {
  test('shows whole decades that hold the limits and the readings', () => {
    expect(plotData(input())?.marks).toEqual([
      { label: 'U', temperature: 32, ohms: 3.1e6, shape: 'dot' },
      { label: 'V', temperature: 32, ohms: 2.9e6, shape: 'square' },
      { label: 'W', temperature: 32, ohms: 3.2e6, shape: 'triangle' },
    ]);
    const ticks = [...renderToString(<InsulationPlot input={input()} />).matchAll(/class="figures"[^>]*>([^<]*)</g)];
    expect(ticks.map(([, text]) => text?.replace('\u00a0', ' '))).toEqual([
      ...['100 kΩ', '1 MΩ', '10 MΩ', '100 MΩ', '1 GΩ'],
      ...['0', '20', '40', '60', '80', '100'],
    ]);
  });

  test('shows bounds as bounds, a short at its foot, and nothing for OL without a range', () => {
    const marks = plotData(input({ U: '>700M', V: '0.2 Ω', W: 'OL' }))?.marks;
    expect(marks).toEqual([
      { label: 'U', temperature: 32, ohms: 700e6, shape: 'above' },
      { label: 'V', temperature: 32, ohms: 1e3, shape: 'below' },
    ]);
  });

  test('shows one reading of all three joined', () => {
    expect(plotData(input({ U: '', V: '', W: '', together: '3M' }))?.marks).toEqual([
      { label: 'U, V, W', temperature: 32, ohms: 3e6, shape: 'dot' },
    ]);
  });

  test('has no readings without a temperature, and nothing at all without a limit', () => {
    expect(plotData(input({ windingTemperature: '' }))?.marks).toEqual([]);
    expect(plotData(input({ occasion: 'routine', machineClass: 'pre-1970', ratedVoltage: '' }))).toBeUndefined();
  });
});

describe('the formula', () => {
  // Halving rule, IEEE 43-2000 cl. 6.3: 2^(12/10) = 2.297 from 32 to 20 °C.
  test('states the factor with its temperatures', () => {
    expect(formulaText(input())).toContain('T = 32 °C and T₀ = 20 °C: corrected = 2.3 × reading');
  });

  // IEEE 43-2013 cl. 6.3 (recalled): 2.2517 at 60 °C.
  test('of thermosetting insulation has the constants of the standard', () => {
    const text = formulaText(input({ occasion: 'routine', correction: 'thermosetting', windingTemperature: '60' }));
    expect(text).toContain('k = 1245 below it and 4230 above');
    expect(text).toContain('corrected = 2.25 × reading');
  });

  test('is empty without a temperature and outside the validity of the method', () => {
    expect(formulaText(input({ windingTemperature: '' }))).toBe('');
    expect(formulaText(input({ windingTemperature: '95', correction: 'table' }))).toBe('');
  });
});
