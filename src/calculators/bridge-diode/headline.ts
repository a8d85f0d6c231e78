import { inVolts } from '../../kernel/reading/format-reading.ts';
import { figureHeadline, foundIn, type HeadlineWords, headlineFrom } from '../../kernel/words/headlines.ts';
import { capital, listed } from '../../kernel/words/sentences.ts';
import { busHeadlines } from '../bridge/output-stage-words.ts';
import { positionName, railNames, readingName, switchName } from '../bridge/position-names.ts';
import { suspectPositions } from '../bridge/rule/suspect-positions.ts';
import type { SwitchPosition } from '../bridge/rule/switch-position.ts';
import type { BridgeDiodeAssessment } from './rule/assess.ts';
import type { BridgeDiodeFinding } from './rule/findings.ts';

const positions = (list: readonly SwitchPosition[]) => listed(list.map(positionName));
const switches = (list: readonly SwitchPosition[]) => listed(list.map((one) => `the ${switchName(one)}`));

const words: HeadlineWords<BridgeDiodeFinding> = {
  found: {
    ...figureHeadline,
    ...busHeadlines,
    'diode-negative': () => 'a reading is below zero: there is voltage on the bus',
    'diode-drifting': () => 'the readings drift: the bus is not dead',
    'diode-short': ({ suspects }) => `short read at ${switches(suspects)}`,
    'diode-leaky': ({ suspects }) =>
      `${switches(suspects)} ${suspects.length === 1 ? 'conducts' : 'conduct'} both ways`,
    'diode-forward-open': ({ suspects }) => `the diode at ${switches(suspects)} does not conduct`,
    'resistance-fails': ({ suspects }) => `the resistance fails at ${switches(suspects)}`,
    'resistance-finds-leak': ({ suspects }) => `the resistance finds a leak at ${switches(suspects)}`,
    'diode-unbalanced': ({ suspects }) => `the drop at ${switches(suspects)} is unlike the others`,
    'bus-residual-voltage': ({ volts }) => `${inVolts(volts)} left on the bus falsifies the readings`,
    'motor-leads-connected': () => 'with the motor leads on, no position can be told from another',
    'tests-contradict': ({ readings }) => `diode test and resistance contradict each other at ${positions(readings)}`,
    'diode-rows-swapped': ({ rail }) => `at ${railNames[rail]} the leads were the wrong way round`,
    'diode-short-possible': ({ positions: list }) => `${positions(list)} may be a short`,
    'diode-forward-all-open': ({ rail }) => `none of the three at ${railNames[rail]} conducts`,
    'diode-reverse-unclear': ({ places }) => `whether it blocks is not clear: ${places.map(readingName).join('; ')}`,
    'diode-too-close': ({ rail }) => `the drops at ${railNames[rail]} are too close to call`,
    'diode-drop-unusual': ({ rail }) => `the drops at ${railNames[rail]} are not of the usual size`,
    'resistance-undecided': () => 'the resistance readings decide nothing yet',
  },
  missing: {
    'bus-not-measured': () => 'the DC-bus voltage',
    'motor-leads-not-stated': () => 'whether the motor leads are off',
    'diode-steadiness-not-stated': () => 'whether the readings stand still',
    'diode-incomplete': ({ places }) =>
      places.length > 2 ? `${places.length} of the twelve readings` : listed(places.map(readingName)),
  },
};

/** The verdict's reason in one line. "Is shorted" is only said of a transistor that is proven. */
export function bridgeDiodeHeadline(assessment: BridgeDiodeAssessment): string {
  const { verdict, findings, drive } = assessment;
  if (verdict !== 'no-go') return headlineFrom(assessment, words, 'all six positions block and conduct alike');
  const failed = findings.filter(({ severity }) => severity === 'fail');
  const [one, another] = suspectPositions(failed);
  const only = one !== undefined && another === undefined && failed.every(({ code }) => code === 'diode-short');
  if (drive === 'convicted' && only) return capital(`the ${switchName(one)} is shorted`);
  const standing = drive === 'convicted' ? 'drive proven bad' : 'drive suspect, not proven bad';
  return capital(`${foundIn(assessment, words)}; ${standing}`);
}
