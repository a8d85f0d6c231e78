import type { Answers, AskedStepId } from '../../visit/steps/questions.ts';
import type { RetryAnswer } from '../../visit/steps/retry.ts';
import type { FieldMachine } from './field-machine.ts';

/** What a person of the field does and writes down at a step; `act` does what the robot does and returns its answer. */
type Retold = { [Id in AskedStepId]?: (act: () => Answers[Id], machine: FieldMachine) => Answers[Id] };

function retried(act: () => RetryAnswer, machine: FieldMachine): RetryAnswer {
  const { slips } = machine;
  if (slips.notPermitted) return { powerAllowed: false, result: 'not-done' };
  const answer = act();
  const { lastTrip } = machine;
  if (lastTrip?.message !== 'other') return answer;
  const mistaken = slips.otherMessageNoted && lastTrip.stage === 'at-enable';
  return { ...answer, result: mistaken ? 'trips' : 'no-trip' };
}

const retold: Retold = {
  'find-drive': (act, { slips }) =>
    slips.notPermitted ? { observation: 'not-permitted', axesOnDrive: act().axesOnDrive } : act(),
  symptom: (act, { slips }) => ({ ...act(), when: slips.told }),
  mechanics: (act, { slips, axis }) => (slips.notLooked ? { found: 'not-checked' } : { ...act(), found: axis.feel }),
  'retry-feedback-off': retried,
  'retry-device-end': retried,
  'retry-feedback-on': retried,
  'retry-leads-off': retried,
  'retry-all': retried,
};

/** The step as this person does it, with the slips and with what the robot can't see. */
export function asTold<Id extends AskedStepId>(id: Id, act: () => Answers[Id], machine: FieldMachine): Answers[Id] {
  const tell = retold[id] as ((act: () => Answers[Id], machine: FieldMachine) => Answers[Id]) | undefined;
  return tell === undefined ? act() : tell(act, machine);
}
