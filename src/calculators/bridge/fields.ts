import { phases } from '../../kernel/electrics/phases.ts';
import type { ChoiceField, FormField, ReadingField } from '../../kernel/form/field.ts';
import { instrumentFields } from '../../kernel/form/instrument.ts';
import { limitRange, limitValue } from '../../kernel/limits.ts';
import { formatRounded } from '../../kernel/reading/format-reading.ts';
import { positionName, railNames } from './position-names.ts';
import type { Rail, SwitchPosition } from './rule/switch-position.ts';

export const busVoltage: ReadingField = {
  kind: 'reading',
  id: 'busVoltage',
  label: 'DC-bus voltage just before',
  name: 'DC-bus voltage',
  hint: `Between DC+ and DC−, on a DC range. At ${formatRounded(limitValue('touch-voltage'), 'V')} or more nothing is judged.`,
  quantity: 'voltage',
};

export const motorLeads: ChoiceField = {
  kind: 'choice',
  id: 'motorLeads',
  name: 'Motor leads at the drive',
  hint: 'The windings join U, V and W, so that a fault looks balanced while they are on.',
  options: [
    { value: 'off', label: 'Taken off U, V and W' },
    { value: 'connected', label: 'Still connected' },
  ],
  initial: '',
};

export const railFields = (rail: Rail): ReadingField[] =>
  phases.map((phase) => {
    const id: SwitchPosition = `${rail}${phase}`;
    const words = { label: `to ${phase}`, name: positionName(id) };
    return { kind: 'reading', id, ...words, quantity: 'resistance', row: rail, lowIsWorse: true };
  });

/** The first terminal of a rail, read once more after the other two. */
export const againField = (rail: Rail): ReadingField => ({
  kind: 'reading',
  id: `${rail}Again`,
  label: 'U again',
  name: `${positionName(`${rail}U`)}, read again last`,
  quantity: 'resistance',
  row: rail,
  lowIsWorse: true,
});

const exchangedField = (rail: Rail): ReadingField => ({
  kind: 'reading',
  id: `${rail}Exchanged`,
  label: `${positionName(`${rail}U`)}, leads exchanged`,
  name: `${positionName(`${rail}U`)}, leads exchanged`,
  hint: `Asked for when all three from ${railNames[rail]} are low and alike.`,
  quantity: 'resistance',
});

const worstAgain: ReadingField = {
  kind: 'reading',
  id: 'worstAgain',
  label: 'The odd terminal again',
  name: 'The odd terminal, read again',
  hint: 'The lowest short, or the lowest odd reading, once more: lift the tips, clean the terminal, same leads.',
  quantity: 'resistance',
};

const dcBus: ReadingField = {
  kind: 'reading',
  id: 'dcBus',
  label: 'DC+ to DC−',
  name: 'DC+ to DC−, resistance',
  hint: 'Red on DC+, resistance range. Hold until the figure stands still.',
  quantity: 'resistance',
};

/** What is read once more when something is odd. */
export const secondFields: readonly ReadingField[] = [
  worstAgain,
  exchangedField('plus'),
  exchangedField('minus'),
  dcBus,
];

const alsoOnBus: ChoiceField = {
  kind: 'choice',
  id: 'alsoOnBus',
  name: 'What else is on DC+ and DC−',
  hint: 'Braking resistor, DC link to neighbours, capacitor module. They take part in the reading.',
  options: [
    { value: 'nothing', label: 'Nothing', hint: 'Never fitted, or taken off as the manual allows.' },
    { value: 'something', label: 'Something is still on' },
    { value: 'not-stated', label: 'Not looked at' },
  ],
  initial: 'not-stated',
};

const sister: ChoiceField = {
  kind: 'choice',
  id: 'sister',
  name: 'A sound drive of the same model',
  hint: 'Measured in the same way and held as long, never exchanged.',
  options: [
    { value: 'alike', label: 'Shows the same pattern', hint: 'The same terminal is odd, or all three are as low.' },
    { value: 'differs', label: 'Shows another pattern', hint: 'There the three of the rail agree, or are not as low.' },
    { value: 'not-compared', label: 'Not compared' },
  ],
  initial: 'not-compared',
};

export const secondChoices: readonly ChoiceField[] = [alsoOnBus, sister];

export const tolerance: ReadingField = {
  kind: 'reading',
  id: 'tolerance',
  label: 'Allowed difference, %',
  name: 'Allowed difference',
  hint: `Empty means ${formatRounded(limitValue('bridge-tolerance'), '%')}. Change it only if the drive manual of your model does.`,
  quantity: 'percent',
  check: (reading) =>
    reading.kind === 'value' && reading.value === 0
      ? `No three readings agree to 0 %. Type more than 0, up to ${formatRounded(limitRange('entry-percent').to, '%')}, or leave it empty.`
      : undefined,
};

export const tipsTogether: ReadingField = {
  kind: 'reading',
  id: 'tipsTogether',
  label: 'Meter tips held together',
  name: 'Meter tips held together',
  hint: 'Asked for where all six readings are over-range: a broken lead shows the same.',
  quantity: 'resistance',
};

export const meterFields = instrumentFields('72 MΩ');

export const bridgeFields: FormField[] = [
  busVoltage,
  motorLeads,
  ...railFields('plus'),
  againField('plus'),
  ...railFields('minus'),
  againField('minus'),
  ...secondFields,
  ...secondChoices,
  tipsTogether,
  tolerance,
  ...meterFields,
];
