import { branchNames } from '../../../calculators/trip-trace/headline.ts';
import type { Branch } from '../../../calculators/trip-trace/rule/input.ts';
import { capital } from '../../../kernel/words/sentences.ts';
import { allChosen, remark, several } from '../fields.ts';
import { lineOf, type Question } from '../question.ts';

/** `speaksFor`: what the recording of the trip points to; empty if it makes no statement. `read`: whether anybody read it. */
export interface RecordingAnswer {
  speaksFor: readonly Branch[];
  read: boolean;
}

const branches = Object.entries(branchNames).map(([branch, name]) => [branch, capital(name)]);

const speaksFor = several<Branch | 'nothing' | 'not-read'>(
  'speaksFor',
  'What does the recording speak for?',
  {
    ...(Object.fromEntries(branches) as Record<Branch, string>),
    nothing: { label: 'No statement', hint: 'It can’t tell. That is no sign that nothing is wrong.' },
    'not-read': { label: 'Not read', hint: 'It can’t be exported here, or not now.' },
  },
  ['nothing', 'not-read'],
);

export const recording: Question<RecordingAnswer> = {
  title: 'Read the recording of the trip',
  instructions: [
    'Export the recording as a table (CSV). Reading it out of the drive’s memory touches nothing live.',
    'Open it in the calculator “Trace of the trip” of this site. State bus voltage, inductance, trip level and pole pairs as far as you know them.',
    'Choose below everything that its answer names, also what it can’t tell apart.',
    'Keep the file. Don’t make the machine trip again for a better one.',
  ],
  why: 'A recording points: it says what to look at first, and may add a measurement. It proves no part, and no measurement is left out for it.',
  when: 'If the drive or a scope has kept the trip.',
  fields: [speaksFor, remark],
  read: (form) => {
    const chosen = allChosen(form, speaksFor);
    if (chosen === undefined) return undefined;
    const named = chosen.filter((one): one is Branch => one !== 'nothing' && one !== 'not-read');
    return { speaksFor: named, read: !chosen.includes('not-read') };
  },
  line: lineOf([speaksFor]),
};
