import type { Answers, AskedStepId } from '../../visit/steps/questions.ts';
import type { RetryAnswer } from '../../visit/steps/retry.ts';
import type { FieldMachine } from './field-machine.ts';

/** What a person of the field writes down instead of the robot's answer. */
type Retold = { [Id in AskedStepId]?: (answer: Answers[Id], machine: FieldMachine) => Answers[Id] };

function retried(answer: RetryAnswer, { lastTrip, slips }: FieldMachine): RetryAnswer {
  if (slips.notPermitted) return { powerAllowed: false, result: 'not-done' };
  if (lastTrip?.message !== 'other') return answer;
  const mistaken = slips.otherMessageNoted && lastTrip.stage === 'at-enable';
  return { ...answer, result: mistaken ? 'trips' : 'no-trip' };
}

const retold: Retold = {
  'find-drive': (answer, { slips }) =>
    slips.notPermitted ? { observation: 'not-permitted', axesOnDrive: answer.axesOnDrive } : answer,
  symptom: (answer, { slips }) => ({ ...answer, when: slips.told }),
  mechanics: (_, { slips, axis }) => ({ found: slips.notLooked ? 'not-checked' : axis.feel }),
  'retry-feedback-off': retried,
  'retry-device-end': retried,
  'retry-feedback-on': retried,
  'retry-leads-off': retried,
  'retry-all': retried,
};

/** The answer as this person gives it, with the slips and with what the robot can't see. */
export function asTold<Id extends AskedStepId>(id: Id, answer: Answers[Id], machine: FieldMachine): Answers[Id] {
  const tell = retold[id] as ((answer: Answers[Id], machine: FieldMachine) => Answers[Id]) | undefined;
  return tell === undefined ? answer : tell(answer, machine);
}
