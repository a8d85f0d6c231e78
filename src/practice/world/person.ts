import type { Answers } from '../../visit/steps/questions.ts';
import type { ToldStepId } from '../robot/plain-answers.ts';
import { stripped } from '../simulator/axis-state.ts';
import { bendCable } from './bend-cable.ts';
import { measureBraking, measureIdleCores } from './field-acts.ts';
import type { FieldMachine } from './field-machine.ts';
import { tryAgain } from './tries.ts';

/** What a person of the field does and writes down at a step; `act` does what the robot does and returns its answer. */
type Retold = { [Id in ToldStepId]?: (act: () => Answers[Id], machine: FieldMachine) => Answers[Id] };

const controlOff = ({ slips }: FieldMachine) => slips.told === 'control-off';

const retold: Retold = {
  'find-drive': (act, { slips }) =>
    slips.notPermitted ? { observation: 'not-permitted', axesOnDrive: act().axesOnDrive } : act(),
  symptom: (_, { slips, canFall }) => ({
    when: slips.told,
    gravityLoaded: canFall ? 'yes' : 'no',
    changed: slips.changeTold,
    ...(slips.changeTold === 'something' && slips.changedThing && { changedThing: slips.changedThing }),
    ...slips.count,
  }),
  'after-change': (act, machine) => {
    const { compares } = machine.slips;
    if (compares === 'not') return { found: 'not-compared' };
    if (compares === 'sees' && machine.putRight()) return { found: 'corrected' };
    return act();
  },
  mechanics: (act, { slips, axis }) =>
    slips.notLooked ? { ...act(), found: 'not-checked' } : { ...act(), found: axis.feel },
  'retry-feedback-off': (_, machine) => tryAgain(machine, 'power'),
  'retry-device-end': (_, machine) => tryAgain(machine, 'power'),
  'retry-feedback-on': (_, machine) => tryAgain(machine, 'power'),
  'retry-leads-off': (_, machine) => tryAgain(machine, 'enable'),
  'strip-drive': (_, machine) => {
    if (machine.slips.stripNotAllowed) return { state: 'not-allowed' };
    machine.change((state) => ({ ...stripped(state), feedbackAtDrive: !controlOff(machine) && state.feedbackAtDrive }));
    return { state: 'all-off' };
  },
  'retry-stripped': (_, machine) => tryAgain(machine, controlOff(machine) ? 'power' : 'enable'),
  braking: (_, machine) => measureBraking(machine),
  'bend-test': (_, machine) => bendCable(machine),
  'idle-cores': (_, machine) => measureIdleCores(machine),
  // Who tries once tries it cold, and says so.
  'retry-all': (_, machine) => ({ ...tryAgain(machine, 'all', true), asItTrips: !machine.slips.triedOnce }),
};

/** The step as this person does it, with the slips and with what the robot can't see. */
export function asTold<Id extends ToldStepId>(id: Id, act: () => Answers[Id], machine: FieldMachine): Answers[Id] {
  const tell = retold[id] as ((act: () => Answers[Id], machine: FieldMachine) => Answers[Id]) | undefined;
  return tell === undefined ? act() : tell(act, machine);
}
