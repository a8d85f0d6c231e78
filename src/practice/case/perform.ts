import { phases } from '../../kernel/electrics/phases.ts';
import type { AxisState, Core } from '../simulator/axis-state.ts';
import type { Reach } from '../simulator/trip.ts';
import type { Action, Joint, PlainAct, Refusal, Result } from './action.ts';
import { bondedExcept } from './bonds.ts';
import { labelSeconds, type World } from './world.ts';

const done: Result = { code: 'done' };

/** Does one act, and tells what a person sees of it. What can't be done changes nothing. */
export function perform(world: World, action: Action): Result {
  const why = refusal(world, action);
  if (why !== undefined) return { code: 'refused', why };
  switch (action.act) {
    case 'join':
      world.change((state) => joined(state, action.joint, action.on));
      return done;
    case 'bond':
      world.change((state) => ({ ...state, jumpers: action.except ? bondedExcept(action.except) : [] }));
      return done;
    case 'measure':
      return { code: 'reading', shown: world.measure(action.mode, action.red, action.black, action.setting) };
    default:
      return plain(world, action.act);
  }
}

function plain(world: World, act: PlainAct): Result {
  switch (act) {
    case 'switch-off':
      world.switchOff();
      return done;
    case 'lock-out':
    case 'take-lock-off':
      world.lockedOut = act === 'lock-out';
      return done;
    case 'prove-meter':
      world.meterProved = true;
      return done;
    case 'wait-minute':
    case 'wait-label':
      world.wait(act === 'wait-label' ? labelSeconds : 60);
      return done;
    case 'wait-room-temperature':
      world.reachRoomTemperature();
      return done;
    case 'support':
    case 'take-support-away':
      world.support(act === 'support');
      return done;
    case 'look':
      world.handsOn();
      return { code: 'seen', seen: world.axis.seen };
    case 'mechanics':
      world.handsOn();
      return { code: 'moves-freely' };
    case 'dry-connector':
      world.dryConnectors();
      return done;
    case 'thermometer':
      return { code: 'temperature', celsius: Math.round(world.state.windingCelsius) };
    case 'switch-on':
    case 'reset':
      return power(world, 'power');
    case 'enable':
      return power(world, 'enable');
    case 'run':
      return power(world, 'all');
  }
}

function power(world: World, reach: Reach): Result {
  return { code: world.power(reach) ? 'tripped' : 'no-trip' };
}

function refusal({ state, lockedOut, tripped }: World, action: Action): Refusal | undefined {
  switch (action.act) {
    case 'switch-off':
      return state.supply ? undefined : 'power-is-off';
    case 'lock-out':
      if (lockedOut) return 'lock-is-on';
      return state.supply ? 'power-is-on' : undefined;
    case 'take-lock-off':
      return lockedOut ? undefined : 'no-lock';
    case 'switch-on':
      if (lockedOut) return 'lock-is-on';
      return state.supply ? 'power-is-on' : undefined;
    case 'reset':
      return state.supply ? undefined : 'power-is-off';
    case 'enable':
    case 'run':
      if (!state.supply) return 'power-is-off';
      return tripped ? 'trip-stands' : undefined;
    case 'bond':
      return phases.some((phase) => state.driveEnd[phase]) ? 'leads-are-on' : undefined;
    default:
      return undefined;
  }
}

function joined(state: AxisState, joint: Joint, on: boolean): AxisState {
  const { driveEnd } = state;
  switch (joint) {
    case 'leads':
      return { ...state, driveEnd: { ...driveEnd, U: on, V: on, W: on } };
    case 'motor-plug':
      return { ...state, motorEnd: { U: on, V: on, W: on, PE: on, screen: on } };
    case 'feedback-drive':
      return { ...state, feedbackAtDrive: on };
    case 'feedback-device':
      return { ...state, feedbackAtDevice: on };
    default:
      return { ...state, driveEnd: { ...driveEnd, [joint.slice('lead-'.length) as Core]: on } };
  }
}
