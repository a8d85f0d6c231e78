import { type NoteId, noteIds } from '../record/axis-fields.ts';
import { type AxisNotes, textIn } from '../record/change-axis.ts';
import type { VisitHead } from '../record/visit-digest.ts';
import type { Axis } from './register.ts';

/** The visit's own word for what the register calls otherwise. */
const fromVisit: Partial<Record<NoteId, (visit: VisitHead) => string>> = {
  plant: ({ site }) => site,
  drive: ({ drive }) => drive,
  motor: ({ motor }) => motor,
  cableMetres: ({ cable }) => cable?.metres ?? '',
  cableSection: ({ cable }) => cable?.section ?? '',
  cableMaterial: ({ cable }) => cable?.material ?? '',
};

/** What is known about an axis: what a person noted, else what its newest visit that says anything says. */
export function knownOf(axis: Axis): AxisNotes {
  return Object.fromEntries(noteIds.map((id) => [id, knownText(axis, id)])) as AxisNotes;
}

export function knownText({ record, merged, visits }: Axis, id: NoteId): string {
  const noted = [record, ...merged.map((one) => one.record)].flatMap((one) => (one ? [textIn(one, id).trim()] : []));
  const own = noted.find((text) => text !== '');
  return own ?? visits.map((visit) => fromVisit[id]?.(visit).trim() ?? '').find((text) => text !== '') ?? '';
}

/** The axes with all words of the query in their names, aliases and notes. */
export function searched(axes: readonly Axis[], query: string): Axis[] {
  const words = plain(query).split(' ').filter(Boolean);
  if (words.length === 0) return [...axes];
  return axes.filter((axis) => {
    const text = plain(textsOf(axis).join(' '));
    return words.every((word) => text.includes(word));
  });
}

function textsOf(axis: Axis): string[] {
  const spellings = [axis, ...axis.merged].flatMap(({ names, record }) => [names, ...(record?.names ?? [])]);
  return [...spellings.flatMap(({ machine, axis: name }) => [machine, name]), ...Object.values(knownOf(axis))];
}

const plain = (text: string) => text.normalize('NFKC').toLowerCase().replaceAll(/\s+/g, ' ').trim();

/** The axes with the same model of motor, as noted, or up to the comma in what the plate says. Never the axis itself. */
export function sistersOf(axes: readonly Axis[], axis: Axis): Axis[] {
  const model = motorModel(axis);
  return model === '' ? [] : axes.filter((other) => other.id !== axis.id && motorModel(other) === model);
}

export function motorModel(axis: Axis): string {
  return plain(knownText(axis, 'motorModel') || (knownText(axis, 'motor').split(/[,;]/)[0] ?? ''));
}
