import { limitRange } from '../../../kernel/limits.ts';
import type { Symptom } from '../../../kernel/vocabulary.ts';
import { choice, chosen, count, digits, type Form, textOf, tick, ticked } from '../fields.ts';
import { answerInLine, type Question } from '../question.ts';

/** What may have been changed before the first trip. */
export type ChangedThing = 'drive' | 'motor' | 'feedback' | 'cable' | 'parameters' | 'load';

export interface SymptomAnswer {
  /** `unknown`: nobody saw it. Then nothing that depends on the moment counts, and what any moment needs is measured. */
  when: Symptom | 'unknown';
  /**
   * Whether any axis that this enable releases can fall: axes of the drive, and of a group with one enable. `unknown` is
   * treated as yes: support costs minutes. `own-no`: an older record, which asked only about the axis that tripped; it
   * can't fall, and nothing is known of the others.
   */
  gravityLoaded: 'yes' | 'no' | 'unknown' | 'own-no';
  /** The trip came `came` times in `of` starts or moves. Absent: not known. */
  came?: number;
  of?: number;
  /** It happened once and was not tried since. */
  once?: true;
  /** Whether parts or parameters were changed before the first trip. Absent: not asked. */
  changed?: 'nothing' | 'something' | 'unknown';
  /** What of it. Absent: not said, or several things. */
  changedThing?: ChangedThing;
  /** Whether fuses or the breaker of the supply opened with it. Absent: not asked. */
  protection?: 'opened' | 'held' | 'unknown';
  /** Whether the drive or a scope has kept the currents of the trip. Absent: not asked. */
  recorded?: 'yes' | 'no' | 'unknown';
}

interface SymptomText {
  /** The option in the form: what was live or moving. */
  live: string;
  /** The moment of the trip that follows from it. */
  label: string;
  /** What it makes likely, and why. */
  likely: string;
}

export const symptomTexts: Record<SymptomAnswer['when'], SymptomText> = {
  'control-off': {
    live: 'Only the bus was up: the control was still off',
    label: 'At once when the drive gets power, control still off',
    likely: 'Feedback cable, feedback device, or the drive itself: nothing is switched through to the motor yet.',
  },
  'on-enable': {
    live: 'The pulses had just come on, and the load stood still',
    label: 'When the axes are enabled',
    likely: 'Output stage, motor or motor cable: with the enable, voltage reaches the motor for the first time.',
  },
  'on-acceleration': {
    live: 'The load was speeding up, or moving',
    label: 'On acceleration or in motion',
    likely:
      'Mechanical overload, a brake that drags, tuning, or insulation that fails under load: speeding up draws the highest current.',
  },
  'on-braking': {
    live: 'The load was slowing down, stopping or being lowered',
    label: 'On braking or stopping',
    likely:
      'Braking resistor, its lead or its switch, a brake that closes on a moving axis, or tuning: braking sends the energy of the load back to the bus.',
  },
  'position-or-cable': {
    live: 'A cable was being bent, or the axis was at one certain place',
    label: 'At one position, or when the cable moves',
    likely: 'A moving cable or its connector: a core breaks or chafes where it bends.',
  },
  'when-hot': {
    live: 'Everything was warm: cold, the same motion runs',
    label: 'When it is hot',
    likely:
      'Motor insulation or winding, or a drive that is poorly cooled: insulation resistance falls with temperature.',
  },
  'now-and-then': {
    live: 'Something else each time',
    label: 'Now and then',
    likely: 'Contacts, moisture, a cable about to fail, or interference: a fault that is not there while you look.',
  },
  unknown: {
    live: 'Nobody saw it',
    label: 'At a moment that nobody saw',
    likely:
      'Nothing more than anything else. So everything is measured, braking circuit and moving cable too, and only what passes in every state is called good.',
  },
};

const live = Object.fromEntries(Object.entries(symptomTexts).map(([when, text]) => [when, text.live]));
const when = choice('when', 'What was live or moving when it tripped?', live as Record<SymptomAnswer['when'], string>);
const gravityLoaded = choice('gravityLoaded', 'Can any axis fall whose brake opens with this enable?', {
  yes: { label: 'Yes', hint: 'Of this drive, or of a group that is enabled together.' },
  no: 'No, none of them',
  unknown: { label: 'I don’t know', hint: 'Treated as yes: support costs minutes.' },
});

const once = tick('once', 'It happened once, and was not tried since.');
const came = digits('came', 'How often did it trip?', 'A number. Leave it empty if you don’t know.');
const of = digits('of', 'In how many starts or moves?', 'The tries with and without a trip together, such as 6.');
const changed = choice<'nothing' | ChangedThing | 'something' | 'unknown'>(
  'changed',
  'What was changed before the first trip?',
  {
    nothing: 'Nothing',
    drive: 'Drive',
    motor: 'Motor',
    feedback: 'Encoder or resolver',
    cable: 'Cable or connector',
    parameters: 'Parameters or program',
    load: 'Tool or load',
    something: { label: 'Several of these, or something else', hint: 'A repair, a move. Write it into the notes.' },
    unknown: 'I don’t know',
  },
);

