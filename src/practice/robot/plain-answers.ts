import type { LockoutAnswer } from '../../visit/steps/lockout/question.ts';
import type { Answers, AskedStepId } from '../../visit/steps/questions.ts';
import type { RetryAnswer } from '../../visit/steps/retry.ts';
import type { World } from '../case/world.ts';
import { asFound, leadsOff } from '../simulator/axis-state.ts';
import type { Reach } from '../simulator/trip.ts';
import { busDead, provenDead } from './dead.ts';

const done = { done: true };

const lockOut = (world: World): LockoutAnswer => ({
  lockedOut: true,
  waited: true,
  meterProved: true,
  peProved: true,
  ...provenDead(world),
});

const retry = (world: World, reach: Reach): RetryAnswer => ({
  powerAllowed: true,
  result: world.retry(reach) ? 'trips' : 'no-trip',
});

function supported(world: World) {
  world.support();
  return done;
}

/** What the robot does at each step, and what it says then. */
export const plainAnswers: { [Id in AskedStepId]: (world: World) => Answers[Id] } = {
  'find-drive': () => ({ observation: 'looked', axesOnDrive: 3, indicatedAxis: 2 }),
  symptom: ({ axis }) => ({ when: axis.moment, gravityLoaded: axis.parameters.gravityLoaded ? 'yes' : 'no' }),
  'lockout-1': lockOut,
  'lockout-2': lockOut,
  'lockout-3': lockOut,
  'prove-again': lockOut,
  'bus-again': (world) => ({ meterProved: true, busVoltage: busDead(world, []) }),
  inspect: (world) => {
    world.handsOn();
    return { reseated: 'yes', seen: world.axis.seen };
  },
  'unplug-feedback': (world) => {
    world.change((state) => ({ ...state, feedbackAtDrive: false }));
    return done;
  },
  'retry-feedback-off': (world) => retry(world, 'power'),
  'unplug-device-end': (world) => {
    world.change((state) => ({ ...state, feedbackAtDrive: true, feedbackAtDevice: false }));
    return done;
  },
  'retry-device-end': (world) => retry(world, 'power'),
  'plug-feedback': (world) => {
    world.change((state) => ({ ...state, feedbackAtDrive: true, feedbackAtDevice: true }));
    return done;
  },
  'retry-feedback-on': (world) => retry(world, 'power'),
  mechanics: (world) => {
    world.handsOn();
    return { found: 'free' };
  },
  'disconnect-leads': (world) => {
    world.change(leadsOff);
    return done;
  },
  'support-axis': supported,
  'support-again': supported,
  'retry-leads-off': (world) => retry(world, 'enable'),
  'connect-pe': (world) => {
    world.change((state) => ({ ...state, driveEnd: { ...state.driveEnd, PE: true } }));
    return done;
  },
  reconnect: (world) => {
    world.change((state) => {
      const { driveEnd, motorEnd, feedbackAtDrive, feedbackAtDevice, jumpers } = asFound(0, 0);
      return { ...state, driveEnd, motorEnd, feedbackAtDrive, feedbackAtDevice, jumpers };
    });
    return done;
  },
  'retry-all': (world) => retry(world, 'all'),
};
