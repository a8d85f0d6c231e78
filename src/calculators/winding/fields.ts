import type { ChoiceField, FormField, ReadingField } from '../../kernel/form/field.ts';
import { instrumentFields } from '../../kernel/form/instrument.ts';
import { conductorUnits } from '../../kernel/form/measured-units.ts';
import { temperatureUnit, windingTemperature } from '../../kernel/form/shared-fields.ts';
import { limitValue } from '../../kernel/limits.ts';
import { formatRounded } from '../../kernel/reading/format-reading.ts';
import { pairNames } from './pair-names.ts';
import { windingPairs } from './rule/pairs.ts';

export const pairFields: ReadingField[] = windingPairs.map((pair) => ({
  kind: 'reading',
  id: pair,
  label: pairNames[pair],
  name: pairNames[pair],
  quantity: 'resistance',
  units: conductorUnits,
  row: 'first set',
}));

/** The second set, which confirms the first. */
export const againFields: ReadingField[] = windingPairs.map((pair) => ({
  kind: 'reading',
  id: `${pair}again`,
  label: pairNames[pair],
  name: `${pairNames[pair]}, second set`,
  quantity: 'resistance',
  units: conductorUnits,
  row: 'second set',
}));

export const acrossJoint: ReadingField = {
  kind: 'reading',
  id: 'acrossJoint',
  label: 'Across the mated connector',
  name: 'Across the mated connector, odd lead',
  hint: `Only if it fails through the cable and passes at the motor. Connector plugged, four leads: from the crimp of the cable’s pin to the motor’s terminal behind it. A sound one has a few milliohms, above ${formatRounded(limitValue('winding-joint'), 'Ω')} is bad.`,
  quantity: 'resistance',
  units: conductorUnits,
};

const needed = formatRounded(limitValue('winding-four-leads-below'), 'Ω');

export const leads: ChoiceField = {
  kind: 'choice',
  id: 'leads',
  name: 'How are the test leads kept out?',
  hint: `Below ${needed} only four leads pass a winding, and up to some ohms mostly: the contact of two tips changes as much as the limit allows.`,
  options: [
    { value: 'four', label: 'Four leads', hint: 'A milliohm meter, two leads to each terminal.' },
    { value: 'zeroed', label: 'Two leads, zeroed', hint: 'With the tips held together, before the readings.' },
    { value: 'subtract', label: 'Two leads, take their reading off', hint: 'Type below what the tips together read.' },
  ],
  initial: '',
};

export const leadOhms: ReadingField = {
  kind: 'reading',
  id: 'leadOhms',
  label: 'Tips held together',
  name: 'Resistance of the leads, tips held together',
  hint: 'Only where it is to be taken off. Type 0.2 Ω.',
  quantity: 'resistance',
  units: conductorUnits,
};

export const connection: ChoiceField = {
  kind: 'choice',
  id: 'connection',
  name: 'Connection of the windings',
  hint: 'It changes which winding is suspect, not the verdict.',
  options: [
    { value: 'star', label: 'Star', hint: 'Most servo motors.' },
    { value: 'delta', label: 'Delta' },
    { value: 'unknown', label: 'Not known', hint: 'Both are worked out.' },
  ],
  initial: 'unknown',
};

export const windingKind: ChoiceField = {
  kind: 'choice',
  id: 'windingKind',
  name: 'Kind of winding',
  options: [
    {
      value: 'random-wound',
      label: 'Random-wound',
      hint: `Most servo motors. Up to ${formatRounded(limitValue('winding-unbalance-good'), '%')} passes.`,
    },
    {
      value: 'form-wound',
      label: 'Form coils',
      hint: `Large machines. Up to ${formatRounded(limitValue('winding-unbalance-good-form'), '%')} passes.`,
    },
  ],
  initial: 'random-wound',
};

const constant = (id: Parameters<typeof limitValue>[0]) => `Constant ${limitValue(id)}.`;

export const conductor: ChoiceField = {
  kind: 'choice',
  id: 'conductor',
  name: 'Metal of the winding',
  options: [
    { value: 'copper', label: 'Copper', hint: constant('winding-zero-copper') },
    { value: 'copper-iec', label: 'Copper, after IEC', hint: constant('winding-zero-copper-iec') },
    { value: 'aluminium', label: 'Aluminium', hint: constant('winding-zero-aluminium') },
  ],
  initial: 'copper',
};

export const correctTo: ChoiceField = {
  kind: 'choice',
  id: 'correctTo',
  name: 'Carry the readings to',
  options: [
    { value: 'to-20', label: formatRounded(limitValue('winding-reference-20'), '°C') },
    { value: 'to-25', label: formatRounded(limitValue('winding-reference-25'), '°C') },
  ],
  initial: 'to-20',
};

export const temperatureField: ReadingField = {
  ...windingTemperature,
  hint: 'From the built-in sensor, or from the housing once both have had hours to settle. Without it nothing is corrected.',
};

export const referenceFields: ReadingField[] = [
  {
    kind: 'reading',
    id: 'reference',
    label: 'Nameplate or earlier value',
    name: 'Nameplate or earlier value',
    hint: 'Line to line. A value for one winding of a star is half of that: type the double.',
    quantity: 'resistance',
    units: conductorUnits,
    check: (reading) =>
      reading.kind === 'missing' || (reading.kind === 'value' && reading.value > 0)
        ? undefined
        : 'A value to compare with is a plain resistance above zero. Type it like 1.84 Ω.',
  },
  {
    kind: 'reading',
    id: 'referenceTemperature',
    label: '… given for',
    name: 'Temperature of the nameplate or earlier value',
    hint: 'Such as 20 °C, or 25 °C.',
    quantity: 'temperature',
    bareUnitFrom: 'temperatureUnit',
  },
];

/**
 * The meter's highest reading is not asked for: over-range between two terminals of a winding is an open circuit on any
 * range.
 */
export const meterFields = instrumentFields('').filter(({ id }) => id !== 'upperLimit');

export const windingFields: FormField[] = [
  ...pairFields,
  ...againFields,
  acrossJoint,
  leads,
  leadOhms,
  connection,
  windingKind,
  temperatureField,
  temperatureUnit,
  conductor,
  correctTo,
  ...referenceFields,
  ...meterFields,
];
