import { phases } from '../../kernel/electrics/phases.ts';
import { type AxisState, bondedExcept, type Core } from '../simulator/axis-state.ts';
import type { Reach } from '../simulator/trip.ts';
import type { Action, Joint, PlainAct, Refusal, Result } from './action.ts';
import { labelSeconds, type Machine } from './machine.ts';

const done: Result = { code: 'done' };

/** Does one act and returns what a person sees of it. An impossible act changes nothing. */
export function perform(machine: Machine, action: Action): Result {
  const why = refusal(machine, action);
  if (why !== undefined) return { code: 'refused', why };
  switch (action.act) {
    case 'join':
      machine.change((state) => joined(state, action.joint, action.on));
      return done;
    case 'bond':
      machine.change((state) => ({ ...state, jumpers: action.except ? bondedExcept(action.except) : [] }));
      return done;
    case 'measure':
      return { code: 'reading', shown: machine.measure(action.mode, action.red, action.black, action.setting) };
    default:
      return plain(machine, action.act);
  }
}

function plain(machine: Machine, act: PlainAct): Result {
  switch (act) {
    case 'switch-off':
      machine.switchOff();
      return done;
    case 'lock-out':
    case 'take-lock-off':
      machine.lockedOut = act === 'lock-out';
      return done;
    case 'prove-meter':
      machine.meterProved = true;
      return done;
    case 'wait-minute':
    case 'wait-label':
      machine.wait(act === 'wait-label' ? labelSeconds : 60);
      return done;
    case 'wait-room-temperature':
      machine.reachRoomTemperature();
      return done;
    case 'support':
    case 'take-support-away':
      machine.support(act === 'support');
      return done;
    case 'look':
      machine.handsOn();
      return { code: 'seen', seen: machine.axis.seen };
    case 'mechanics':
      machine.handsOn();
      return { code: 'moves-freely' };
    case 'dry-connector':
      machine.dryConnectors();
      return done;
    case 'idle-cores-to-pe':
      machine.change((state) => ({ ...state, idleCores: 'to-pe' }));
      return done;
    case 'bend-cable':
    case 'let-cable-go':
      machine.change((state) => ({ ...state, bent: act === 'bend-cable' }));
      return done;
    case 'thermometer':
      return { code: 'temperature', celsius: Math.round(machine.shownCelsius) };
    case 'switch-on':
    case 'reset':
      return power(machine, 'power');
    case 'enable':
      return power(machine, 'enable');
    case 'run':
      return power(machine, 'all');
  }
}

function power(machine: Machine, reach: Reach): Result {
  machine.power(reach);
  if (machine.lastTrip === undefined) return { code: 'no-trip' };
  return { code: machine.lastTrip.message === 'same' ? 'tripped' : 'other-message' };
}

function refusal({ state, lockedOut, tripped }: Machine, action: Action): Refusal | undefined {
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
    case 'idle-cores':
      return { ...state, idleCores: on ? 'connected' : 'free' };
    case 'braking-resistor':
      return { ...state, brakingResistor: on };
    case 'dc-link':
      return { ...state, dcLink: on };
    case 'neighbour-leads':
      return { ...state, neighbourLeads: on };
    case 'neighbour-feedback':
      return { ...state, neighbourFeedback: on };
    case 'filter':
      return { ...state, filter: on };
    default:
      return { ...state, driveEnd: { ...driveEnd, [joint.slice('lead-'.length) as Core]: on } };
  }
}
