import { limitValue } from '../../kernel/limits.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { triesNeeded } from '../../visit/guide/tries.ts';
import type { LockoutAnswer } from '../../visit/steps/lockout/question.ts';
import type { Answers, AskedStepId } from '../../visit/steps/questions.ts';
import type { RetryAnswer } from '../../visit/steps/retry.ts';
import type { Machine } from '../case/machine.ts';
import { leadsOff, reconnected } from '../simulator/axis-state.ts';
import type { Reach } from '../simulator/trip.ts';
import { busDead, provenDead } from './prove-dead.ts';

const done = { done: true };

function lockOut(machine: Machine): LockoutAnswer {
  const first = provenDead(machine);
  const { busVoltage } = first;
  const low = busVoltage.kind === 'value' && Math.abs(busVoltage.value) < limitValue('touch-voltage');
  const proved = low ? first : provenDead(discharged(machine));
  return { lockedOut: true, waited: true, meterProved: true, peProved: true, ...proved };
}

/** A bus that stands still is discharged with the device and the procedure of the drive's manual. */
function discharged(machine: Machine): Machine {
  const { lowerBusVolts: _lower, ...state } = machine.state;
  machine.state = { ...state, busVolts: 0 };
  return machine;
}

/**
 * Tries as often as the guide needs, and counts. With the motor on the drive it stops at the first trip: another one would
 * only hurt. `stage`: when the message comes, if it comes.
 */
function retry(machine: Machine, reach: Reach, stopAtTrip = false): RetryAnswer {
  const { came, of } = told(machine);
  const needed = triesNeeded(came, of) ?? 1;
  let tries = 0;
  let trips = 0;
  let stage: RetryAnswer['stage'];
  do {
    tries += 1;
    trips += machine.retry(reach, tries > 1) ? 1 : 0;
    stage = machine.lastTrip?.stage ?? stage;
  } while (tries < needed && !(stopAtTrip && trips > 0));
  const result = trips > 0 ? 'trips' : 'no-trip';
  return { powerAllowed: true, result, tries, trips, ...(trips > 0 && stage !== undefined && { stage }) };
}

/** How often it came, as the operator tells it: out of five starts, and at least once, since it did trip. */
function told({ axis }: Machine): { came: number; of: number } {
  const of = 5;
  const most = Math.max(...axis.trips.map(({ every }) => every));
  return { came: Math.max(1, Math.round(most * of)), of };
}

function supported(machine: Machine) {
  machine.support();
  return done;
}

/** Steps that are told as a whole: what is asked, and the cable that a hand bends. */
export type ToldStepId = AskedStepId | 'bend-test';

/** What the robot does at each step, and the answer that it gives. */
export const plainAnswers: { [Id in ToldStepId]: (machine: Machine) => Answers[Id] } = {
  'find-drive': () => ({ observation: 'looked', axesOnDrive: 3, indicatedAxis: 2 }),
  symptom: (machine) => ({
    when: machine.axis.moment,
    gravityLoaded: machine.canFall ? 'yes' : 'no',
    ...told(machine),
    changed: 'nothing',
  }),
  // The simulated axis has no recorder.
  recording: () => ({ speaksFor: [], read: false }),
  'lockout-1': lockOut,
  'lockout-2': lockOut,
  'lockout-3': lockOut,
  'prove-again': lockOut,
  'bus-again': (machine) => ({ meterProved: true, busVoltage: busDead(machine, []) }),
  inspect: (machine) => {
    machine.handsOn();
    return { reseated: 'yes', seen: machine.axis.seen };
  },
  // Nothing was changed on the axes of the simulator that the robot meets; a person of the field tells otherwise.
  'after-change': (machine) => {
    machine.handsOn();
    return { found: 'same' };
  },
  'unplug-feedback': (machine) => {
    machine.change((state) => ({ ...state, feedbackAtDrive: false }));
    return done;
  },
  'retry-feedback-off': (machine) => retry(machine, 'power'),
  'unplug-device-end': (machine) => {
    machine.change((state) => ({ ...state, feedbackAtDrive: true, feedbackAtDevice: false }));
    return done;
  },
  'retry-device-end': (machine) => retry(machine, 'power'),
  'plug-feedback': (machine) => {
    machine.change((state) => ({ ...state, feedbackAtDrive: true, feedbackAtDevice: true }));
    return done;
  },
  'retry-feedback-on': (machine) => retry(machine, 'power'),
  mechanics: (machine) => {
    machine.handsOn();
    return { found: 'free' };
  },
  'disconnect-leads': (machine) => {
    machine.change(leadsOff);
    return done;
  },
  'support-axis': supported,
  'support-again': supported,
  'retry-leads-off': (machine) => retry(machine, 'enable'),
  // The drive of the simulator has one axis, and neither braking resistor nor neighbours.
  'strip-drive': (machine) => {
    machine.change((state) => ({
      ...state,
      driveEnd: { ...state.driveEnd, U: false, V: false, W: false },
      feedbackAtDrive: machine.axis.moment !== 'control-off',
    }));
    return { state: 'all-off' };
  },
  'retry-stripped': (machine) => retry(machine, machine.axis.moment === 'control-off' ? 'power' : 'enable'),
  braking: (machine) => {
    machine.handsOn();
    return { fitted: 'none', plate: missing, ohms: missing, toPe: missing, toBus: missing, again: false };
  },
  // A fault of the simulated cable shows at rest too, and the insulation test finds it.
  'bend-test': (machine) => {
    machine.handsOn();
    return { result: 'steady', again: true };
  },
  // The simulated cable has U, V, W, PE and its screen.
  'idle-cores': (machine) => {
    machine.handsOn();
    return { cores: 'none', lowest: missing };
  },
  'connect-pe': (machine) => {
    machine.change((state) => ({ ...state, driveEnd: { ...state.driveEnd, PE: true } }));
    return done;
  },
  reconnect: (machine) => {
    machine.change(reconnected);
    return done;
  },
  'retry-all': (machine) => ({ ...retry(machine, 'all', true), asItTrips: true }),
};
