import { limitValue } from '../../kernel/limits.ts';
import { formatRounded } from '../../kernel/reading/format-reading.ts';
import { type FindingSentences, listed } from '../../kernel/words/sentences.ts';
import { positionName, railNames, switchName } from './position-names.ts';
import type { Lacking } from './rule/conviction.ts';
import type { BridgeFinding } from './rule/findings.ts';

// What is said of readings that were taken twice, and of what a proof still lacks.

type SecondFinding = Extract<
  BridgeFinding,
  {
    code:
      | 'rail-short-both-ways'
      | 'rail-read-forward'
      | 'rail-first-contradicts'
      | 'rail-first-odd'
      | 'rail-still-climbing'
      | 'rail-first-replaced'
      | 'again-contradicts'
      | 'again-does-not-fit'
      | 'sister-differs'
      | 'bus-shorted'
      | 'bus-low'
      | 'bus-not-shorted';
  }
>;

const short = () => formatRounded(limitValue('bridge-short'), 'Ω');
const metal = () => formatRounded(limitValue('bridge-metal'), 'Ω');

export const secondReadingFindings: FindingSentences<SecondFinding> = {
  'rail-short-both-ways': ({ rail, suspects }) =>
    `All of ${railNames[rail]} reads ${short()} or less, and so does U with the leads exchanged. A diode blocks one way, so this is a short: the ${listed(suspects.map(switchName))}, or the bus itself.`,
  'rail-read-forward': ({ rail }) =>
    `U at ${railNames[rail]} reads more with the leads exchanged. So the row was read with the diodes conducting, and it says nothing of the transistors.`,
  'rail-first-contradicts': ({ rail }) =>
    `U at ${railNames[rail]} was ${metal()} or less at first and is not any more. No capacitor reads so little: a tip slipped, or a short comes and goes.`,
  'rail-first-odd': ({ rail }) =>
    `The readings from ${railNames[rail]} do not agree, but U was read first. The bus capacitor charges from the meter, so a sound drive shows this too.`,
  'rail-still-climbing': ({ rail }) =>
    `The readings from ${railNames[rail]} climb in the order in which they were taken, U again included. The bus capacitor still charges from the meter: none of them counts yet.`,
  'rail-first-replaced': ({ rail }) =>
    `At ${railNames[rail]} the second reading of U counts, since the first was taken while the figure still moved.`,
  'again-contradicts': ({ position }) =>
    `The second reading of ${positionName(position)} does not confirm the first. One of the two was a slip.`,
  'again-does-not-fit': () =>
    'The reading that you took once more fits neither rail: it would have to agree with all three of one, and be no short.',
  'sister-differs': () =>
    'The readings agree with each other, and you said that a sound drive of the same model shows another pattern. Find out why before this drive counts as good.',
  'bus-shorted': () =>
    `DC+ to DC− reads ${metal()} or less: a short across the bus, in the drive or in what else hangs on it. With power on it blows the fuses.`,
  'bus-low': () =>
    `DC+ to DC− reads ${short()} or less, or may. A capacitor that still charges shows this, diodes with the leads exchanged, or a short across the bus.`,
  'bus-not-shorted': () => 'DC+ to DC− is no short.',
};

const lacks: Record<Lacking, string> = {
  'motor-leads-off': 'the statement that the motor leads are off',
  'nothing-else-on-bus': 'the statement that nothing else is on DC+ and DC−',
  'second-reading': 'a second reading of the same terminal that shows the same',
  'steady-first': 'U of that row read again last, standing where it stood, and the odd terminal read again',
  'row-that-stands':
    'the whole row once more, the tips held on each terminal until the figure stands, since no two of the three agree',
  'low-reading': 'a reading that is too low: a bad transistor makes none higher, so look for a poor contact first',
  'unlike-sister': 'a sound drive of the same model in which the terminals agree',
  'sound-sister': 'a second reading, and a sound drive of the same model in which the terminals agree',
};

export const suspectNote = ({ lacking }: Extract<BridgeFinding, { code: 'bridge-suspect' }>): string =>
  `The drive is suspect and gets no power, but it is not proven bad. For that it still takes ${listed(lacking.map((one) => lacks[one]))}.`;
