import type { PeRemark } from '../assessment/protective-conductor.ts';
import { limitValue } from '../limits.ts';
import { formatQuantity, inOhms } from '../reading/format-reading.ts';
import { formatFigure } from './format-limit.ts';
import type { FindingSentences } from './sentences.ts';

const shown = (ohms: number) => formatQuantity(Number(ohms.toPrecision(2)), 'Ω');

/** What every calculator says about a protective conductor beside its verdict. */
export const peRemarkTexts: FindingSentences<PeRemark> = {
  'pe-by-multimeter': () =>
    `A multimeter sends some milliamperes at most: a film on a contact or one last strand is enough to pass. The usual instrument is a continuity tester with ${formatFigure(limitValue('continuity-current'), 'A')} or more.`,
  'pe-lower-than-expected': ({ expectedOhms }) =>
    `The PE core alone should have about ${shown(expectedOhms)}. Much less means that the current also went another way, such as the screen: take that off, or the core is not proven.`,
  'pe-above-expected': ({ expectedOhms, shortOhms }) =>
    expectedOhms === undefined
      ? `PE reads more than ${inOhms(shortOhms)}. A long thin core does that, and so does a bad contact: type the length and the cross-section of the core.`
      : `The PE core alone should have about ${shown(expectedOhms)}, with its contacts ${shown(shortOhms)} at most. Find out why it has more: clean the terminal and the pin, zero the leads, and measure again.`,
  'pe-frame-not-stated': () =>
    'Say what else connects the motor frame to the machine ground. Without another connection a sound PE core reads open too.',
  'pe-frame-only-by-pe': () =>
    'Only the PE core connects the motor frame to the machine ground, so this reading has no way back and says nothing of the core. Measure the core end to end: from its drive end to the motor frame, with a long test lead that is zeroed.',
};
