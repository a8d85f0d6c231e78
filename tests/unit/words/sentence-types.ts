import type { BridgeFinding } from '../../../src/calculators/bridge/rule/findings.ts';
import { type FindingOf, findingMaker, type Nothing, type Step } from '../../../src/kernel/assessment/assessment.ts';
import { type FindingSentences, type StepSentences, sentenceOf } from '../../../src/kernel/words/sentences.ts';

// Only for the compiler: each line that must not compile is marked, and the mark on a line that does compile is an
// error.

interface Payloads {
  open: Nothing;
  short: { ohms: number };
  /** `ohms` may be missing. */
  low: { ohms?: number; readings: ('U' | 'V')[] };
}

type OwnFinding = FindingOf<Payloads>;

const inWords = (ohms: number) => `${ohms} Ω`;
const open = () => 'Open.';
const short = ({ ohms }: { ohms: number }) => inWords(ohms);
const low = ({ ohms, readings }: OwnFinding & { code: 'low' }) =>
  ohms === undefined ? readings.join() : `${readings.join()} ${inWords(ohms)}`;

export const whole: FindingSentences<OwnFinding> = { open, short, low };

export const withoutNumber: FindingSentences<OwnFinding> = {
  // @ts-expect-error: an open winding has no figure
  open: ({ ohms }) => inWords(ohms),
  // @ts-expect-error: the figure of a short is no voltage
  short: ({ volts }) => inWords(volts),
  // @ts-expect-error: the figure may be missing
  low: ({ ohms }) => inWords(ohms),
};

// @ts-expect-error: one code has no sentence
export const incomplete: FindingSentences<OwnFinding> = { open, short };

export const bridge: Pick<FindingSentences<BridgeFinding>, 'bus-not-discharged'> = {
  // @ts-expect-error: a meter that was over-range showed no voltage
  'bus-not-discharged': ({ volts }) => inWords(volts),
};

const finding = findingMaker<Payloads>();

export const made: OwnFinding[] = [
  finding('open', 'note'),
  finding('short', 'fail', { ohms: 3 }),
  finding('low', 'fail', { readings: ['U'], limits: ['bridge-short'] }),
];

// @ts-expect-error: no figure
finding('short', 'fail');
// @ts-expect-error: a word for a figure
finding('short', 'fail', { ohms: '3' });
// @ts-expect-error: another name than the sentence reads
finding('low', 'fail', { readings: ['U'], lowest: 3 });
// @ts-expect-error: no such terminal
finding('low', 'fail', { readings: ['X'] });
// @ts-expect-error: no such code
finding('shot', 'fail', { ohms: 3 });

declare const either: 'open' | 'short';
// @ts-expect-error: one of the two needs a figure
finding(either, 'fail');

export const steps: StepSentences<Step<'wait'> | (Step<'set'> & { volts: number })> = {
  // @ts-expect-error: waiting has no voltage
  wait: ({ volts }) => inWords(volts),
  set: ({ volts }) => inWords(volts),
};

export const said: string[] = made.map((one) => sentenceOf(whole, one));
