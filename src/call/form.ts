import type { FormField } from '../kernel/form/field.ts';
import { limitRange } from '../kernel/limits.ts';
import type { Symptom } from '../kernel/vocabulary.ts';
import { choice, chosen, count, digits, type Form, textOf, tick, ticked } from '../visit/steps/fields.ts';
import { symptomTexts } from '../visit/steps/symptom/question.ts';
import type { Before, CallFacts, Seen, Trial, YesNo } from './rule/facts.ts';
import { beforeTexts, seenTexts, trialTexts } from './words/said.ts';

const words = (id: string, name: string, hint?: string, long?: true): FormField => ({
  ...{ kind: 'text', id, name },
  ...(hint !== undefined && { hint }),
  ...(long && { long }),
});

const yesNo = (id: string, name: string, hint?: string) => ({
  ...choice<YesNo | 'unknown'>(id, name, { yes: 'Yes', no: 'No', unknown: 'Not known' }),
  ...(hint !== undefined && { hint }),
});

const live = Object.fromEntries(Object.entries(symptomTexts).map(([when, text]) => [when, text.live]));
const when = choice('when', 'What was live or moving when it tripped?', live as Record<Symptom | 'unknown', string>);
const again = choice<NonNullable<CallFacts['again']> | 'unknown'>('again', 'Does it come again?', {
  each: 'Each time',
  sometimes: 'Sometimes',
  once: 'It came once',
  unknown: 'Not known',
});
const came = digits('came', 'How often did it trip?', 'A number.');
const of = digits('of', 'In how many starts or moves?', 'The tries with and without a trip together.');
const resets = digits('resets', 'How often was it reset and started since the first trip?', 'A number.');
const canFall = yesNo(
  'gravityLoaded',
  'Can any axis fall whose brake opens with this enable?',
  'Every axis of the drive, and of a group that is enabled together.',
);
const propped = yesNo('propped', 'Is it on a prop, pin or block now?', 'The brake alone is none.');
const sharedDrive = yesNo('sharedDrive', 'Does this drive serve other axes as well?');
const high = yesNo('high', 'Are motor or cable higher than one reaches from the floor?');
const switcher = yesNo('switcher', 'Is somebody on site who may lock out and switch on?');

/** `before-motor-changed` would be no field id: `beforeMotorChanged`. */
const idOf = (group: string, name: string) =>
  group + name.replace(/(^|-)([a-z])/g, (_match, _dash, letter: string) => letter.toUpperCase());

const ticks = <Name extends string>(group: string, texts: Record<Name, { label: string }>) =>
  (Object.keys(texts) as Name[]).map((name) => ({ name, field: tick(idOf(group, name), texts[name].label) }));

const before = ticks<Before>('before', beforeTexts);
const nothingBefore = tick('beforeNothing', 'Nothing: it ran, and then it tripped');
const seen = ticks<Seen>('seen', seenTexts);
const nothingSeen = tick('seenNothing', 'Somebody looked from outside and saw nothing');
const trials = (Object.keys(trialTexts) as Trial[]).map((name) => ({
  name,
  field: choice<'trips' | 'runs' | 'not-tried'>(idOf('tried', name), trialTexts[name].label, {
    trips: 'Trips',
    runs: 'No trip',
    'not-tried': 'Not tried',
  }),
}));

/** The form, in the order of a call. */
export const callParts: { id: string; title: string; fields: FormField[]; folded?: true }[] = [
  {
    id: 'trip',
    title: 'The trip',
    fields: [
      words('machine', 'Machine', 'As the site calls it.'),
      words('axis', 'Axis'),
      words('message', 'Message of the controller', 'Word for word, as the caller reads it out.', true),
      ...[when, words('detail', 'More about the moment', 'The answer to the first question of the sheet.')],
      ...[again, came, of, resets],
    ],
  },
  { id: 'axis', title: 'The axis', fields: [canFall, propped, sharedDrive, high] },
  {
    id: 'before',
    title: 'Before the first trip',
    fields: [...before.map(({ field }) => field), nothingBefore, words('beforeWords', 'In the caller’s words')],
  },
  {
    id: 'seen',
    title: 'What was seen from outside, or is in a photograph',
    fields: [...seen.map(({ field }) => field), nothingSeen, words('seenWords', 'Where, and what else')],
  },
  { id: 'tried', title: 'What was tried', folded: true, fields: trials.map(({ field }) => field) },
  {
    id: 'site',
    title: 'Site, people, parts',
    folded: true,
    fields: [
      words('site', 'Site'),
      words('caller', 'Who calls, and the number'),
      words('drive', 'Drive', 'Model and serial number, from its plate.'),
      words('motor', 'Motor', 'Model and serial number, from its plate.'),
      switcher,
      words('spares', 'Spare parts on site'),
      words('until', 'When the machine must run again'),
    ],
  },
];

export const callFields: FormField[] = callParts.flatMap(({ fields }) => fields);

const known = <Value extends string>(value: Value | undefined) =>
  value === 'unknown' ? undefined : (value as Exclude<Value, 'unknown'> | undefined);
const noted = (form: Form, id: string) => textOf(form, id).trim() !== '';

/** What the caller says, from the form as typed. A text that can't be read counts as not said. */
export function readCall(form: Form): CallFacts {
  const tries = limitRange('entry-tries');
  const numbers = {
    came: count(form, came.id, tries),
    of: count(form, of.id, tries),
    resets: count(form, resets.id, tries),
  };
  const answers = {
    moment: known(chosen(form, when)),
    again: known(chosen(form, again)),
    canFall: known(chosen(form, canFall)),
    propped: known(chosen(form, propped)),
    sharedDrive: known(chosen(form, sharedDrive)),
    high: known(chosen(form, high)),
    switcher: known(chosen(form, switcher)),
  };
  const said = Object.entries({ ...numbers, ...answers }).filter(([, value]) => value !== undefined);
  return {
    ...(Object.fromEntries(said) as Partial<CallFacts>),
    momentUnseen: chosen(form, when) === 'unknown',
    before: before.filter(({ field }) => ticked(form, field.id)).map(({ name }) => name),
    nothingBefore: ticked(form, nothingBefore.id),
    seen: seen.filter(({ field }) => ticked(form, field.id)).map(({ name }) => name),
    nothingSeen: ticked(form, nothingSeen.id),
    tried: Object.fromEntries(
      trials.flatMap(({ name, field }) => {
        const result = chosen(form, field);
        return result === undefined ? [] : [[name, result]];
      }),
    ),
    noted: {
      message: noted(form, 'message'),
      detail: noted(form, 'detail'),
      plates: noted(form, 'drive') && noted(form, 'motor'),
      spares: noted(form, 'spares'),
      until: noted(form, 'until'),
    },
  };
}
