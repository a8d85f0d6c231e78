import type { MeasuredQuestion } from '../measurements/question.ts';

export const bendTest: MeasuredQuestion = {
  title: 'Bend the cable and watch each core',
  instructions: [
    'Locked out: the cable off at both ends, screen too, PE last. Join its cores at the motor end with a short lead. Use a meter below 25 V with minimum and maximum hold, and clips.',
    'Read each loop at rest, start the hold, bend the cable by hand along its whole way: bends, clamps, chain, entry into the plugs. Then the plugs. All of it twice. Read at rest again.',
    'Watch the loops of the feedback cable in the same way.',
    'Then test the insulation at 500 V, at rest, with the cable in three to five positions. Nobody moves it while the tester is on. Never test feedback or sensor cores at 500 V.',
    'What you find once, do a second time: lift the tips, join again, hold the plugs still, bend again.',
  ],
  why: 'A core that breaks or leaks only where it bends passes every measurement at rest. A good reading at rest clears nothing here.',
  when: 'If it trips at one position, or when the cable moves.',
  caution: 'The axis stays on its support. The tester’s voltage never while the cable moves.',
  instruments: ['Multimeter', 'Milliohm meter'],
  given: {},
};
