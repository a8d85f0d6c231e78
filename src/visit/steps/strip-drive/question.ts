import { choice, chosen, remark } from '../fields.ts';
import { lineOf, type Question } from '../question.ts';
import { askRetry, betweenTries, enableCaution, lowLimits, type RetryAnswer } from '../retry.ts';

/** `all-off`: nothing is left on the drive but its supplies, and its feedback if the trip comes at the enable. */
export interface StripAnswer {
  state: 'all-off' | 'some-left' | 'not-allowed';
}

const state = choice<StripAnswer['state']>('state', 'Is everything off the drive?', {
  'all-off': 'Everything in the list is off',
  'some-left': { label: 'Something had to stay on', hint: 'Write down what.' },
  'not-allowed': { label: 'Not done', hint: 'The manual does not allow it, or you are not permitted to.' },
});

export const stripDrive: Question<StripAnswer> = {
  title: 'Take everything off the drive',
  instructions: [
    'Look into the drive’s manual: what it allows to be taken off. Photograph and mark all of it first.',
    'Take U, V, W of every axis of this drive off, the ends apart and insulated. The PE cores stay on.',
    'Take the plugs of brakes and sensors off, with every load on its support.',
    'Take the braking resistor off, and the DC link to neighbours if it can be opened.',
    'If it trips when the power comes on: unplug the feedback of every axis too. If it trips at the enable: the feedback stays, because the drive does not enable without it.',
    'Cover every open contact.',
  ],
  why: 'Other axes, brakes, the braking resistor and neighbours on the bus trip a drive too. Only with all of it off does a trip speak of the drive alone.',
  when: 'If it still trips without its feedback, or without its motor.',
  caution:
    'The terminals of the DC bus carry the full voltage when the power is on. Cover them, and leave no conductor open.',
  fields: [state, remark],
  read: (form) => {
    const answer = chosen(form, state);
    return answer && { state: answer };
  },
  line: lineOf([state]),
};

export const retryStripped: Question<RetryAnswer> = {
  title: 'Switch on with everything off the drive',
  instructions: [
    'Close the covers. Every lead that is off is insulated.',
    'If it tripped when the power came on: switch on, control off. Never enable: without feedback an axis runs away.',
    'If it tripped at the enable: enable this axis once, at rest.',
    lowLimits,
    'See whether the same message comes. Switch off. Do it as often as the note below says.',
    betweenTries,
  ],
  why: 'The same trip every time, at the same moment, with nothing on the drive: the drive is bad. No trip: something that you took off causes it.',
  when: 'After everything was taken off the drive.',
  caution: enableCaution,
  ...askRetry,
};
