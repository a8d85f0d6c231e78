import { assessBridge, type BridgeInput } from '../../../../../src/calculators/bridge/rule/assess.ts';
import type { BridgeFinding } from '../../../../../src/calculators/bridge/rule/findings.ts';
import { found } from '../../../../support/found.ts';
import { line } from '../../../../support/lines.ts';
import { typed, typedPhases } from '../../../../support/typed.ts';

export type Change = Partial<BridgeInput>;

/** A sound output stage whose U was read once more; each test changes some of it. */
export const usual: BridgeInput = {
  busVoltage: typed('0.02 V', 'voltage'),
  motorLeads: 'off',
  dcPlus: typedPhases('470k | 472k | 471k'),
  dcMinus: typedPhases('47.0k | 47.2k | 47.1k'),
  plusAgain: typed('470k'),
  minusAgain: typed('47.0k'),
  alsoOnBus: 'nothing',
};

/** The upper rail, with U as read at first unless it is stated again. */
export function plus(row: string, again = row.split('|')[0] ?? ''): Change {
  return { dcPlus: typedPhases(row), plusAgain: typed(again) };
}
export function minus(row: string, again = row.split('|')[0] ?? ''): Change {
  return { dcMinus: typedPhases(row), minusAgain: typed(again) };
}
export const worst = (text: string): Change => ({ worstAgain: typed(text) });

export const assess = (change: Change) => assessBridge({ ...usual, ...change });
export const codes = (change: Change) => assess(change).findings.map(({ code }) => code);
export const steps = (change: Change) => assess(change).next.map(({ code }) => code);
export const find = <Code extends BridgeFinding['code']>(change: Change, code: Code) =>
  found(assess(change).findings, code);

const ofSound = ['bus-discharged pass busVoltage', 'rail-balanced pass minusU minusV minusW', 'bridge-passed note'];

/** What is said besides that the bus is discharged, the lower rail is balanced and the stage passed. */
export const said = (change: Change) =>
  assess(change)
    .findings.map(line)
    .filter((one) => !ofSound.includes(one));
