import type { Part } from '../../kernel/vocabulary.ts';
import type { Decision } from '../guide/decision.ts';
import { type Choice, choice, chosen, type Form, remark } from '../steps/fields.ts';

export type RowAnswer = 'ok' | 'fault' | 'not-needed';

export interface RestartRow {
  field: Choice<RowAnswer>;
  /** `enabled`: the axis has been enabled when this is answered. `released`: what people wait for before they go near. */
  when: 'before-enable' | 'enabled' | 'released' | 'any-time';
  /** The replaced parts that ask for it; without it, every return to service does. */
  after?: readonly Part[];
}

interface RowWords {
  name: string;
  hint: string;
}

/** `optional`: some axes have nothing of the kind. */
function row(
  id: string,
  words: RowWords,
  { optional = false, ...rest }: Omit<RestartRow, 'field'> & { optional?: boolean },
): RestartRow {
  const { options, ...field } = choice<RowAnswer>(id, words.name, {
    ok: 'In order',
    fault: 'Fault',
    'not-needed': 'Not needed',
  });
  return {
    field: { ...field, hint: words.hint, options: options.filter(({ value }) => optional || value !== 'not-needed') },
    ...rest,
  };
}

/** In the order of the work. */
export const restartRows = {
  newPart: row(
    'newPart',
    {
      name: 'The new part, measured before it was connected',
      hint: 'Drive: the six readings. Motor: winding and insulation. Cable: each core end to end, and insulation. Resistor: its plate value, and to its housing.',
    },
    { when: 'before-enable' },
  ),
  joined: row(
    'joined',
    {
      name: 'What it is joined to, measured again',
      hint: 'A bad motor or cable kills the new drive at the first enable.',
    },
    { when: 'before-enable', after: ['drive', 'motor', 'motor-cable'] },
  ),
  connected: row(
    'connected',
    {
      name: 'PE and screen first, then U, V, W by your marks, then feedback and brake',
      hint: 'Tightened, and pulled at each lead.',
    },
    { when: 'before-enable' },
  ),
  closed: row(
    'closed',
    { name: 'Earths, shorts and tools out, covers on', hint: 'The support of the axis stays.' },
    { when: 'before-enable' },
  ),
  settings: row(
    'settings',
    {
      name: 'Settings of this axis, compared with the record',
      hint: 'Motor and feedback type, direction, limits, braking resistor, safety parameters with their checksum.',
    },
    {
      when: 'before-enable',
      after: ['drive', 'motor', 'feedback-device', 'braking-resistor'],
      optional: true,
    },
  ),
  firstEnable: row(
    'firstEnable',
    {
      name: 'First enable from outside, with low limits',
      hint: 'Torque, speed and following error low. Nobody in reach of any axis of this drive. No trip, no jerk, position steady.',
    },
    { when: 'enabled' },
  ),
  direction: row(
    'direction',
    { name: 'Direction and commutation', hint: 'A wrong phase order or offset runs away at enable.' },
    { when: 'enabled', after: ['drive', 'motor', 'motor-cable', 'feedback-cable', 'feedback-device'] },
  ),
  brake: row(
    'brake',
    {
      name: 'The brake releases, and holds',
      hint: 'By the builder’s procedure. A load that stands on its support proves nothing about the brake.',
    },
    { when: 'enabled', optional: true },
  ),
  safetyFunctions: row(
    'safetyFunctions',
    {
      name: 'Safety functions tested and signed',
      hint: 'By the person whom the site names. Nobody comes within reach before that.',
    },
    { when: 'released', optional: true },
  ),
  baseline: row(
    'baseline',
    { name: 'Readings noted as the new baseline', hint: 'Winding and insulation, with the temperature.' },
    { when: 'any-time' },
  ),
} satisfies Record<string, RestartRow>;

export type RowId = keyof typeof restartRows;

const rowIds = Object.keys(restartRows) as RowId[];

export const runs = choice<'yes' | 'trips' | 'no'>('runs', 'Does the machine run?', {
  yes: 'Yes, through a whole cycle, without the trip',
  trips: 'It trips again',
  no: 'Not tried yet',
});

/** The rows that the parts to be replaced ask for, in order. Without a replaced part nothing new is measured. */
export function wantedRows({ replace }: Pick<Decision, 'replace'>): RowId[] {
  const parts = replace.map(({ part }) => part);
  return rowIds.filter((id) => {
    const { after }: RestartRow = restartRows[id];
    if (id === 'newPart') return parts.length > 0;
    return after === undefined || after.some((part) => parts.includes(part));
  });
}

export const fieldsOf = (rows: readonly RowId[]) => [...rows.map((id) => restartRows[id].field), runs, remark];

export const answerOf = (form: Form, id: RowId): RowAnswer | undefined => chosen(form, restartRows[id].field);
