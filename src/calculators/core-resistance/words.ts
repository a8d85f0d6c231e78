import type { Step } from '../../kernel/assessment/assessment.ts';
import { limitValue } from '../../kernel/limits.ts';
import { formatQuantity, inCelsius } from '../../kernel/reading/format-reading.ts';
import { formatFigure } from '../../kernel/words/format-limit.ts';
import { figureFindings, figureSteps } from '../../kernel/words/impossible-figures.ts';
import type { FindingSentences, StepSentences } from '../../kernel/words/sentences.ts';
import type { CoreFinding, CoreMarks, CoreStepCode } from './rule/input.ts';

/** The largest figures round up to infinity. */
export function twoDigits(figure: number): number {
  const rounded = Number(figure.toPrecision(2));
  return Number.isFinite(rounded) ? rounded : figure;
}

const shown = (ohms: number) => formatQuantity(twoDigits(ohms), 'Ω');

const marks = ({ table, most, beyond }: CoreMarks) =>
  `The copper alone has ${shown(table)} at the most by the table. Warm, with contacts, up to ${shown(most)} passes, and above ${shown(beyond)} fails.`;

export const coreFindings: FindingSentences<CoreFinding> = {
  ...figureFindings,
  'core-way-not-stated': () => 'You have not said what was measured: PE, one core, or two cores joined at the far end.',
  'core-meter-not-stated': () =>
    'You have not said with what it was measured. Leads that are not zeroed have tenths of an ohm.',
  'core-other-path-possible': () =>
    'Both ends are still on, so frame, conduit or screen are measured with it: they hide a core that is broken. Nothing passes like this.',
  'core-end-not-stated': () =>
    'You have not said whether one end is off. With both ends on, frame, conduit or screen are measured with it and hide a break.',
  'core-data-missing': () => 'Length or cross-section is missing. Without them nobody knows what the core should read.',
  'core-reading-missing': () => 'The core has not been measured.',
  'core-fits': (figures) => `The reading is no more than length, cross-section and contacts explain. ${marks(figures)}`,
  'core-open': () => 'The core reads open. Of two cores, look first whether they are joined at the far end.',
  'core-over-range': () =>
    'The meter was over its range, and that range may end below what a sound core of this length has.',
  'core-too-high': (figures) =>
    `More than length, cross-section and contacts explain: a bad contact, broken strands, or another cable. ${marks(figures)}`,
  'core-above-expected': (figures) => `Above what is expected, and not far enough above to be bad. ${marks(figures)}`,
  'core-below-expected': (figures) =>
    `Less than half of what the copper alone has. The current went another way, such as the screen or the machine, or the data are those of another cable. ${marks(figures)}`,
  'core-at-temperature': ({ ohms, celsius }) =>
    `At ${inCelsius(celsius)} the copper alone has ${shown(ohms)} at the most.`,
  'core-by-multimeter': () =>
    `A multimeter sends some milliamperes: a film on a contact or one last strand carries that too. The usual instrument is a continuity tester with ${formatFigure(limitValue('continuity-current'), 'A')} or more.`,
};

export const coreSteps: StepSentences<Step<CoreStepCode>> = {
  ...figureSteps,
  'state-core-way': () => 'Say above what lies between the two tips.',
  'state-core-meter': () => 'Zero the leads with the tips held together, or use four leads, and say so above.',
  'take-one-end-off': () =>
    'Locked out and dead: take PE, or the core, off at one end, the screen too, and measure again. It goes back on, and is measured again, before anything gets power.',
  'note-core-range': () => 'Measure on a higher range, and type its end if it is over it too, such as > 200 Ω.',
  'measure-core-data': () =>
    'Read the cross-section from the jacket, and the length from the drawing or the marks on the jacket.',
  'measure-core': () =>
    'Both ends off, locked out and dead: from end to end with a long lead that is zeroed, or with two cores joined at the far end.',
  'clean-and-repeat': () => 'Clean pins and terminals, zero the leads, and measure again.',
  'divide-the-run': () =>
    'Measure from connector to connector: the part that has too much is the one to look at. Move it by hand while you measure.',
  'look-for-other-path': () =>
    'Locked out and dead: take screen and PE off at one end, and measure again. They go back on before anything gets power. Check length and cross-section.',
  'use-continuity-tester': () => 'Measure PE with a continuity tester before you rely on it.',
};
