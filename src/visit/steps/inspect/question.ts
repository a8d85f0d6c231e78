import type { Damage, InspectedPart } from '../../../kernel/vocabulary.ts';
import { choice, chosen, type Form, remark } from '../fields.ts';
import type { Question } from '../question.ts';

export interface InspectAnswer {
  /** The plug-in control board and the connectors were reseated; `none` if the drive has no such board. */
  reseated: 'yes' | 'no' | 'none';
  seen: Record<InspectedPart, Damage>;
}

export const inspectedPartNames: Record<InspectedPart, string> = {
  drive: 'Drive',
  motor: 'Motor and its connector',
  motorCable: 'Motor cable',
  feedbackCable: 'Feedback cable',
};

const damages: Record<Damage, string> = { nothing: 'Nothing', burnt: 'Burnt', wet: 'Wet', chafed: 'Chafed' };

const seen = (part: InspectedPart, id: string) => choice(id, `${inspectedPartNames[part]}: what do you see?`, damages);

const looks = {
  drive: seen('drive', 'seenDrive'),
  motor: seen('motor', 'seenMotor'),
  motorCable: seen('motorCable', 'seenMotorCable'),
  feedbackCable: seen('feedbackCable', 'seenFeedbackCable'),
};
const reseated = choice('reseated', 'Last: did you seat plugs or boards anew?', {
  yes: 'Seated anew',
  none: 'Left as they are',
});

function read(form: Form): InspectAnswer | undefined {
  const seated = chosen(form, reseated, 'no');
  const drive = chosen(form, looks.drive);
  const motor = chosen(form, looks.motor);
  const motorCable = chosen(form, looks.motorCable);
  const feedbackCable = chosen(form, looks.feedbackCable);
  const all = seated && drive && motor && motorCable && feedbackCable;
  return all && { reseated: seated, seen: { drive, motor, motorCable, feedbackCable } };
}

function line(form: Form): string {
  const answer = read(form);
  if (answer === undefined) return '';
  const damaged = (Object.keys(looks) as InspectedPart[]).filter((part) => answer.seen[part] !== 'nothing');
  if (damaged.length === 0) return 'Nothing seen';
  return damaged.map((part) => `${inspectedPartNames[part]}: ${answer.seen[part]}`).join(', ');
}

export const inspect: Question<InspectAnswer> = {
  title: 'Look at all parts',
  instructions: [
    'Look for burnt, wet or chafed parts: drive, motor and its connector, motor cable, feedback cable.',
    'Write down what you see, and take a photograph before you touch anything.',
    'Last, and only if you want to: seat the drive’s plugs and boards anew. Wear a wrist strap, hold a board by its edges, and write down which.',
  ],
  why: 'A burnt or wet part saves you hours. A loose plug trips a drive that has no fault; one that you moved may have mended it. Common practice.',
  when: 'After the first lockout, before any measurement.',
  fields: [...Object.values(looks), reseated, remark],
  read,
  line,
};
