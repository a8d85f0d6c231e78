import { newVisit, type VisitDetails } from '../../src/visit/record/change-visit.ts';
import type { VisitRecord } from '../../src/visit/record/visit-schema.ts';
import type { Form } from '../../src/visit/steps/fields.ts';
import type { StepId } from '../../src/visit/steps/ids.ts';
import { confirmStep, enterStep } from './visit-records.ts';

/** Steps in the order in which a person answers them. */
export type Entry = readonly [StepId, Form];

/** A clock that advances four minutes with each entry, so that every time in a record differs. */
export function* clock(): Generator<string, never> {
  for (let minutes = 0; ; minutes += 4) {
    const two = (number: number) => String(number).padStart(2, '0');
    yield `2026-03-03T${two(6 + Math.floor(minutes / 60))}:${two(minutes % 60)}:00+01:00`;
  }
}

export function visitOf(
  entries: readonly Entry[],
  details: Partial<VisitDetails> = {},
  id = 'marrow-bay-1',
): VisitRecord {
  const times = clock();
  const begun = newVisit(id, times.next().value, { ...lift, ...details });
  return entries.reduce((visit, [step, form]) => enterStep(visit, step, form, times.next().value), begun);
}

export { confirmStep };

/** Invented, like everything of Marrow Bay. */
export const lift: Partial<VisitDetails> = {
  machine: 'Marrow Bay line 2 (invented)',
  axis: 'Lift',
  drive: 'Drive 2 of 3, serial number 0417',
  motor: 'Motor of the Lift, with brake, serial number 1108',
  controllerMessage: 'OVERCURRENT, AXES BRIDGE CARRIAGE LIFT',
  site: 'Marrow Bay Glassworks',
  person: 'Ines',
  servedAxes: [{ drive: 'Drive 2', axes: ['Bridge', 'Carriage', 'Lift'] }],
  instruments: [
    { what: 'Multimeter', identification: 'M-07, calibrated until 2026-09', accuracy: '1.2 % + 4 counts' },
    { what: 'Insulation tester', identification: 'T-02, calibrated until 2026-06', accuracy: '3.8 % + 9 counts' },
  ],
  conditions: { airTemperature: '21 °C', humidity: '55 %', surroundings: 'dry, glass dust' },
};

export const locked: Form = {
  lockedOut: 'yes',
  waited: 'yes',
  meterProved: 'yes',
  peProved: 'yes',
  supplyVoltage: '0.1 V',
  outputVoltage: '0.05 V',
  busVoltage: '0.03 V',
};
const busLow: Form = { meterProved: 'yes', busVoltage: '0.04 V' };
export const nothingSeen: Form = {
  reseated: 'yes',
  seenDrive: 'nothing',
  seenMotor: 'nothing',
  seenMotorCable: 'nothing',
  seenFeedbackCable: 'nothing',
};
export const done: Form = { done: 'yes' };
export const retried = (result: 'trips' | 'no-trip' | 'not-done'): Form => ({ powerAllowed: 'yes', result });

export const soundBridge: Form = {
  busVoltage: '0.03 V',
  motorLeads: 'off',
  alsoOnBus: 'nothing',
  plusU: '482k',
  plusV: '495k',
  plusW: '488k',
  minusU: '46.1k',
  minusV: '45.2k',
  minusW: '45.7k',
};
export const soundInsulation: Form = {
  occasion: 'after-trip',
  idleCores: 'none',
  filter: 'none',
  U: '>700M',
  V: '>700M',
  W: '>700M',
  PE: '0.2 Ω',
  testVoltage: '500 V',
  ratedVoltage: '400 V',
  windingTemperature: '25 °C',
};
export const soundWinding: Form = { UV: '1.820 Ω', VW: '1.822 Ω', WU: '1.819 Ω', leads: 'four' };
export const badInsulation: Form = { ...soundInsulation, U: '1.1M', V: '1.3M', W: '1.2M' };
const joinedBad = { joinedU: '1.1M', joinedV: '1.3M', joinedW: '1.2M', joinedPE: '0.2 Ω' };
export const bothBad: Form = {
  ...joinedBad,
  ...{ idleCores: 'none', filter: 'none', motorAgain: '1.8M', motorDried: 'yes' },
  ...{ cableAgain: '2.9M', cableDried: 'yes', cableSister: '2G' },
  ...{ testVoltage: '500 V', windingTemperature: '25 °C', cableEndsChecked: 'yes' },
  ...{ cableU: '3M', cableV: '3.2M', cableW: '3.1M', cablePE: '2G', bondedU: '2.9M', bondedV: '3.1M', bondedW: '3M' },
  ...{ motorU: '1.8M', motorV: '2.1M', motorW: '1.9M', motorPE: '0.2 Ω' },
};

const found: Entry[] = [['find-drive', { observation: 'looked', axesOnDrive: '3', indicatedAxis: '3' }]];

/** Its output stage fails, twice; motor and cable pass. */
export const driveOnly: Entry[] = [
  ...found,
  ['symptom', { when: 'on-enable', gravityLoaded: 'yes' }],
  ['support-axis', done],
  ['lockout-1', locked],
  ['inspect', nothingSeen],
  ['disconnect-leads', done],
  ['retry-leads-off', retried('trips')],
  ['lockout-2', locked],
  ['bridge', { ...soundBridge, minusV: '3.8 Ω', worstAgain: '3.7 Ω' }],
  ['winding', soundWinding],
  ['idle-cores', { cores: 'none' }],
  ['insulation', soundInsulation],
];

/** The bus is measured again after the readings at the output stage, as the guide asks. */
export const withBusAgain = (entries: readonly Entry[]): Entry[] =>
  entries.flatMap((entry) => (entry[0] === 'bridge' ? [entry, ['bus-again', busLow] as const] : [entry]));

/** The joined insulation fails, and alone both are bad. */
export const motorAndCable: Entry[] = [
  ...found,
  ['symptom', { when: 'on-acceleration', gravityLoaded: 'no' }],
  ['lockout-1', locked],
  ['inspect', { ...nothingSeen, remark: 'Coolant in the motor connector.' }],
  ['disconnect-leads', done],
  ['mechanics', { found: 'free' }],
  ['bridge', soundBridge],
  ['winding', soundWinding],
  ['idle-cores', { cores: 'none' }],
  ['insulation', badInsulation],
  ['isolation', bothBad],
];
