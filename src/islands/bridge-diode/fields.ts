import { phases, type Rail } from '../../calc/index.ts';
import { positionName, readingName } from '../../texts/positions.ts';
import { busVoltage, motorLeads, railFields } from '../bridge/fields.ts';
import type { ChoiceField, FormField, ReadingField } from '../form/field.ts';
import { instrumentFields } from '../form/instrument.ts';

export { busVoltage, motorLeads };

export type Way = 'Forward' | 'Reverse';

export const diodeFields = (rail: Rail, way: Way): ReadingField[] =>
  phases.map((phase) => {
    const id = `${rail}${way}${phase}`;
    return { kind: 'reading', id, label: phase, name: readingName(id), quantity: 'diode' };
  });

export const steadiness: ChoiceField = {
  kind: 'choice',
  id: 'steadiness',
  name: 'Do the readings stand still?',
  hint: 'Where the stage blocks, the meter charges the bus: the reading may climb for some seconds and then stays at OL.',
  options: [
    { value: 'steady', label: 'They stand still', hint: 'Or have climbed to OL and stay there.' },
    { value: 'drifting', label: 'They drift, fall or turn negative' },
  ],
  initial: '',
};

/** The other variant of the check, for who has taken both. */
export const resistanceFields: ReadingField[] = (['plus', 'minus'] as const).flatMap((rail) =>
  railFields(rail).map((field) => ({ ...field, label: positionName(field.id) })),
);

export const meterFields = instrumentFields('').filter(({ id }) => id !== 'upperLimit');

export const bridgeDiodeFields: FormField[] = [
  busVoltage,
  motorLeads,
  ...diodeFields('plus', 'Forward'),
  ...diodeFields('plus', 'Reverse'),
  ...diodeFields('minus', 'Forward'),
  ...diodeFields('minus', 'Reverse'),
  steadiness,
  ...resistanceFields,
  ...meterFields,
];
