import { phases } from '../../kernel/electrics/phases.ts';
import type { ChoiceField, FormField, ReadingField } from '../../kernel/form/field.ts';
import { instrumentFields } from '../../kernel/form/instrument.ts';
import { busVoltage, motorLeads, railFields } from '../bridge/fields.ts';
import { readingName } from '../bridge/position-names.ts';
import { type DiodePlace, type DiodeWay, diodeField, type Rail, rails } from '../bridge/rule/switch-position.ts';

export { busVoltage, motorLeads };

export const diodeFields = (rail: Rail, way: DiodeWay): ReadingField[] =>
  phases.map((phase) => {
    const place: DiodePlace = { position: `${rail}${phase}`, way };
    return {
      kind: 'reading',
      id: diodeField(place),
      label: phase,
      name: readingName(place),
      quantity: 'diode',
      row: `${rail} ${way}`,
    };
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

/** The other variant of the check, for those who took both. */
export const resistanceFields: ReadingField[] = rails.flatMap((rail) =>
  railFields(rail).map((field) => ({ ...field, label: field.name })),
);

export const resistanceOrder: ChoiceField = {
  kind: 'choice',
  id: 'resistanceOrder',
  name: 'When were the resistances read?',
  hint: 'The blocking readings of the diode test charge the bus by some volts.',
  options: [
    { value: 'first', label: 'Before the diode test' },
    { value: 'bus-measured-between', label: 'After it, with the bus measured and discharged in between' },
    { value: 'after', label: 'After it' },
    { value: 'not-stated', label: 'Not known' },
  ],
  initial: 'not-stated',
};

export const meterFields = instrumentFields('').filter(({ id }) => id !== 'upperLimit');

export const bridgeDiodeFields: FormField[] = [
  busVoltage,
  motorLeads,
  ...diodeFields('plus', 'forward'),
  ...diodeFields('plus', 'reverse'),
  ...diodeFields('minus', 'forward'),
  ...diodeFields('minus', 'reverse'),
  steadiness,
  ...resistanceFields,
  resistanceOrder,
  ...meterFields,
];
