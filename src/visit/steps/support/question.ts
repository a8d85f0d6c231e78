import { limitValue } from '../../../kernel/limits.ts';
import { formatRounded } from '../../../kernel/reading/format-reading.ts';
import { askDone, type DoneAnswer } from '../done.ts';
import type { Question } from '../question.ts';

const pause = () => formatRounded(limitValue('work-pause'), 'min');

export const supportAxis: Question<DoneAnswer> = {
  title: 'Support every axis that can fall',
  instructions: [
    'Name each axis that this enable releases: those of this drive, and those of a group that is enabled together. Not only the one that tripped.',
    'By your site’s procedure, bring the load of each that can fall to rest on a prop, pin or block, so that it can’t fall with its brake open.',
    'Nobody is below one while its brake alone holds it. Have a second look.',
  ],
  why: 'One enable opens all their brakes. A trip then switches off every stage of the drive, and a neighbour falls that had no fault.',
  when: 'Before anything is touched or switched on, if an axis can fall.',
  caution: 'A hanging axis kills. Nobody below it, ever.',
  danger: true,
  ...askDone,
};

export const supportAgain: Question<DoneAnswer> = {
  title: 'Look at every support again',
  instructions: [
    'Go to each axis that can fall. Its load still rests on its prop, pin or block, and nobody has moved it.',
    'If it does not, support it again before anything else.',
  ],
  why: `The supports were seen in an earlier stretch of work. Since then there was a break of more than ${pause()}, another day, another device, or a clock that was set back.`,
  when: `After a break of more than ${pause()}, on another day or another device, if an axis can fall.`,
  caution: 'A hanging axis kills. Nobody below it, ever.',
  danger: true,
  ...askDone,
};
