import type { ReadingField } from '../../../kernel/form/field.ts';
import { missing, type Reading } from '../../../kernel/reading/reading.ts';
import { choice, chosen, type Form, remark, resistance, textOf, tick, ticked } from '../fields.ts';
import type { Question } from '../question.ts';

/**
 * The braking circuit, measured dead, in Ω. `plate`: what the resistor’s plate says; `toPe`: the lower of its two ends to
 * housing and PE; `toBus`: the drive’s switched brake terminal to DC−, resistor off. `again`: the odd reading
 * was taken a second time, with the tips lifted in between.
 */
export interface BrakingAnswer {
  fitted: 'external' | 'inside' | 'none' | 'not-done';
  plate: Reading;
  ohms: Reading;
  toPe: Reading;
  toBus: Reading;
  again: boolean;
}

const fitted = choice<BrakingAnswer['fitted']>('fitted', 'Has the drive a braking resistor?', {
  external: 'Yes, outside, and I have measured it',
  inside: { label: 'Inside the drive, not within reach', hint: 'The decision lists it as open.' },
  none: 'No, none is fitted',
  'not-done': { label: 'Not measured', hint: 'The decision lists it as open.' },
});
const reading = (id: string, name: string, hint: string): ReadingField => ({
  ...{ kind: 'reading', id, label: name, name, hint, quantity: 'resistance' },
});
const readings = [
  reading('plate', 'On its plate', 'In Ω, such as 47 Ω.'),
  reading('ohms', 'Resistor, end to end', 'Both its leads off the drive.'),
  reading('toPe', 'Resistor to housing and PE, lower', 'Each end. On the highest range.'),
  reading(
    'toBus',
    'Switched brake terminal to DC−',
    'At the drive, resistor off, red lead on the terminal. One brake terminal is DC+ itself: not that one.',
  ),
];
const again = tick('again', 'I have read what looks odd a second time, with the tips lifted in between.', 'read twice');

export const braking: Question<BrakingAnswer> = {
  title: 'Measure the braking circuit, dead',
  instructions: [
    'Locked out, take both leads of the braking resistor off the drive. A hot resistor stays hot: let it cool.',
    'Measure the resistor from end to end, and each end to its housing and PE.',
    'At the drive find the brake terminal that is not DC+ itself. Red lead on it, black lead on DC−: a sound transistor blocks.',
    'Read what looks odd a second time.',
    'Look for burnt leads, a loose cover, dust and coolant on the resistor.',
    'At the later trial watch whether the holding brake closes before the axis stands.',
  ],
  why: 'Braking sends the energy of the load back to the bus, and the resistor burns it. A resistor that is open, shorted or connected to its housing trips the drive while it slows down.',
  when: 'If it trips on braking or stopping.',
  fields: [fitted, ...readings, again, remark],
  read,
  line,
};

function read(form: Form): BrakingAnswer | undefined {
  const there = chosen(form, fitted);
  if (there === undefined) return undefined;
  const nothing = { plate: missing, ohms: missing, toPe: missing, toBus: missing, again: false };
  if (there !== 'external') return { fitted: there, ...nothing };
  const [plate, ohms, toPe, toBus] = readings.map(({ id }) => resistance(form, id));
  const all = plate && ohms && toPe && toBus;
  return all && { fitted: there, plate, ohms, toPe, toBus, again: ticked(form, 'again') };
}

function line(form: Form): string {
  const there = fitted.options.find(({ value }) => value === form.fitted)?.label;
  if (form.fitted !== 'external') return there ?? '';
  const [plate, ohms, toPe, toBus] = readings.map(({ id }) => textOf(form, id).trim() || 'not measured');
  return `plate ${plate}, measured ${ohms}, to PE ${toPe}, to DC− ${toBus}${ticked(form, 'again') ? ', read twice' : ''}`;
}

export const brakingProblems = {
  'braking-not-measured': 'Type all four figures of the braking circuit, or choose “not measured”.',
};
