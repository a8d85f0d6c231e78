import { Machine } from '../case/machine.ts';
import { asFound } from '../simulator/axis-state.ts';

/**
 * The axis beside it: the same drive, cable and motor, as old and as damp, without a fault. It is locked out and its leads
 * are off. Its readings are those that a technician takes for comparison; what is done to it is not part of this visit.
 */
export function sisterOf({ axis, instruments, state, random }: Machine): Machine {
  const sound = {
    ...axis,
    leaks: [],
    broken: [],
    contacts: [],
    motor: { shortedShare: {}, insulationFactor: 1 },
  };
  const sister = new Machine(sound, instruments, state.windingCelsius, state.airCelsius, random);
  sister.state = { ...asFound(state.windingCelsius, state.airCelsius), axisSupported: true };
  sister.lockOut();
  return sister;
}
