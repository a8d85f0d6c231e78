import { Machine } from '../case/machine.ts';

/** The same machine without its fault, in its present state: what an earlier record or a sound sister would show. */
export function soundMachine({ axis, instruments, state, random }: Machine): Machine {
  const sound = {
    ...axis,
    leaks: [],
    broken: [],
    contacts: [],
    motor: { shortedShare: {}, insulationFactor: 1 },
  };
  const machine = new Machine(sound, instruments, state.windingCelsius, state.airCelsius, random);
  machine.state = state;
  return machine;
}
