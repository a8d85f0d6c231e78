import { askDone, type DoneAnswer } from '../done.ts';
import type { Question } from '../question.ts';
import { askRetryAll, betweenTries, enableCaution, lowLimits, type RetryAnswer } from '../retry.ts';

export const connectPe: Question<DoneAnswer> = {
  title: 'Put the PE core back on the drive',
  instructions: [
    'Locked out, discharge the winding. Then put the PE core of the motor cable back on the drive, and check it by pulling.',
    'U, V and W stay off, their ends apart and insulated.',
  ],
  why: 'The PE core came off for the insulation test. With power on, the motor frame needs it.',
  when: 'Before any step with power, if the insulation was tested.',
  undone: 'The insulation was tested after this, and the PE core comes off for it. Connect PE again.',
  ...askDone,
};

export const reconnect: Question<DoneAnswer> = {
  title: 'Connect everything again',
  instructions: [
    'Discharge the winding. Take the idle cores off PE first, and put each back where its mark says.',
    'Connect PE and the screen, then U, V and W, as they were, of every axis that is off.',
    'Plug in feedback, brake and sensors again. An axis that is enabled without its feedback can run away.',
    'Connect braking resistor and DC link again, if they came off.',
    'Check every terminal by pulling, and close the covers.',
  ],
  why: 'Every measurement passed, so the axis may be tried as a whole.',
  when: 'If every measurement passes.',
  undone: 'The insulation step was changed after this. PE and leads may be off: connect them again.',
  ...askDone,
};

export const retryAll: Question<RetryAnswer> = {
  title: 'Try the axis',
  instructions: [
    lowLimits,
    'Read the position: it must be where the axis stands. No motion is commanded against a pin or a prop.',
    'If the axis can fall: it is still on its support. Enable once: no trip, no jerk, no hum that grows. On the support nothing proves the brake; the support goes only by your site’s procedure.',
    'Move slowly, then as the machine does, in the state in which it trips: warm, at that position, with that load. Do it as often as the note below says.',
    'If the same message comes, stop trying. Write down when it came. Switch off.',
    betweenTries,
  ],
  why: 'If it trips though every check passes, these measurements do not find the cause, and no part is named. If it stays away often enough, the readings are your baseline.',
  when: 'If every measurement passes.',
  caution: enableCaution,
  ...askRetryAll,
};
