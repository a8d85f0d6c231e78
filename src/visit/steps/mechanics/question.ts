import { choice, chosen, remark } from '../fields.ts';
import { lineOf, type Question } from '../question.ts';

/**
 * `free-without-leads`: stiff with the motor leads on and free with them off, which a dynamic brake does, or a short.
 * `held`: its holding brake holds it without power, so it was not moved.
 */
export interface MechanicsAnswer {
  found: 'free' | 'free-without-leads' | 'stiff' | 'brake-drags' | 'held' | 'not-checked';
}

const found = choice<MechanicsAnswer['found']>('found', 'What did you find?', {
  free: 'It moves freely, and the brake does not drag',
  'free-without-leads': {
    label: 'Stiff with the leads on, free with them off',
    hint: 'A dynamic brake does that, and so does a shorted stage: the six readings tell.',
  },
  stiff: { label: 'It is stiff, with the leads off', hint: 'Even and oily can also be shorted turns in the motor.' },
  'brake-drags': 'The brake drags',
  held: { label: 'Its holding brake holds it', hint: 'Without power it does not move. The decision lists it as open.' },
  'not-checked': { label: 'Not checked', hint: 'The decision lists it as open.' },
});

export const mechanics: Question<MechanicsAnswer> = {
  title: 'Move it by hand, and look at the mechanics',
  instructions: [
    'Locked out, the motor leads off and apart. Secure the axis against falling before you touch it.',
    'Find out whether the motor has a holding brake. With one, the axis does not move without power: say so below, and look at the current while it moves later.',
    'An axis without one that can’t fall: see whether it moves as freely as it should by hand. Move it slowly: a turning motor generates a voltage at its leads.',
    'An axis that can fall is not moved by hand. Look at its guides, its balance and its brake.',
    'If it was stiff with the leads on and is free now, many drives brake the motor by shorting it when the power is off. Say so below.',
  ],
  why: 'A stiff axis or a brake that drags draws the same current as a fault. Replacing a drive does not free it. With the leads on, a drive without power can brake the motor, and the test says nothing.',
  when: 'With the leads off, if it trips on acceleration or braking, at one position, when hot, or now and then.',
  caution: 'Never release the brake of an axis that hangs on it.',
  fields: [found, remark],
  read: (form) => {
    const answer = chosen(form, found);
    return answer && { found: answer };
  },
  line: lineOf([found]),
};
