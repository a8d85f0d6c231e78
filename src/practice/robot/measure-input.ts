import { assessInputCircuit } from '../../calculators/input-circuit/rule/assess.ts';
import type { InputCircuitInput } from '../../calculators/input-circuit/rule/input.ts';
import { missing } from '../../kernel/reading/reading.ts';
import type { Measuring } from './measuring.ts';

const row = { L1: missing, L2: missing, L3: missing };

const nothing: InputCircuitInput = {
  busVoltage: missing,
  supplyLeads: 'not-stated',
  others: 'not-stated',
  lines: 'three',
  fuses: row,
  plusConducting: row,
  plusBlocking: row,
  minusConducting: row,
  minusBlocking: row,
  linkConducting: missing,
  linkBlocking: missing,
  climb: 'not-stated',
  precharge: 'not-stated',
  prechargePlate: missing,
  prechargeOhms: missing,
  again: false,
};

/** The simulated drive has no model of its input, so nothing is read and the step stays open. */
export function measureInput(): Measuring<ReturnType<typeof assessInputCircuit>> {
  return { assess: () => assessInputCircuit(nothing), improve: () => false };
}
