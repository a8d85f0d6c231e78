import type { ChoiceField, FormField, ReadingField } from '../../kernel/form/field.ts';
import { instrumentFields } from '../../kernel/form/instrument.ts';
import { conductorUnits, insulationUnits } from '../../kernel/form/measured-units.ts';
import { peMetres, peSection, temperatureUnit } from '../../kernel/form/shared-fields.ts';

export const axis: ChoiceField = {
  kind: 'choice',
  id: 'axis',
  name: 'Is the axis held?',
  hint: 'Before the brake plug comes off, and before anything releases the brake.',
  options: [
    { value: 'held', label: 'On its support or pinned, or it can’t fall' },
    { value: 'not-held', label: 'Only the brake holds it' },
  ],
  initial: '',
};

export const busVoltage: ReadingField = {
  kind: 'reading',
  id: 'busVoltage',
  label: 'DC-bus voltage',
  name: 'DC-bus voltage',
  hint: 'DC+ to DC−, just before the ohms, with a meter that you have tried on a known source.',
  quantity: 'voltage',
};

export const leads: ChoiceField = {
  kind: 'choice',
  id: 'plugAndLeads',
  name: 'Brake cores and motor leads at the drive’s end',
  hint: 'While the ohms are read, wherever they are fed: drive, relay or supply. A brake supply is often joined to PE.',
  options: [
    { value: 'off', label: 'Off' },
    { value: 'connected', label: 'Still on' },
  ],
  initial: '',
};

export const circuit: ChoiceField = {
  kind: 'choice',
  id: 'circuit',
  name: 'What lies between the terminals and the coil?',
  options: [
    {
      value: 'plain',
      label: 'Nothing: steady DC on a plain coil',
      hint: 'A diode or a varistor across it may be there.',
    },
    { value: 'electronics', label: 'A rectifier, an economy circuit or a pulsed output' },
  ],
  initial: '',
};

const reading = (
  id: string,
  label: string,
  name: string,
  hint: string,
  rest: Pick<ReadingField, 'quantity'> & Partial<ReadingField>,
): ReadingField => ({ kind: 'reading', id, label, name, hint, ...rest });

const ohms = { quantity: 'resistance', units: conductorUnits } as const;
const isolation = { quantity: 'resistance', units: insulationUnits, row: 'isolation', lowIsWorse: true } as const;

export const plateFields: ReadingField[] = [
  reading('ratedVolts', 'Rated voltage', 'Rated voltage of the brake', 'DC: 24 V.', { quantity: 'voltage' }),
  reading('ratedWatts', 'Rated power', 'Rated power of the brake', 'At 20 °C: 12 W.', { quantity: 'power' }),
  reading('ratedOhms', 'Or coil ohms', 'Coil resistance by plate or manual', 'At 20 °C, if stated.', ohms),
];

export const coilFields: ReadingField[] = [
  reading('atMotor', 'At the motor', 'Coil, at the motor', 'Both ways round: the higher figure.', {
    ...ohms,
    row: 'coil',
  }),
  reading('atDrive', 'At the drive’s end', 'Coil through the cable', 'Plug off the drive, motor plugged.', {
    ...ohms,
    row: 'coil',
  }),
  reading('coilTemperature', 'Coil temperature', 'Coil temperature', 'Of its housing, settled for hours.', {
    quantity: 'temperature',
    bareUnitFrom: temperatureUnit.id,
  }),
];

export const isolationFields: ReadingField[] = [
  reading('toPhases', 'To U, V and W', 'Brake cores to U, V and W', 'The lowest of six.', isolation),
  reading('toPe', 'To PE and screen', 'Brake cores to PE and screen', 'The lower of two.', isolation),
  reading('coresApart', 'To each other', 'Brake cores to each other', 'Motor unplugged, the cable alone.', isolation),
];

export const supplyFields: ReadingField[] = [
  reading('plugVolts', 'At the motor', 'Voltage at the motor’s end', 'Its brake pins: DC, connected, released.', {
    quantity: 'voltage',
  }),
  reading('sourceVolts', 'At its source', 'Voltage at the source', 'Drive or relay, at the same moment.', {
    quantity: 'voltage',
  }),
];

export const release: ChoiceField = {
  kind: 'choice',
  id: 'release',
  name: 'What does it do when the control releases it?',
  hint: 'Heard at the motor, and measured: the current afterwards, against the record.',
  options: [
    { value: 'opens', label: 'It clicks, and the motor turns with its usual current' },
    { value: 'drags', label: 'It clicks, and drags: heat, dust, more current all along' },
    { value: 'shut', label: 'It stays shut: no click, or the motor pushes against it' },
    { value: 'not-tried', label: 'Not tried' },
  ],
  initial: 'not-tried',
};

export const metresField: ReadingField = {
  ...peMetres,
  id: 'metres',
  label: 'Length of the brake cores',
  name: 'Length of the brake cores',
  hint: 'One way, drive to motor.',
};

export const section: ChoiceField = { ...peSection, id: 'section', name: 'Cross-section of one brake core' };

export const supplyTolerance: ReadingField = {
  kind: 'reading',
  id: 'supplyTolerance',
  label: 'Tolerance of its voltage, ± %',
  name: 'Tolerance of the voltage',
  hint: 'From the brake’s manual, if it has one.',
  quantity: 'percent',
};

export const meterFields = instrumentFields('').filter(({ id }) => id !== 'upperLimit');

export const brakeFields: FormField[] = [
  ...plateFields,
  axis,
  busVoltage,
  leads,
  circuit,
  ...coilFields,
  temperatureUnit,
  ...isolationFields,
  ...supplyFields,
  release,
  metresField,
  section,
  supplyTolerance,
  ...meterFields,
];
