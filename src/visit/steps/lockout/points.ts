import { judgeDischarge } from '../../../kernel/assessment/bus-discharge.ts';
import type { ReadingField, TickField } from '../../../kernel/form/field.ts';
import { missing, type Reading } from '../../../kernel/reading/reading.ts';
import { type FieldGroup, type Form, textOf, tick, ticked, voltage } from '../fields.ts';

/** Points that are proved dead together. */
export interface PointGroup extends FieldGroup {
  /** One row a measured point. */
  points: readonly ReadingField[];
  /** Says that the rows that are left empty were measured too, and read no higher than those that are typed. */
  rest: TickField;
  /** The one field of older records, in which the highest of all points was typed. */
  older: ReadingField;
}

const row = (id: string, group: string, label: string): ReadingField => ({
  ...{ kind: 'reading', id, label, name: `${group}, ${label}`, quantity: 'voltage' },
});

function pointGroup(
  id: string,
  legend: string,
  inLine: string,
  rows: Readonly<Record<string, string>>,
  hint?: string,
): PointGroup {
  const points = Object.entries(rows).map(([end, label]) => row(id + end, legend, label));
  const rest = tick(`${id}Rest`, 'Each of these points was measured. An empty one read no higher than what is typed.');
  const older: ReadingField = { ...row(`${id}Voltage`, legend, 'highest of all points'), inLine };
  // With every row typed there is no rest to speak of.
  const moot = (form: Form) =>
    !ticked(form, rest.id) && points.every((point) => textOf(form, point.id).trim() !== '') ? rest.id : undefined;
  return { legend, ...(hint !== undefined && { hint }), points, rest, older, moot, fields: [...points, rest, older] };
}

const bothKinds = {
  EachAc: 'AC, each to each',
  PeAc: 'AC, each to PE',
  EachDc: 'DC, each to each',
  PeDc: 'DC, each to PE',
};

export const supplyPoints = pointGroup('supply', 'Supply terminals', 'supply', bothKinds, 'Filters keep DC.');
export const outputPoints = pointGroup('output', 'U, V, W', 'U V W', bothKinds, 'A motor that turns feeds them.');
export const busPoints = pointGroup('bus', 'DC bus', 'bus', {
  Between: 'DC+ to DC−',
  PlusPe: 'DC+ to PE',
  MinusPe: 'DC− to PE',
});

interface Typed {
  id: string;
  text: string;
  reading: Reading;
}

/** The highest reading of a group, with its text; undefined if none is typed, or one can't be read. */
export function highestOf(form: Form, { points, older }: PointGroup): Typed | undefined {
  const typed = [...points, older].flatMap(({ id }) => {
    const text = textOf(form, id).trim();
    return text === '' ? [] : [{ id, text, reading: voltage(form, id) }];
  });
  if (!typed.every((one): one is Typed => one.reading !== undefined)) return undefined;
  return typed.reduce<Typed | undefined>(
    (highest, one) => (highest === undefined || sizeOf(one.reading) > sizeOf(highest.reading) ? one : highest),
    undefined,
  );
}

/**
 * What a group shows: its highest reading. Missing while a point of it is not measured, unless what is typed is dangerous
 * already. A dash is a display without a reading: that point is not measured, whatever is ticked. Undefined if an entry
 * can't be read.
 */
export function groupReading(form: Form, group: PointGroup): Reading | undefined {
  const { points, rest, older } = group;
  if ([...points, older].some(({ id }) => voltage(form, id) === undefined)) return undefined;
  const highest = highestOf(form, group)?.reading ?? missing;
  if (judgeDischarge(highest).severity === 'stop') return highest;
  const has = ({ id }: ReadingField) => textOf(form, id).trim() !== '';
  const isDashed = (field: ReadingField) => has(field) && voltage(form, field.id)?.kind === 'missing';
  if ([...points, older].some(isDashed)) return missing;
  return ticked(form, rest.id) || has(older) || points.every(has) ? highest : missing;
}

/** The size of a voltage, in V. What has no upper bound is higher than any figure. */
function sizeOf(reading: Reading): number {
  switch (reading.kind) {
    case 'value':
      return Math.abs(reading.value);
    case 'under':
      return Math.abs(reading.atMost ?? Number.POSITIVE_INFINITY);
    case 'over':
      return Number.POSITIVE_INFINITY;
    case 'missing':
      return 0;
  }
}
