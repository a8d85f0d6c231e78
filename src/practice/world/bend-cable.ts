import { assessBendTest } from '../../calculators/bend-test/rule/assess.ts';
import { type BendInput, type LoopId, loopIds, type Sweep } from '../../calculators/bend-test/rule/input.ts';
import { type Phase, type Phases, phases } from '../../kernel/electrics/phases.ts';
import { missing, type Reading, volts } from '../../kernel/reading/reading.ts';
import { answerOf, type BendTestAnswer } from '../../visit/steps/bend-test/answer.ts';
import { typedBack } from '../robot/measure-rows.ts';
import { type AxisState, bondedExcept, cableFree, type IdleCore } from '../simulator/axis-state.ts';
import type { FieldMachine } from './field-machine.ts';

const notMoved: Sweep = { rest: missing, lowest: missing, highest: missing, after: missing };
const notRead: Phases<Reading> = { U: missing, V: missing, W: missing };

/** The tips of each loop at the drive's end. The feedback's is joined at its device. */
const tips: Record<LoopId, readonly [string, string]> = {
  UV: ['cable.drive.U', 'cable.drive.V'],
  VW: ['cable.drive.V', 'cable.drive.W'],
  WU: ['cable.drive.W', 'cable.drive.U'],
  PE: ['cable.drive.PE', 'cable.drive.U'],
  screen: ['cable.drive.screen', 'cable.drive.U'],
  brake: ['cable.drive.brake+', 'cable.drive.brake-'],
  sensor: ['cable.drive.sensor+', 'cable.drive.sensor-'],
  feedback: ['feedback.cable.plus', 'feedback.cable.minus'],
};

/**
 * The bend test of this person: each loop at rest and at the place where the fault shows, if the hand finds it, a second
 * time if it jumped; then 500 V at rest in three positions, the third of them that place. Who finds the place finds it
 * again.
 */
export function bendCable(machine: FieldMachine): BendTestAnswer {
  if (machine.slips.notLooked) return { result: 'not-done', again: false };
  const before = machine.state;
  const { idleCores } = machine.axis.parameters;
  const pairs = (['brake', 'sensor'] as const).filter((pair) => idleCores.includes(`${pair}+` as IdleCore));
  const used = loopIds.filter((id) => (id !== 'brake' && id !== 'sensor') || pairs.some((pair) => pair === id));
  const loops = movement(machine, used);
  const first: BendInput = {
    ...{ end: 'off', meter: 'hold', moved: 'twice', screen: 'fitted', movedAgain: 'not-stated', whileOn: 'at-rest' },
    idle: pairs.length === 2 ? 'both' : (pairs[0] ?? 'none'),
    loops,
    again: movement(machine, []),
    testVoltage: volts(machine.instruments.insulation.volts),
    positions: [false, false, true].map((atPlace) => position(machine, atPlace)),
    badAgain: notRead,
    metres: missing,
  };
  const { repeat, findings } = assessBendTest(first);
  const leaks = findings.some(({ code }) => code === 'bend-leaks');
  const second: BendInput = {
    ...first,
    ...(repeat.length > 0 && { again: movement(machine, repeat), movedAgain: 'cable' }),
    ...(leaks && { badAgain: position(machine, true) }),
  };
  machine.change((state) => ({ ...before, busVolts: state.busVolts }));
  const answer = answerOf(assessBendTest(second));
  return answer.result === 'undecided' ? { ...answer, leftOpen: true } : answer;
}

/** Each of these loops at rest, moved, and at rest again. */
function movement(machine: FieldMachine, used: readonly LoopId[]): Record<LoopId, Sweep> {
  const sweep = (id: LoopId): Sweep => {
    if (!used.includes(id)) return notMoved;
    const read = (bent: boolean) => {
      machine.change((state) => ({ ...joined(state, id), bent }));
      return typedBack(machine.measure('ohms', ...tips[id], { zeroed: true }));
    };
    const rest = read(false);
    const moved = read(machine.slips.bendShows);
    const after = read(false);
    const held = [rest, moved, after];
    const by = (sign: 1 | -1) => held.reduce((one, other) => (sign * (ohms(other) - ohms(one)) > 0 ? other : one));
    return { rest, lowest: by(-1), highest: by(1), after };
  };
  return Object.fromEntries(loopIds.map((id) => [id, sweep(id)])) as Record<LoopId, Sweep>;
}

/** The cable alone, its cores joined at the motor's end; for the feedback its two cores at the device. */
function joined(state: AxisState, id: LoopId): AxisState {
  if (id === 'feedback') {
    // With one cable for all, its cores end in the motor connector.
    const motorEnd = { ...cableFree(state).motorEnd, U: true };
    const jumpers: [string, string][] = [['feedback.device.plus', 'feedback.device.minus']];
    return { ...cableFree(state), motorEnd, feedbackAtDrive: false, feedbackAtDevice: true, jumpers };
  }
  const [one, other] = tips[id].map((tip) => tip.replace('drive', 'motor')) as [string, string];
  return { ...cableFree(state), jumpers: [[one, other]] };
}

/** Insulation of each power core to all other cores and PE, the cable fixed. */
function position(machine: FieldMachine, atPlace: boolean): Phases<Reading> {
  const read = (phase: Phase) => {
    machine.change((state) => ({
      ...cableFree(state),
      ...{ bent: atPlace && machine.slips.bendShows, idleCores: 'to-pe', jumpers: bondedExcept(phase) },
    }));
    return typedBack(machine.measure('insulation', `cable.drive.${phase}`, 'ground', { discharge: true }));
  };
  const [U, V, W] = phases.map(read) as [Reading, Reading, Reading];
  return { U, V, W };
}

/** Open is more than any figure. */
function ohms(reading: Reading): number {
  if (reading.kind === 'value') return reading.value;
  return reading.kind === 'over' ? (reading.atLeast ?? Number.POSITIVE_INFINITY) : 0;
}
