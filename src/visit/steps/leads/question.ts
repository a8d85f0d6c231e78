import { askDone, type DoneAnswer } from '../done.ts';
import type { Question } from '../question.ts';
import { askRetry, enableCaution, type RetryAnswer } from '../retry.ts';

export const disconnectLeads: Question<DoneAnswer> = {
  title: 'Take the motor leads off the drive',
  instructions: [
    'Check the lockout once more, then take U, V and W off the drive.',
    'The PE core stays on for now: with power on, the motor frame needs it.',
    'Mark the leads, and keep their ends apart and insulated.',
  ],
  why: 'The windings join U, V and W, so a fault looks balanced while they are on. And an insulation tester must never reach the drive.',
  when: 'Before the retry without motor and before any measurement.',
  undone: 'The leads were put back on after this. Take them off again.',
  ...askDone,
};

export const retryLeadsOff: Question<RetryAnswer> = {
  title: 'Enable with the motor leads off',
  instructions: [
    'Close the covers. The lead ends are apart and insulated, and the PE core is on.',
    'Switch on, release the stop, enable the axis once.',
    'See whether it trips again. Switch off.',
  ],
  why: 'Trips again: the drive is bad, whatever the motor is. No trip is a good sign and no proof.',
  when: 'If it trips when the axes are enabled.',
  caution: enableCaution,
  ...askRetry,
};
