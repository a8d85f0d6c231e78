import type { ChoiceField, FormField, ReadingField } from '../../kernel/form/field.ts';
import { conductorUnits, insulationUnits } from '../../kernel/form/measured-units.ts';
import { peMetres, peSection, testVoltage as voltage } from '../../kernel/form/shared-fields.ts';
import type { LoopId } from './rule/input.ts';

export const end: ChoiceField = {
  kind: 'choice',
  id: 'end',
  name: 'Is the cable off at both ends?',
  hint: 'Screen too, PE last. Then all its cores are joined at the far end with one short lead.',
  options: [
    { value: 'off', label: 'Off at both ends' },
    { value: 'on', label: 'Still on at one end' },
  ],
  initial: '',
};

export const meter: ChoiceField = {
  kind: 'choice',
  id: 'meter',
  name: 'Watched with',
  options: [
    { value: 'hold', label: 'Meter below 25 V, minimum and maximum hold' },
    { value: 'watched', label: 'Meter below 25 V, by eye' },
    { value: 'tester', label: 'Insulation tester' },
  ],
  initial: '',
};

export const moved: ChoiceField = {
  kind: 'choice',
  id: 'moved',
  name: 'What did you move while each loop was held?',
  hint: 'Bends, clamps, chain, entry into the plugs; then each connector.',
  options: [
    { value: 'twice', label: 'The whole way and both connectors, twice' },
    { value: 'once', label: 'The same, once' },
    { value: 'part', label: 'Only a part' },
  ],
  initial: '',
};

export const screen: ChoiceField = {
  kind: 'choice',
  id: 'screen',
  name: 'Screen',
  options: [
    { value: 'fitted', label: 'It has one' },
    { value: 'none', label: 'It has none' },
  ],
  initial: '',
};

export const idle: ChoiceField = {
  kind: 'choice',
  id: 'idle',
  name: 'Further cores in this cable',
  options: [
    { value: 'both', label: 'Brake, sensor' },
    { value: 'brake', label: 'Brake' },
    { value: 'sensor', label: 'Sensor' },
    { value: 'none', label: 'None' },
  ],
  initial: '',
};

export const loopNames: Record<LoopId, string> = {
  ...{ UV: 'U to V', VW: 'V to W', WU: 'W to U', PE: 'PE to U', screen: 'Screen to U' },
  ...{ brake: 'Brake pair', sensor: 'Sensor pair', feedback: 'Feedback pair' },
};

const columns = [
  ['Rest', 'At rest', 'at rest'],
  ['Low', 'Lowest', 'lowest held'],
  ['High', 'Highest', 'highest held'],
  ['After', 'At rest again', 'at rest again'],
] as const;

/** Four readings of one loop; `2` in their ids for the second movement. */
export const loopFields = (loop: LoopId, again = false): ReadingField[] =>
  columns.map(([id, label, name]) => ({
    ...{ kind: 'reading', id: `${loop}${id}${again ? '2' : ''}`, label, quantity: 'resistance', units: conductorUnits },
    name: `${loopNames[loop]}, ${name}${again ? ', second movement' : ''}`,
    row: `${loop}${again ? '2' : ''}`,
  }));

export const movedAgain: ChoiceField = {
  kind: 'choice',
  id: 'movedAgain',
  name: 'What did you move the second time?',
  hint: 'Tips lifted and cores joined again in between.',
  options: [
    { value: 'cable', label: 'Only the cable', hint: 'Both connectors and the tips held still.' },
    { value: 'half', label: 'Only the cable’s half of a connector', hint: 'Open, the cable held still.' },
    {
      value: 'mated',
      label: 'Only a plugged connector',
      hint: 'Motor plugged: the loops then go through its windings.',
    },
    { value: 'all', label: 'All of it' },
  ],
  initial: '',
};

const phases = ['U', 'V', 'W'] as const;
const insulation = { quantity: 'resistance', units: insulationUnits, lowIsWorse: true } as const;

export const places = [1, 2, 3, 4, 5] as const;

export const positionFields = (place: number): ReadingField[] =>
  phases.map((phase) => ({
    ...{ kind: 'reading', id: `P${place}${phase}`, label: phase, name: `${phase} in position ${place}` },
    ...{ ...insulation, row: `P${place}` },
  }));

export const badAgainFields: ReadingField[] = phases.map((phase) => ({
  ...{ kind: 'reading', id: `badAgain${phase}`, label: phase, name: `${phase} in the bad position, once more` },
  ...{ ...insulation, row: 'badAgain' },
}));

export const whileOn: ChoiceField = {
  kind: 'choice',
  id: 'whileOn',
  name: 'The cable while the test voltage was on',
  options: [
    { value: 'at-rest', label: 'Fixed, nobody near it' },
    { value: 'moved', label: 'Held or moved' },
  ],
  initial: '',
};

export const testVoltage: ReadingField = { ...voltage, hint: 'As set, at rest: 500 V.' };

export const metres: ReadingField = {
  ...peMetres,
  id: 'metres',
  label: 'Length',
  name: 'Length of the cable',
  hint: 'One way.',
};

export const section: ChoiceField = { ...peSection, id: 'section', name: 'Cross-section of a power core' };

const allLoops = Object.keys(loopNames) as LoopId[];
const always: readonly LoopId[] = ['UV', 'VW', 'WU', 'PE'];

export const bendFields: FormField[] = [
  ...always.flatMap((loop) => loopFields(loop)),
  end,
  meter,
  moved,
  screen,
  idle,
  ...allLoops.filter((loop) => !always.includes(loop)).flatMap((loop) => loopFields(loop)),
  movedAgain,
  ...allLoops.flatMap((loop) => loopFields(loop, true)),
  whileOn,
  testVoltage,
  ...places.flatMap(positionFields),
  ...badAgainFields,
  metres,
  section,
];
