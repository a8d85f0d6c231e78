import { assessInputCircuit } from '../../../../../src/calculators/input-circuit/rule/assess.ts';
import type { InputCircuitInput, Line, Lines, Side } from '../../../../../src/calculators/input-circuit/rule/input.ts';
import { ohms, type Reading, volts } from '../../../../../src/kernel/reading/reading.ts';

export const ol: Reading = { kind: 'over', unit: 'V' };
export const three = (L1: Reading, L2 = L1, L3 = L1): Lines<Reading> => ({ L1, L2, L3 });
export const drop = volts(0.46, 0.001);

export const sound: InputCircuitInput = {
  busVoltage: volts(0.03),
  supplyLeads: 'off',
  others: 'off',
  lines: 'three',
  fuses: three(ohms(0.2, 0.1)),
  plusConducting: three(drop),
  plusBlocking: three(ol),
  minusConducting: three(drop),
  minusBlocking: three(ol),
  linkConducting: volts(0.85, 0.001),
  linkBlocking: ol,
  climb: 'climbs',
  precharge: 'reached',
  prechargePlate: ohms(47),
  prechargeOhms: ohms(47.8, 0.1),
  again: false,
};

export type Change = Partial<InputCircuitInput>;
export const assess = (change: Change) => assessInputCircuit({ ...sound, ...change });

export const allLines: readonly Line[] = ['L1', 'L2', 'L3'];
export const pairLimits = 'diode-short diode-blocking';

/** The two readings of each of these diodes. */
export const pairs = (side: Side, lines: readonly Line[] = allLines) =>
  lines.map((line) => `${side}Conducting${line} ${side}Blocking${line}`).join(' ');

/** The findings of the sound input part by part, each as a line with the limits that it rests on. */
const usual = {
  bus: ['bus-discharged pass busVoltage: resistance-residual-voltage'],
  stated: [] as string[],
  fuses: ['fuses-conduct pass fuseL1 fuseL2 fuseL3: tips-together'],
  rectifier: [`rectifier-sound pass ${pairs('plus')} ${pairs('minus')}: ${pairLimits}`, 'lines-not-judged caution'],
  link: [`link-sound pass linkConducting linkBlocking: ${pairLimits}`],
  climb: ['link-climbs pass climb'],
  precharge: [
    'precharge-fits pass prechargeOhms prechargePlate: precharge-tolerance precharge-off-plate tips-together',
  ],
};

/** All lines of an input that differs from the sound one in these parts. */
export const linesWith = (instead: Partial<typeof usual>) => Object.values({ ...usual, ...instead }).flat();
