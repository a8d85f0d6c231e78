import type { LockoutAnswer } from '../../visit/steps/lockout/question.ts';
import type { Answers, AskedStepId } from '../../visit/steps/questions.ts';
import type { RetryAnswer } from '../../visit/steps/retry.ts';
import type { Machine } from '../case/machine.ts';
import { leadsOff, reconnected } from '../simulator/axis-state.ts';
import type { Reach } from '../simulator/trip.ts';
import { busDead, provenDead } from './prove-dead.ts';

const done = { done: true };

const lockOut = (machine: Machine): LockoutAnswer => ({
  lockedOut: true,
  waited: true,
  meterProved: true,
  peProved: true,
  ...provenDead(machine),
});

const retry = (machine: Machine, reach: Reach): RetryAnswer => ({
  powerAllowed: true,
  result: machine.retry(reach) ? 'trips' : 'no-trip',
});

function supported(machine: Machine) {
  machine.support();
  return done;
}

/** What the robot does at each step, and the answer that it gives. */
export const plainAnswers: { [Id in AskedStepId]: (machine: Machine) => Answers[Id] } = {
  'find-drive': () => ({ observation: 'looked', axesOnDrive: 3, indicatedAxis: 2 }),
  symptom: ({ axis, canFall }) => ({ when: axis.moment, gravityLoaded: canFall ? 'yes' : 'no' }),
  'lockout-1': lockOut,
  'lockout-2': lockOut,
  'lockout-3': lockOut,
  'prove-again': lockOut,
  'bus-again': (machine) => ({ meterProved: true, busVoltage: busDead(machine, []) }),
  inspect: (machine) => {
    machine.handsOn();
    return { reseated: 'yes', seen: machine.axis.seen };
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
  'connect-pe': (machine) => {
    machine.change((state) => ({ ...state, driveEnd: { ...state.driveEnd, PE: true } }));
    return done;
  },
  reconnect: (machine) => {
    machine.change(reconnected);
    return done;
  },
  'retry-all': (machine) => retry(machine, 'all'),
};
