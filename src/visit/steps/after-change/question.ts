import { choice, chosen, remark } from '../fields.ts';
import { lineOf, type Question } from '../question.ts';

/** `same`: all was compared and is as it should be. `wrong`: something differs and is not put right yet. */
export interface AfterChangeAnswer {
  found: 'same' | 'corrected' | 'wrong' | 'not-compared';
}

const found = choice<AfterChangeAnswer['found']>('found', 'What did the comparison show?', {
  same: { label: 'All compared: as before, or as the manual says', hint: 'It clears no part.' },
  corrected: { label: 'Something was wrong, and it is put right', hint: 'Write the old and the new value below.' },
  wrong: { label: 'Something is wrong, and it is not put right yet', hint: 'The axis is not enabled with it.' },
  'not-compared': { label: 'Not compared', hint: 'The decision lists it as open.' },
});

export const afterChange: Question<AfterChangeAnswer> = {
  title: 'Compare what was changed with the state before',
  instructions: [
    'Leads: compare U, V, W and PE at the drive and in the motor connector with their marks, a photograph or a sister axis. Two exchanged phases are common after a new drive, motor or cable.',
    'Plates: compare type, number of poles and feedback of the new part with the old one. A motor with another feedback needs other parameters.',
    'Parameters: have the set compared with the saved one, or with the manual’s list for this motor: motor data, pole pairs, feedback and its direction, commutation offset, current limits, scaling.',
    'New motor or feedback device: has the commutation offset been set as the manual says? Without it, a motor draws its full current and hardly moves, or runs away.',
    'New tool, load or program: does the tuning fit the mass, and do the ramps?',
    'Let only someone who may change parameters change them. Write down old and new value.',
  ],
  why: 'A wrong phase order, offset, scaling or tuning trips like a bad part and passes every measurement. You find it by comparing, not by measuring.',
  when: 'If a part or a parameter was changed before the first trip, and it trips with the control on.',
  caution:
    'A wrong phase order or offset makes an axis run away at the first enable. Keep everybody clear and the limits low then.',
  fields: [found, remark],
  read: (form) => {
    const answer = chosen(form, found);
    return answer && { found: answer };
  },
  line: lineOf([found]),
};
