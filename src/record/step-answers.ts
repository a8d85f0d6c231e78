import { limitRange, parseReading, type Reading } from '../calc/index.ts';
import type { Answers, BusAnswer, DoneAnswer, LockoutAnswer, RetryAnswer } from '../guide/answers.ts';
import { type MeasurementStepId, oneReadingField, stepForms } from './step-forms.ts';

/** Fields of a form by id, exactly as typed or chosen. */
export type Form = Readonly<Record<string, string>>;

export type PlainAnswerId = Exclude<keyof Answers, MeasurementStepId>;

type Readers = { [Id in PlainAnswerId]: (form: Form) => Answers[Id] | undefined };

const done = (form: Form): DoneAnswer | undefined => {
  const answer = chosen(form, 'done', stepForms.reconnect.done);
  return answer && { done: answer === 'yes' };
};

const retry = (form: Form): RetryAnswer | undefined => {
  const result = chosen(form, 'result', stepForms['retry-all'].result);
  return result && { powerAllowed: ticked(form, 'powerAllowed'), result };
};

/** What is not ticked was not done; the guide then says which of it is missing. */
const lockout = (form: Form): LockoutAnswer | undefined => {
  const ticks = {
    lockedOut: ticked(form, 'lockedOut'),
    waited: ticked(form, 'waited'),
    meterProved: ticked(form, 'meterProved'),
    peProved: ticked(form, 'peProved'),
  };
  const bus = voltage(form, 'busVoltage');
  // Version 1 asked for the highest of all points in one field, and not for PE.
  const oneReading = ticked(form, oneReadingField);
  const supply = oneReading ? bus : voltage(form, 'supplyVoltage');
  const output = oneReading ? bus : voltage(form, 'outputVoltage');
  if (!begun(form) || bus === undefined || supply === undefined || output === undefined) return undefined;
  const answer = { ...ticks, supplyVoltage: supply, outputVoltage: output, busVoltage: bus };
  return oneReading ? { ...answer, peProved: true } : answer;
};

const busAgain = (form: Form): BusAnswer | undefined => {
  const bus = voltage(form, 'busVoltage');
  return bus && begun(form) ? { meterProved: ticked(form, 'meterProved'), busVoltage: bus } : undefined;
};

function begun(form: Form): boolean {
  return Object.entries(form).some(([id, value]) => (id.endsWith('Voltage') ? value.trim() !== '' : value === 'yes'));
}

/** Undefined for a text that can't be read; `missing` for none. */
function voltage(form: Form, id: string): Reading | undefined {
  const read = parseReading(text(form, id), 'voltage');
  return read.ok ? read.reading : undefined;
}

const readers: Readers = {
  'find-drive': (form) => {
    const fields = stepForms['find-drive'];
    const observation = chosen(form, 'observation', fields.observation);
    const indicatedAxis = count(form, 'indicatedAxis');
    // Only an indication that was looked at is held against the number of axes; else a drive has at least one.
    const axesOnDrive = count(form, 'axesOnDrive') ?? (observation === 'looked' ? undefined : 1);
    if (observation === undefined || axesOnDrive === undefined || axesOnDrive < 1) return undefined;
    if (observation === 'looked' && indicatedAxis === undefined) return undefined;
    return { observation, axesOnDrive, ...(indicatedAxis !== undefined && { indicatedAxis }) };
  },
  symptom: (form) => {
    const when = chosen(form, 'when', stepForms.symptom.when);
    const gravityLoaded = chosen(form, 'gravityLoaded', stepForms.symptom.gravityLoaded);
    return when && gravityLoaded && { when, gravityLoaded };
  },
  'lockout-1': lockout,
  'lockout-2': lockout,
  'lockout-3': lockout,
  'prove-again': lockout,
  'bus-again': busAgain,
  inspect: (form) => {
    const fields = stepForms.inspect;
    const reseated = chosen(form, 'reseated', fields.reseated);
    const drive = chosen(form, 'seenDrive', fields.seenDrive);
    const motor = chosen(form, 'seenMotor', fields.seenMotor);
    const motorCable = chosen(form, 'seenMotorCable', fields.seenMotorCable);
    const feedbackCable = chosen(form, 'seenFeedbackCable', fields.seenFeedbackCable);
    const all = reseated && drive && motor && motorCable && feedbackCable;
    return all && { reseated, seen: { drive, motor, motorCable, feedbackCable } };
  },
  'unplug-feedback': done,
  'retry-feedback-off': retry,
  'unplug-device-end': done,
  'retry-device-end': retry,
  'plug-feedback': done,
  'retry-feedback-on': retry,
  mechanics: (form) => {
    const found = chosen(form, 'found', stepForms.mechanics.found);
    return found && { found };
  },
  'disconnect-leads': done,
  'support-axis': done,
  'support-again': done,
  'retry-leads-off': retry,
  'connect-pe': done,
  reconnect: done,
  'retry-all': retry,
};

/**
 * The guide's answer from the form of a step that is not a calculator. A form that is incomplete or can't be read
 * gives none, so that the step stays due. Never throws.
 */
export function plainAnswer<Id extends PlainAnswerId>(id: Id, form: Form): Answers[Id] | undefined {
  return readers[id](form);
}

export function ticked(form: Form, id: string): boolean {
  return text(form, id) === 'yes';
}

function text(form: Form, id: string): string {
  return Object.keys(form).includes(id) ? (form[id] ?? '') : '';
}

function chosen<Answer extends string>(form: Form, id: string, answers: readonly Answer[]): Answer | undefined {
  return answers.find((answer) => answer === text(form, id));
}

/** A whole number as typed; undefined for anything else, and for more than a form accepts. */
function count(form: Form, id: string): number | undefined {
  const typed = text(form, id).trim();
  const { from, to } = limitRange('entry-axes');
  const number = /^\d{1,4}$/.test(typed) ? Number(typed) : undefined;
  return number !== undefined && number >= from && number <= to ? number : undefined;
}
