import type { Axis } from '../history/register.ts';
import type { NoteId } from '../record/axis-fields.ts';
import { aliasesOf } from '../record/change-axis.ts';
import { type AxisNames, nameKey } from '../record/names.ts';

/** `Cutting gantry, line 2, Lift`. */
export function axisTitle({ machine, axis }: AxisNames): string {
  const parts = [machine, axis].map((part) => part.trim()).filter(Boolean);
  return parts.length === 0 ? 'Axis without a name' : parts.join(', ');
}

export const countOf = (count: number, one: string, many: string) => (count === 1 ? `One ${one}` : `${count} ${many}`);

export const axesTexts = {
  lead: 'Every machine and axis that your visits name, with what was measured, decided and changed over the years. A visit shows what the last one read.',
  none: 'No axis yet. The first visit with a machine and an axis makes one.',
  secondDrive: 'A second drive within a year.',
  unreadable: (count: number) =>
    `${countOf(count, 'axis was', 'axes were')} noted with a newer edition of this site. Reload the page; until then it stays stored and is not shown.`,
  plotted: (count: number, least: string) =>
    `${count} readings on a logarithmic axis, the lowest ${least}. The table holds them.`,
  unnamed: (count: number) =>
    `${countOf(count, 'visit has', 'visits have')} neither machine nor axis. Name them in the visit, and they come here.`,
} as const;

/** What the form asks for. */
export const noteTexts: Record<NoteId, { label: string; hint?: string }> = {
  plant: { label: 'Plant or site' },
  drive: { label: 'Drive', hint: 'Model and serial number, from its plate.' },
  motor: { label: 'Motor', hint: 'Model and serial number, from its plate.' },
  motorModel: {
    label: 'Model of the motor alone',
    hint: 'Axes with the same model are shown beside each other. Empty: the motor’s plate up to the first comma.',
  },
  cableMetres: { label: 'Length of the motor cable', hint: 'In metres, or with ft.' },
  cableSection: { label: 'Cross-section of its cores' },
  cableMaterial: { label: 'Insulation of its cores' },
  brake: { label: 'Brake', hint: 'Voltage, what it reads, how the axis is supported.' },
  label: { label: 'What its label says', hint: 'Waiting time, warnings, the name in the drawings.' },
};

export const formTexts = {
  rivals: (others: readonly string[]) =>
    `Another device noted ${others.map((text) => `“${text}”`).join(' and ')} at the same time. Save the right one.`,
  takenOff: 'It has no visit. Noted again, or with its first visit, it comes back with all that is known.',
  merge:
    'If two spellings mean one axis, merge them: all visits come together here. It can be undone, and nothing is lost.',
} as const;

/** The other names under which visits are found here. */
export function aliasTexts(axis: Axis): string {
  const known = new Set([nameKey(axis.names)]);
  const former = [axis, ...axis.merged].flatMap(({ names, record }) => [names, ...(record ? aliasesOf(record) : [])]);
  const others = former.filter((names) => {
    const key = nameKey(names);
    const isNew = !known.has(key);
    known.add(key);
    return isNew;
  });
  return others.length === 0 ? '' : `Also called ${others.map(axisTitle).join('; ')}.`;
}
