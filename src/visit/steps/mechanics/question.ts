import { choice, chosen, remark } from '../fields.ts';
import { lineOf, type Question } from '../question.ts';

export interface MechanicsAnswer {
  found: 'free' | 'stiff' | 'brake-drags' | 'not-checked';
}

const found = choice<MechanicsAnswer['found']>('found', 'What did you find?', {
  free: 'It moves freely, and the brake does not drag',
  stiff: 'It is stiff',
  'brake-drags': 'The brake drags',
  'not-checked': { label: 'Not checked', hint: 'The decision lists it as open.' },
});

export const mechanics: Question<MechanicsAnswer> = {
  title: 'Look at the mechanics',
  instructions: [
    'Locked out, secure the axis against falling before you touch it.',
    'An axis that can’t fall: see whether it moves as freely as it should by hand. Move it slowly: a turning motor generates a voltage.',
    'An axis that can fall is not moved by hand. Look at its guides, its balance and its brake.',
  ],
  why: 'A stiff axis or a brake that drags draws the same current as a fault. Replacing a drive does not free it.',
  when: 'If it trips on acceleration, at one position, when hot, or now and then.',
  caution: 'Never release the brake of an axis that hangs on it.',
  fields: [found, remark],
  read: (form) => {
    const answer = chosen(form, found);
    return answer && { found: answer };
  },
  line: lineOf([found]),
};
