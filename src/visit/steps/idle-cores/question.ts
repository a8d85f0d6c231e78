import type { ReadingField } from '../../../kernel/form/field.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { formatRounded } from '../../../kernel/reading/format-reading.ts';
import { missing, type Reading } from '../../../kernel/reading/reading.ts';
import { choice, chosen, type Form, resistance, textOf } from '../fields.ts';
import type { Question } from '../question.ts';

/** `lowest`: the lowest reading of an idle core to U, V, W, PE and screen, in Ω; missing unless `measured`. */
export interface IdleCoresAnswer {
  cores: 'none' | 'measured' | 'not-done';
  lowest: Reading;
}

const cores = choice<IdleCoresAnswer['cores']>('cores', 'Has the motor cable cores of brake, sensor or feedback?', {
  measured: 'Yes, and I have measured them',
  none: { label: 'No, only U, V, W and PE', hint: 'You have looked at the cable’s end or its drawing.' },
  'not-done': { label: 'Not measured', hint: 'The decision lists it as open, and nothing is connected again.' },
});
const lowest: ReadingField = {
  kind: 'reading',
  id: 'lowest',
  label: 'Lowest reading',
  name: 'Lowest reading of an idle core',
  hint: 'To U, V, W, PE and screen. With its range if it is over it, such as > 20 MΩ.',
  quantity: 'resistance',
};

const least = () => formatRounded(limitValue('idle-core-free'), 'Ω');

export const idleCores: Question<IdleCoresAnswer> = {
  title: 'Brake and sensor cores against U, V, W and PE',
  instructions: [
    'Locked out, take every other core of the motor cable off at the drive end: brake, temperature sensor, feedback in the same jacket.',
    'Mark them, and keep their ends apart.',
    'Measure each of them to U, V, W, PE and screen with a multimeter on its highest resistance range.',
    'Type the lowest reading.',
    'Leave them off. The insulation test needs them joined together and connected to PE.',
    'In a motor with one cable for power and feedback, free the feedback pair as its manual says. If the manual says nothing, use no insulation tester.',
  ],
  why: `A phase core that touches one of them passes every other test. At the trial it puts the voltage of the bus on a circuit that people may touch. Each must read more than ${least()}.`,
  when: 'Before the insulation is tested, and before anything is connected again.',
  caution:
    'An insulation tester would destroy a sensor or a brake’s suppressor between two of these cores: multimeter only.',
  fields: [cores, lowest],
  read,
  line: (form) => {
    const answer = read(form);
    if (answer === undefined) return '';
    const texts = {
      none: 'none in this cable',
      measured: `lowest ${textOf(form, 'lowest').trim()}`,
      'not-done': 'not measured',
    };
    return texts[answer.cores];
  },
};

function read(form: Form): IdleCoresAnswer | undefined {
  const there = chosen(form, cores);
  if (there !== 'measured') return there && { cores: there, lowest: missing };
  const reading = resistance(form, lowest.id);
  return reading && { cores: there, lowest: reading };
}

export const idleCoresProblems = {
  'idle-core-not-measured':
    'Type the lowest reading of the idle cores. One that was not measured is not known to be free.',
  'idle-core-range': `“Over range” alone does not say how much. Measure on the highest range, and type its end, such as > 20 MΩ. It must be more than ${least()}.`,
};
