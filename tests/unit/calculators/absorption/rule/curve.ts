import { assessAbsorption } from '../../../../../src/calculators/absorption/rule/assess.ts';
import type { AbsorptionFinding, AbsorptionInput } from '../../../../../src/calculators/absorption/rule/input.ts';
import { celsius, ohms, type Reading } from '../../../../../src/kernel/reading/reading.ts';
import { found } from '../../../../support/found.ts';
import { lineWithLimits } from '../../../../support/lines.ts';
import { typed } from '../../../../support/typed.ts';

export type Change = Partial<AbsorptionInput>;
/** Texts as typed, by their seconds. */
export type Texts = Record<number, string>;

const winding: AbsorptionInput = {
  readings: {},
  windingKind: 'form-wound',
  thermalClass: 'BFH',
  temperature: celsius(25),
};

export const readingsOf = (texts: Texts): Record<number, Reading> =>
  Object.fromEntries(Object.entries(texts).map(([time, text]) => [time, typed(text)]));
/** Of a tester that shows whole megohms. */
export const megohms = (value: number): Reading => ohms(value * 1e6, 1e6);

export const assess = (texts: Texts, change: Change = {}) =>
  assessAbsorption({ ...winding, readings: readingsOf(texts), ...change });
export const said = (texts: Texts, change: Change = {}) => assess(texts, change).findings.map(lineWithLimits);
export const steps = (texts: Texts, change: Change = {}) => assess(texts, change).next.map(({ code }) => code);
export const find = <Code extends AbsorptionFinding['code']>(texts: Texts, code: Code, change: Change = {}) =>
  found(assess(texts, change).findings, code);
