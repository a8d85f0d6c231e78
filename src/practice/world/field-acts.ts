import { missing, type Reading } from '../../kernel/reading/reading.ts';
import type { BrakingAnswer } from '../../visit/steps/braking/question.ts';
import type { IdleCoresAnswer } from '../../visit/steps/idle-cores/question.ts';
import { typedBack } from '../robot/measure-rows.ts';
import { cores } from '../simulator/axis-state.ts';
import type { FieldMachine } from './field-machine.ts';

const zeroed = { zeroed: true };

const ohms = (reading: Reading): number => {
  if (reading.kind === 'value') return reading.value;
  return reading.kind === 'over' ? (reading.atLeast ?? Number.POSITIVE_INFINITY) : 0;
};
const lower = (one: Reading, other: Reading): Reading => (ohms(one) <= ohms(other) ? one : other);

/** Each idle core to U, V, W, PE and screen; afterwards all of them are on the protective bar. */
export function measureIdleCores(machine: FieldMachine): IdleCoresAnswer {
  const { idleCores } = machine.axis.parameters;
  if (machine.slips.notLooked) return { cores: 'not-done', lowest: missing };
  if (idleCores.length === 0) {
    machine.handsOn();
    return { cores: 'none', lowest: missing };
  }
  machine.change((state) => ({ ...state, idleCores: 'free' }));
  const readings = idleCores.flatMap((idle) =>
    cores.map((core) => typedBack(machine.measure('ohms', `cable.drive.${idle}`, `cable.drive.${core}`))),
  );
  machine.change((state) => ({ ...state, idleCores: 'to-pe' }));
  return { cores: 'measured', lowest: readings.reduce(lower) };
}

/** Resistor and switch, both leads of the resistor off; what looks odd is read a second time. */
export function measureBraking(machine: FieldMachine): BrakingAnswer {
  const { brakingOhms } = machine.axis.parameters;
  const nothing = { plate: missing, ohms: missing, toPe: missing, toBus: missing, again: false };
  if (machine.slips.notLooked) return { fitted: 'not-done', ...nothing };
  if (brakingOhms === undefined) {
    machine.handsOn();
    return { fitted: 'none', ...nothing };
  }
  machine.change((state) => ({ ...state, brakingResistor: false }));
  const read = (red: string, black: string, setting = {}) => typedBack(machine.measure('ohms', red, black, setting));
  return {
    fitted: 'external',
    plate: { kind: 'value', value: Math.round(brakingOhms), unit: 'Ω' },
    ohms: read('braking.plus', 'braking.minus', zeroed),
    toPe: lower(read('braking.plus', 'ground'), read('braking.minus', 'ground')),
    toBus: read('braking.chopper', 'DC-'),
    again: true,
  };
}
