import {
  assessWinding,
  type WindingFinding,
  type WindingInput,
} from '../../../../../src/calculators/winding/rule/assess.ts';
import type { Pairs } from '../../../../../src/calculators/winding/rule/phases.ts';
import type { Reading } from '../../../../../src/kernel/reading/reading.ts';
import { found } from '../../../../support/found.ts';
import { line } from '../../../../support/lines.ts';
import { typed } from '../../../../support/typed.ts';

export type Change = Partial<WindingInput>;

/** U–V, V–W and W–U, separated by bars. */
export function pairs(text: string): Pairs<Reading> {
  const [UV, VW, WU] = text.split('|').map((one) => typed(one));
  if (UV === undefined || VW === undefined || WU === undefined) throw new Error(`three readings wanted: ${text}`);
  return { UV, VW, WU };
}

/** Three alike windings with four leads; each test changes some of it. */
export const usual: WindingInput = { readings: pairs('2.000 Ω | 2.004 Ω | 2.002 Ω'), leads: 'four' };
/** V–W and W–U a fifth higher. */
export const uneven: Change = { readings: pairs('2.000 Ω | 2.400 Ω | 2.400 Ω') };
/** Ten times as much, which two leads can tell. */
export const high: Change = { readings: pairs('20.00 Ω | 20.04 Ω | 20.02 Ω') };
export const celsius = (text: string) => typed(text, 'temperature');

export const assess = (change: Change) => assessWinding({ ...usual, ...change });
export const steps = (change: Change) => assess(change).next.map(({ code }) => code);
export const find = <Code extends WindingFinding['code']>(change: Change, code: Code) =>
  found(assess(change).findings, code);

/** What is said besides the resistance of each winding. */
export const said = (change: Change) =>
  assess(change)
    .findings.filter(({ code }) => !code.startsWith('winding-phases'))
    .map(line);
