import { choice, chosen, type Form, remark, tick, ticked } from '../fields.ts';
import { lineOf, type Question } from '../question.ts';

/** `core`: the core that opens or leaks. `again`: seen a second time, with the tips lifted in between and the plugs still. */
export interface BendTestAnswer {
  result: 'steady' | 'opens' | 'leaks' | 'not-done';
  core?: 'power' | 'PE' | 'screen' | 'idle' | 'feedback';
  again: boolean;
}

const result = choice<BendTestAnswer['result']>('result', 'What did the cable show?', {
  steady: { label: 'Every core stayed steady', hint: 'Bent, and at 500 V in every position.' },
  opens: 'A core opened, or its resistance jumped',
  leaks: 'A core leaked in one position',
  'not-done': { label: 'Not done', hint: 'The decision lists it as open.' },
});
const core = choice<NonNullable<BendTestAnswer['core']>>('core', 'Which core?', {
  power: 'U, V or W',
  PE: 'PE',
  screen: 'The screen',
  idle: 'Brake or sensor',
  feedback: 'Feedback',
});
const again = tick('again', 'I did it a second time, the plugs held still, and it was the same.', 'seen twice');
const fields = [result, core, again, remark];

export const bendTest: Question<BendTestAnswer> = {
  title: 'Bend the cable and watch each core',
  instructions: [
    'Locked out, join the core to PE at the motor end with a short lead. Use a meter below 25 V with minimum and maximum hold.',
    'Hold the plugs still. Bend the cable by hand along its whole way: bends, clamps, chain, entry into the plugs. Then a second person moves the plugs.',
    'Do it core by core: U, V, W, PE, screen, brake, sensor, and the cores of the feedback cable.',
    'Then test the insulation at 500 V, at rest, with the cable in three to five positions. Nobody moves it while the tester is on. Never test feedback or sensor cores at 500 V.',
    'What you find once, do a second time: lift the tips, join again, bend again.',
  ],
  why: 'A core that breaks or leaks only where it bends passes every measurement at rest. A good reading at rest clears nothing here.',
  when: 'If it trips at one position, or when the cable moves.',
  caution: 'The axis stays on its support. The tester’s voltage never while the cable moves.',
  fields,
  read,
  line: lineOf(fields),
};

function read(form: Form): BendTestAnswer | undefined {
  const found = chosen(form, result);
  const which = chosen(form, core);
  if (found === undefined) return undefined;
  const bad = found === 'opens' || found === 'leaks';
  // A fault without its core could be of either cable.
  if (bad && which === undefined) return undefined;
  return { result: found, ...(bad && which !== undefined && { core: which }), again: ticked(form, 'again') };
}
