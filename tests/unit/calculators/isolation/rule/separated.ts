import { assessIsolation } from '../../../../../src/calculators/isolation/rule/assess.ts';
import type {
  IsolationFinding,
  IsolationInput,
  StageReadings,
} from '../../../../../src/calculators/isolation/rule/input.ts';
import { found } from '../../../../support/found.ts';
import { line } from '../../../../support/lines.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';

export type Change = Partial<IsolationInput>;

export const stage = (phases: string, PE: string): StageReadings => ({ ...typedPhases(phases), PE: typed(PE) });
export const joined = (phases: string, PE = '0.2 Ω') => ({ joined: stage(phases, PE) });
export const motor = (phases: string, PE = '0.1 Ω') => ({ motor: stage(phases, PE) });
export const cable = (phases: string, bonded: string | undefined, PE = '>1G') => ({
  cable: stage(phases, PE),
  ...(bonded !== undefined && { bonded: typedPhases(bonded) }),
});
export const celsius = (text: string) => typed(text, 'temperature');

const high = '5G | 5G | 5G';
export const goodCable = cable(high, high);
export const goodMotor = motor(high);
export const badMotor = motor('2M | 2M | 2M');
export const badJoined = joined('2M | 2M | 2M');

/** Joined good, nothing else taken; each test changes some of it. */
export const usual: IsolationInput = {
  ...joined('600M | 600M | 600M'),
  idleCores: 'to-pe',
  cableEndsChecked: false,
  suspectedAnyway: false,
  testVoltage: typed('500 V', 'voltage'),
  windingTemperature: celsius('20'),
  correction: 'halving',
};

export const assess = (change: Change) => assessIsolation({ ...usual, ...change });
export const steps = (change: Change) => assess(change).next.map(({ code }) => code);
export const codes = (change: Change) => assess(change).findings.map(({ code }) => code);
export const find = <Code extends IsolationFinding['code']>(change: Change, code: Code) =>
  found(assess(change).findings, code);

/** The findings with one of these codes, as lines. */
export const linesOf = (change: Change, wanted: readonly IsolationFinding['code'][]) =>
  assess(change)
    .findings.filter(({ code }) => wanted.includes(code))
    .map(line);