const protection = choice<NonNullable<SymptomAnswer['protection']>>(
  'protection',
  'Did fuses or the breaker of the supply open with it?',
  {
    opened: {
      label: 'Yes',
      hint: 'Don’t replace or reset anything to see: then nothing gets power before the input passes.',
    },
    held: 'No',
    unknown: 'I don’t know',
  },
);

const recorded = choice<NonNullable<SymptomAnswer['recorded']>>(
  'recorded',
  'Has the drive or a scope kept the moment?',
  {
    yes: { label: 'Yes', hint: 'A recording of the currents at the trip. The next step reads it.' },
    no: 'No',
    unknown: { label: 'I don’t know', hint: 'Many drives keep the last trip in their memory.' },
  },
);

/** The second answer with its subject: a bare "Yes" would be meaningless in the line. */
const gravityInLine: Record<SymptomAnswer['gravityLoaded'], string> = {
  yes: 'an axis can fall',
  no: 'no axis can fall',
  unknown: 'an axis may fall',
  'own-no': 'this axis can’t fall, others not asked for',
};

/** The moment alone, even while the second question is unanswered. */
export function symptomIn(form: Form): SymptomAnswer['when'] | undefined {
  return chosen(form, when);
}

export const symptom: Question<SymptomAnswer> = {
  title: 'What was live or moving?',
  instructions: [
    'Choose what had come on or begun last when it tripped.',
    'Say whether an axis can fall. Count every axis whose brake opens with this enable: those of this drive, and those of a group that is enabled together.',
    'Ask how often it came, and in how many starts or moves. Ask what was changed before the first trip.',
    'Look at the fuses and the breaker of the supply. What has opened stays as it is.',
    'Ask whether the drive or a scope has recorded the trip. Never make it trip for a recording.',
  ],
  why: 'A bad part usually shows with the first thing that stresses it. This says what to measure first. How often it comes says how many tries show anything.',
  when: 'After the drive is found.',
  fields: [when, gravityLoaded, once, came, of, changed, protection, recorded],
  read: (form) => {
    const moment = symptomIn(form);
    const falls = chosen(form, gravityLoaded, 'own-no');
    const times = count(form, came.id, limitRange('entry-tries'));
    const starts = count(form, of.id, limitRange('entry-tries'));
    const before = saidOfChange(form);
    const supply = chosen(form, protection);
    const kept = chosen(form, recorded);
    if (moment === undefined || falls === undefined) return undefined;
    return {
      ...{ when: moment, gravityLoaded: falls },
      ...(times !== undefined && starts !== undefined && { came: times, of: starts }),
      ...(ticked(form, once.id) && { once: true as const }),
      ...(before !== undefined && changeOf(before)),
      ...(supply !== undefined && { protection: supply }),
      ...(kept !== undefined && { recorded: kept }),
    };
  },
  line: (form) => {
    const moment = symptomIn(form);
    const falls = chosen(form, gravityLoaded, 'own-no');
    return [
      moment === undefined ? textOf(form, when.id) : symptomTexts[moment].label,
      falls === undefined ? textOf(form, gravityLoaded.id) : gravityInLine[falls],
      often(form),
      changedInLine(form),
      chosen(form, protection) === 'opened' ? 'fuses or breaker opened' : '',
      chosen(form, recorded) === 'yes' ? 'the trip was recorded' : '',
    ]
      .filter(Boolean)
      .join(', ');
  },
};

function changeOf(said: NonNullable<ReturnType<typeof saidOfChange>>): Pick<SymptomAnswer, 'changed' | 'changedThing'> {
  const isThing = said !== 'nothing' && said !== 'something' && said !== 'unknown';
  return isThing ? { changed: 'something', changedThing: said } : { changed: said };
}

function saidOfChange(form: Form) {
  return chosen(form, changed);
}

function changedInLine(form: Form): string {
  const said = saidOfChange(form);
  if (said === undefined || said === 'nothing' || said === 'unknown') return '';
  return `changed before: ${said === 'something' ? said : answerInLine(changed, form).join('')}`;
}

function often(form: Form): string {
  const happenedOnce = ticked(form, once.id) ? 'happened once' : '';
  const [times, starts] = [textOf(form, came.id).trim(), textOf(form, of.id).trim()];
  if (times === '' && starts === '') return happenedOnce;
  return `came ${times || 'an unknown number'} of ${starts || 'an unknown number of'} times`;
}

export const symptomProblems = {
  'came-contradicts':
    'The numbers contradict each other: it can’t have tripped more often than it was started, nor more than once if it happened once. Correct them.',
};
