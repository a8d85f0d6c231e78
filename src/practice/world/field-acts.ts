import { type Phase, phases } from '../../kernel/electrics/phases.ts';
import { missing, type Reading } from '../../kernel/reading/reading.ts';
import type { BendTestAnswer } from '../../visit/steps/bend-test/question.ts';
import type { BrakingAnswer } from '../../visit/steps/braking/question.ts';
import type { IdleCoresAnswer } from '../../visit/steps/idle-cores/question.ts';
import { typedBack } from '../robot/measure-rows.ts';
import { bondedExcept, cableFree, cores } from '../simulator/axis-state.ts';
import type { FieldMachine } from './field-machine.ts';

const zeroed = { zeroed: true };
const discharged = { discharge: true };

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

/** Core by core while the cable is bent, then its insulation bent. A fault of the cable does not always show. */
export function bendCable(machine: FieldMachine): BendTestAnswer {
  const { slips } = machine;
  if (slips.notLooked) return { result: 'not-done', again: false };
  const before = machine.state;
  const bent = slips.bendShows;
  /** Out on one phase and back on the next, joined at the motor end. A loop that is open at rest is no matter of bending. */
  const isOpen = (phase: Phase, now: boolean): boolean => {
    const back = phases[(phases.indexOf(phase) + 1) % phases.length] as Phase;
    const jumpers: [string, string][] = [[`cable.motor.${phase}`, `cable.motor.${back}`]];
    machine.change((state) => ({ ...cableFree(state), bent: now, jumpers }));
    const loop = machine.measure('ohms', `cable.drive.${phase}`, `cable.drive.${back}`, zeroed);
    return ohms(typedBack(loop)) > openOhms;
  };
  const opens = phases.find((phase) => isOpen(phase, bent) && !isOpen(phase, false));
  const leaks = opens === undefined ? phases.find((phase) => leaksBent(machine, phase, bent)) : undefined;
  const feedback =
    bent && machine.axis.contacts?.some(({ core, condition }) => core.startsWith('feedback') && condition === 'bent');
  machine.change((state) => ({ ...before, busVolts: state.busVolts }));
  if (opens !== undefined) return { result: 'opens', core: 'power', again: true };
  if (leaks !== undefined) return { result: 'leaks', core: 'power', again: true };
  return feedback ? { result: 'opens', core: 'feedback', again: true } : { result: 'steady', again: true };
}

/** A core of some metres has milliohms; what is far above opens. */
const openOhms = 100;
/** Insulation of a sound cable is far above. */
const leakOhms = 1e6;

function leaksBent(machine: FieldMachine, phase: Phase, bent: boolean): boolean {
  machine.change((state) => ({ ...cableFree(state), bent, jumpers: bondedExcept(phase) }));
  return ohms(typedBack(machine.measure('insulation', `cable.drive.${phase}`, 'ground', discharged))) < leakOhms;
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
