import type { Step } from '../../kernel/assessment/assessment.ts';
import { limitValue } from '../../kernel/limits.ts';
import { inOhms } from '../../kernel/reading/format-reading.ts';
import { capital, type FindingSentences, type StepSentences } from '../../kernel/words/sentences.ts';
import type { ConvictionFinding, ConvictionPayloads, Ground } from './rule/conviction.ts';
import type { IsolationStepCode } from './rule/input.ts';

const lacking: Record<ConvictionPayloads['part-suspect']['lacks'], string> = {
  'second-reading': 'a second reading, clean and dry',
  drying: 'cleaning and drying before the second reading',
  comparison: 'its own reading from before the trip, or that of a sound part of the same kind',
};

const grounds: Record<Ground, (limitOhms: number) => string> = {
  'short-twice': (limit) => `it reads below ${inOhms(limit)} twice, and moisture hardly does that`,
  'below-minimum': (limit) => `clean and dry it is still below the published minimum of ${inOhms(limit)}`,
  'far-below-own': () =>
    `clean and dry it is more than ${limitValue('far-below-own')} times below its own earlier reading, or its sister’s`,
};

export const convictionFindings: FindingSentences<ConvictionFinding> = {
  'part-suspect': ({ part, lacks }) =>
    `The ${part} is suspect: no new drive is connected to it. That it fails the after-trip limit does not prove it bad, since a sound old one or a wet one reads so too. To tell, it lacks ${lacking[lacks]}.`,
  'part-convicted': ({ part, ground, limitOhms }) => `The ${part} is proven bad: ${grounds[ground](limitOhms)}.`,
  'again-bad': ({ part, limitOhms }) =>
    `${capital(part)} alone: its lowest terminal, read again, stays below ${inOhms(limitOhms)}.`,
  'again-unclear': ({ part }) => `${capital(part)} alone: the second reading does not tell.`,
  'dried-and-good': ({ part }) =>
    `${capital(part)} alone: its lowest terminal, read again, is good. Water, dirt or a contact made the first reading. The ${part} is not proven bad; it is not simply good either, since the water comes back.`,
};

type ConvictionStepCode = Extract<
  IsolationStepCode,
  | 'read-pe-again'
  | 'read-cable-again'
  | 'read-motor-again'
  | 'compare-cable'
  | 'compare-motor'
  | 'state-cable-length'
  | 'find-the-water'
>;

const again = (what: string) =>
  `Take the leads off, clean and dry ${what}, and read the lowest terminal once more. A short needs no drying.`;

export const convictionSteps: StepSentences<Step<ConvictionStepCode>> = {
  'read-pe-again': () =>
    'Clean the contacts of PE, zero the leads and read it once more at the same place, on bare metal.',
  'read-cable-again': () => again('both ends of the cable'),
  'read-motor-again': () => `${again('the motor connector')} A motor that was warmed to dry it cools first.`,
  'compare-cable': () =>
    'Compare the cable with its own reading from before the trip, or with a sound cable of the same kind and length, at about the same temperature.',
  'compare-motor': () =>
    'Compare the motor with its own reading from before the trip, or with a sound motor of the same kind, at about the same temperature. Without one it stays a suspicion: dry it for longer, or have it tested.',
  'state-cable-length': () =>
    'Type the length, the insulation and the temperature of the cable: a long or warm one reads low without a fault.',
  'find-the-water': () =>
    'Find where the water or dirt came from and stop it. Dry all connectors, then take every row again.',
};
