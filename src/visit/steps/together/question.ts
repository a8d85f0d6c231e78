import { askDone, type DoneAnswer } from '../done.ts';
import type { Question } from '../question.ts';
import { askRetry, enableCaution, type RetryAnswer } from '../retry.ts';

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
    'Discharge the winding. Connect PE and the screen first, then U, V and W, as they were.',
    'Plug in feedback, brake and sensors again. An axis that is enabled without its feedback can run away.',
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
    'If the axis can fall: it is still on its support. Enable once: no trip, no jerk, no hum that grows. On the support nothing proves the brake; the support goes only by your site’s procedure.',
    'Move slowly, then as the machine does.',
    'See whether it trips again. Switch off.',
  ],
  why: 'If the trip goes on though every check passes, the drive is replaced. If it stays away, the readings are your baseline.',
  when: 'If every measurement passes.',
  caution: enableCaution,
  ...askRetry,
};
