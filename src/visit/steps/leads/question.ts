import { askDone, type DoneAnswer } from '../done.ts';
import type { Question } from '../question.ts';
import { askRetry, betweenTries, enableCaution, lowLimits, type RetryAnswer } from '../retry.ts';

export const disconnectLeads: Question<DoneAnswer> = {
  title: 'Take the motor leads off the drive',
  instructions: [
    'Check the lockout once more, then take U, V and W off the drive.',
    'If the drive serves several axes, take U, V and W of all of them off: one enable often starts every stage.',
    'The PE cores stay on for now: with power on, the motor frames need them.',
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
    'Close the covers. The leads of every axis of this drive are off, apart and insulated, and the PE cores are on.',
    lowLimits,
    'Switch on, release the stop, enable the axis once.',
    'See whether the same message comes, and when. Switch off. Do it as often as the note below says.',
    betweenTries,
  ],
  why: 'Trips again: the drive is suspect, and so is whatever else is still on it. No trip is a good sign and no proof. Another message says nothing: the drive may have missed its motor.',
  when: 'If it trips when the axes are enabled, and the six readings and the winding pass.',
  caution: enableCaution,
  ...askRetry,
};
