import { isoTime } from '../../../../../src/kernel/time/iso-time.ts';
import { answerStep, newVisit, noteDecision } from '../../../../../src/visit/record/change-visit.ts';
import type { Snapshot } from '../../../../../src/visit/record/snapshot-schema.ts';
import type { VisitRecord } from '../../../../../src/visit/record/visit-schema.ts';
import type { Form } from '../../../../../src/visit/steps/fields.ts';
import type { StepId } from '../../../../../src/visit/steps/ids.ts';
import { liftVisit } from '../../../calculators/visits.ts';

const start = Date.UTC(2026, 2, 3, 4, 58, 12);

/** `minutes` after the visit began, on the clock of the place. */
export const at = (minutes: number) => isoTime(new Date(start + minutes * 60_000), 60);

export const failed: Snapshot = {
  verdict: 'no-go',
  sentences: [
    'DC−: V reads 3.8 Ω and its neighbours about 46 kΩ. The switch at DC− and V has failed short.',
    'Replace the complete drive. It is never mended by swapping parts between axes.',
  ],
  limits: [
    {
      id: 'bridge-tolerance',
      label: 'Allowed difference within a rail',
      value: '10 %',
      status: 'common-practice',
      source: '',
    },
    {
      id: 'touch-voltage',
      label: 'Voltage that is safe to touch',
      value: '60 V',
      status: 'standard',
      source: 'IEC 60204-1',
    },
  ],
};

const lockedOut = {
  lockedOut: 'yes',
  waited: 'yes',
  meterProved: 'yes',
  peProved: 'yes',
  supplyVoltage: '0.1 V',
  outputVoltage: '0.05 V',
  busVoltage: '0.03 V',
};

const answers: [StepId, number, Form, Snapshot?][] = [
  ['find-drive', 4, { observation: 'looked', axesOnDrive: '2', indicatedAxis: '1' }],
  ['symptom', 6, { when: 'on-enable', gravityLoaded: 'yes' }],
  ['lockout-1', 21, lockedOut],
  [
    'inspect',
    27,
    {
      reseated: 'yes',
      seenDrive: 'nothing',
      seenMotor: 'nothing',
      seenMotorCable: 'nothing',
      seenFeedbackCable: 'nothing',
    },
  ],
  ['disconnect-leads', 33, { done: 'yes' }],
  ['support-axis', 41, { done: 'yes' }],
  ['retry-leads-off', 46, { powerAllowed: 'yes', result: 'trips' }],
  ['lockout-2', 60, { ...lockedOut, busVoltage: '0.02 V' }],
  ['bridge', 68, { ...liftVisit('bridge'), leftOpen: '' }, failed],
  ['insulation', 84, { ...liftVisit('insulation'), leftOpen: '' }, failed],
  [
    'isolation',
    110,
    { ...liftVisit('isolation'), leftOpen: '' },
    { ...failed, parts: { cable: 'proven-good', motor: 'proven-bad', protectiveConductor: 'proven-good' } },
  ],
];

const choices = new Set(['motorLeads', 'occasion', 'leftOpen', 'cableEndsChecked']);

/** A whole visit, from the first look to the decision, as long as a technician would write it. Plant and people are invented. */
export function typicalVisit(id = '3f0c9a52-7d1e-4b86-9f35-0a4be1c7d260'): VisitRecord {
  const begun = newVisit(id, at(0), {
    machine: 'Line 2, glass-cutting gantry',
    axis: 'Lift (vertical, with brake)',
    drive: 'Cabinet 4, drive 3, two axes, serial 40117-22',
    motor: 'Lift motor, 400 V, 4.2 A, serial 88-3051',
    controllerMessage: 'Overcurrent, axes Bridge, Carriage, Lift',
    site: 'Marrow Bay Glassworks',
    person: 'Ines',
    servedAxes: [
      { drive: 'Drive 3', axes: ['Lift', 'Carriage'] },
      { drive: 'Drive 2', axes: ['Bridge'] },
    ],
    instruments: [
      { what: 'Multimeter', identification: 'MM-07, calibrated to June 2026', accuracy: '1.2 % + 4' },
      { what: 'Insulation tester', identification: 'IT-02, calibrated to May 2026', accuracy: '3.8 % + 9' },
    ],
    conditions: {
      airTemperature: '21 °C',
      humidity: '55 %',
      surroundings: 'Washing water near the Lift’s cable track',
    },
    notes: 'First trip on Tuesday 05:40, reset once by the operator. Cable track open at the lower end.',
  });
  const answered = answers.reduce((visit, [step, minutes, form, snapshot]) => {
    const reading = (field: string) => !choices.has(field) && /\d/.test(form[field] ?? '');
    const readings = snapshot
      ? Object.keys(form).filter(reading)
      : Object.keys(form).filter((f) => f.endsWith('Voltage'));
    return answerStep(visit, step, { form, readings, snapshot }, at(minutes));
  }, begun);
  const decision = {
    kind: 'replace' as const,
    sentences: ['Replace the complete drive and the motor. The cable is proven good and stays.'],
    replace: [
      { part: 'drive', proofs: ['trips-without-motor', 'bridge-bad'] },
      { part: 'motor', proofs: ['isolation-bad'] },
    ],
    good: ['motor-cable'],
    open: [],
    baseline: ['bridge', 'insulation', 'isolation'],
  };
  return noteDecision(answered, decision, at(118));
}
