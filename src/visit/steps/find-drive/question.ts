import type { TextField } from '../../../kernel/form/field.ts';
import { limitRange } from '../../../kernel/limits.ts';
import { choice, chosen, count, type Form, textOf } from '../fields.ts';
import type { Question } from '../question.ts';

/**
 * How the drive was found. `looked`: a permitted person looked at its indication during the trip, energised;
 * `not-permitted` and `known`: from drawings or an earlier record. `indicatedAxis` counts the drive's axes from 1.
 */
export interface FindDriveAnswer {
  observation: 'looked' | 'not-permitted' | 'known';
  axesOnDrive: number;
  indicatedAxis?: number;
}

const observation = choice<FindDriveAnswer['observation']>('observation', 'How did you find the drive?', {
  looked: 'I looked at its indication while the trip stood',
  'not-permitted': { label: 'From the drawings', hint: 'I am not permitted to look while energised.' },
  known: 'From an earlier record',
});
const axesOnDrive: TextField = {
  kind: 'text',
  id: 'axesOnDrive',
  name: 'How many motor outputs does this drive have?',
  hint: 'Count its groups of motor terminals.',
  digits: true,
};
const indicatedAxis: TextField = {
  kind: 'text',
  id: 'indicatedAxis',
  name: 'Which of these outputs does its indication name?',
  hint: 'Count from 1, as the manual counts. Leave it empty if there is one only, or if you did not look.',
  digits: true,
};
const outputLabel: TextField = {
  kind: 'text',
  id: 'outputLabel',
  name: 'Label at the motor terminals of this output',
  hint: 'From the drawings or the housing. Touch nothing.',
};

function read(form: Form): FindDriveAnswer | undefined {
  const how = chosen(form, observation);
  const range = limitRange('entry-axes');
  // The number of axes is needed only to check an indication that was looked at; otherwise assume one.
  const axes = count(form, axesOnDrive.id, range) ?? (how === 'looked' ? undefined : 1);
  if (how === undefined || axes === undefined || axes < 1) return undefined;
  // An indication that was looked at can only name the one output that there is; any other number contradicts it.
  const isEmpty = textOf(form, indicatedAxis.id).trim() === '';
  const indicated = isEmpty && how === 'looked' && axes === 1 ? 1 : count(form, indicatedAxis.id, range);
  if (how === 'looked' && indicated === undefined) return undefined;
  return { observation: how, axesOnDrive: axes, ...(indicated !== undefined && { indicatedAxis: indicated }) };
}

const foundBy = { looked: 'looked at', 'not-permitted': 'from the drawings', known: 'from an earlier record' };

function line(form: Form): string {
  const answer = read(form);
  if (answer === undefined) return '';
  const output = answer.indicatedAxis === undefined ? [] : [`output ${answer.indicatedAxis} of ${answer.axesOnDrive}`];
  const label = textOf(form, outputLabel.id).trim();
  return [...output, ...(label === '' ? [] : [`labelled ${label}`]), foundBy[answer.observation]].join(', ');
}

export const findDrive: Question<FindDriveAnswer> = {
  title: 'Find the drive and its output',
  instructions: [
    'Write down the controller’s message. It may name every axis of a drive that serves several.',
    'If you are qualified and permitted to look while energised: look at the drives’ own indications while the trip stands, and touch nothing.',
    'If you are not, do not open the cabinet: find the drive from the drawings or an earlier record.',
    'Note the drive’s outputs, with their terminal labels and axes.',
  ],
  why: 'The indication is gone after a reset. Kept in the record, the next visit need not look again.',
  when: 'First.',
  caution: 'Looking into an open, energised cabinet is energised work.',
  fields: [observation, axesOnDrive, indicatedAxis, outputLabel],
  read,
  line,
};

export const findDriveProblems = {
  'indication-contradicts':
    'The drive does not have the output that you noted. A drive can only name an output that it has: the indication is misread, or it is another drive’s. Look again.',
};
