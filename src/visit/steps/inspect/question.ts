import { lastIn } from '../../../kernel/reading/last-in.ts';
import type { Damage, InspectedPart } from '../../../kernel/vocabulary.ts';
import { allChosen, choice, chosen, type Form, remark, several } from '../fields.ts';
import type { Question } from '../question.ts';

export interface InspectAnswer {
  /** The plug-in control board and the connectors were reseated; `none` if the drive has no such board. */
  reseated: 'yes' | 'no' | 'none';
  /** By part, the gravest of what was seen. */
  seen: Record<InspectedPart, Damage>;
}

export const inspectedPartNames: Record<InspectedPart, string> = {
  drive: 'Drive',
  motor: 'Motor and its connector',
  motorCable: 'Motor cable',
  feedbackCable: 'Feedback cable',
};

/** From the least to the gravest: the guide counts the gravest of a part. */
const byGravity = [
  'nothing',
  'unseen',
  'loose',
  'bent',
  'corroded',
  'wet',
  'chafed',
  'burnt',
] as const satisfies Damage[];

const damages: Record<Damage, string> = {
  nothing: 'Nothing',
  burnt: 'Burnt',
  chafed: 'Chafed',
  wet: 'Wet',
  corroded: 'Corroded',
  bent: 'Bent',
  loose: 'Loose',
  unseen: 'Couldn’t look',
};
const inLine: Record<Damage, string> = {
  ...{ nothing: 'nothing', burnt: 'burnt', chafed: 'chafed', wet: 'wet' },
  ...{ corroded: 'corroded', bent: 'bent', loose: 'loose', unseen: 'not looked at' },
};

const seen = (part: InspectedPart, id: string) =>
  several<Damage>(id, inspectedPartNames[part], damages, ['nothing', 'unseen']);

const looks = {
  drive: seen('drive', 'seenDrive'),
  motor: seen('motor', 'seenMotor'),
  motorCable: seen('motorCable', 'seenMotorCable'),
  feedbackCable: seen('feedbackCable', 'seenFeedbackCable'),
};
const parts = Object.keys(looks) as InspectedPart[];
const reseated = choice('reseated', 'Last: did you re-seat plugs or boards?', {
  yes: 'Re-seated',
  none: 'Left as they are',
});

function read(form: Form): InspectAnswer | undefined {
  const seated = chosen(form, reseated, 'no');
  const drive = gravest(form, 'drive');
  const motor = gravest(form, 'motor');
  const motorCable = gravest(form, 'motorCable');
  const feedbackCable = gravest(form, 'feedbackCable');
  const all = seated && drive && motor && motorCable && feedbackCable;
  return all && { reseated: seated, seen: { drive, motor, motorCable, feedbackCable } };
}

function gravest(form: Form, part: InspectedPart): Damage | undefined {
  const found = allChosen(form, looks[part]);
  return found && lastIn(byGravity.filter((damage) => found.includes(damage)));
}

function line(form: Form): string {
  if (read(form) === undefined) return '';
  const found = parts.flatMap((part) => {
    const shown = (allChosen(form, looks[part]) ?? []).filter((damage) => damage !== 'nothing');
    return shown.length === 0 ? [] : [`${inspectedPartNames[part]}: ${shown.map((one) => inLine[one]).join(' and ')}`];
  });
  return found.length === 0 ? 'Nothing seen' : found.join(', ');
}

export const inspect: Question<InspectAnswer> = {
  title: 'Look at all parts',
  instructions: [
    'Look for parts that are burnt, chafed, wet, corroded, bent or loose: drive, motor and its connector, motor cable, feedback cable.',
    'Choose all that a part shows. A part that you could not look at is not known to be sound, and gets no power.',
    'Write down what you see, and take a photograph before you touch anything.',
    'Last, and only if you want to: re-seat the drive’s plugs and boards. Wear a wrist strap, hold a board by its edges, and write down which.',
  ],
  why: 'A burnt or wet part saves you hours. A loose plug trips a drive that has no fault; one that you moved may have mended it. Common practice.',
  when: 'After the first lockout, before any measurement.',
  fields: [...Object.values(looks), reseated, remark],
  groups: [
    {
      legend: 'What do you see?',
      fields: Object.values(looks),
      offer: { label: 'Nothing on the parts that are still open', value: 'nothing' },
    },
  ],
  read,
  line,
};
