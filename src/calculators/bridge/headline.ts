import { inVolts } from '../../kernel/reading/format-reading.ts';
import { figureHeadline, foundIn, type HeadlineWords, headlineFrom } from '../../kernel/words/headlines.ts';
import { capital, listed } from '../../kernel/words/sentences.ts';
import { busHeadlines } from './output-stage-words.ts';
import { positionName, railNames, switchName } from './position-names.ts';
import type { BridgeAssessment } from './rule/assess.ts';
import type { BridgeFinding } from './rule/findings.ts';
import { suspectPositions } from './rule/suspect-positions.ts';
import type { SwitchPosition } from './rule/switch-position.ts';

const positions = (list: readonly SwitchPosition[]) => listed(list.map(positionName));
const switches = (list: readonly SwitchPosition[]) => listed(list.map((one) => `the ${switchName(one)}`));

const words: HeadlineWords<BridgeFinding> = {
  found: {
    ...figureHeadline,
    ...busHeadlines,
    'rail-short': ({ suspects }) => `short read at ${switches(suspects)}`,
    'rail-short-both-ways': ({ rail }) => `all of ${railNames[rail]} reads a short, both ways round`,
    'bus-shorted': () => 'DC+ to DC− reads a short',
    'rail-unbalanced': ({ suspects, high, rail }) =>
      high
        ? `${positions(suspects)} ${suspects.length === 1 ? 'reads' : 'read'} high`
        : suspects.length === 1
          ? `${switches(suspects)} reads unlike the rest of ${railNames[rail]}`
          : `the readings from ${railNames[rail]} do not agree`,
    'bus-residual-voltage': ({ volts }) => `${inVolts(volts)} left on the bus falsifies the readings`,
    'motor-leads-connected': () => 'with the motor leads on, no position can be told from another',
    'again-contradicts': ({ position }) => `${positionName(position)}, read again, does not confirm the first`,
    'again-does-not-fit': () => 'the reading that was taken once more fits neither rail',
    'rail-first-contradicts': ({ rail }) => `U at ${railNames[rail]} read a short at first and none after`,
    'rail-all-short': ({ rail }) => `all of ${railNames[rail]} reads low and alike: exchange the leads at U`,
    'rail-read-forward': ({ rail }) => `${railNames[rail]} was read with the leads the wrong way round`,
    'rail-short-possible': ({ readings }) => `${positions(readings)} may be a short`,
    'rail-still-climbing': ({ rail }) => `the readings from ${railNames[rail]} still climb`,
    'rail-first-odd': ({ rail }) => `U at ${railNames[rail]} is odd, but was read first: read it once more`,
    'rail-uneven': ({ odd }) => `${positions(odd)} is odd, but not clearly off`,
    'bus-low': () => 'DC+ to DC− may be a short',
    'sister-differs': () => 'a sound drive of the same model shows another pattern',
    'rail-lower-than-usual': ({ rail }) => `the readings from ${railNames[rail]} are lower than usual`,
    'rail-range-too-low': ({ rail }) => `the range is too low for ${railNames[rail]}`,
    'rail-too-close': ({ rail }) => `the readings from ${railNames[rail]} are too close to call`,
    'all-open': () => 'all six are over-range: hold the tips together first',
  },
  missing: {
    'bus-not-measured': () => 'the DC-bus voltage',
    'motor-leads-not-stated': () => 'whether the motor leads are off',
    'rail-incomplete': ({ readings }) => positions(readings),
  },
};

/** The verdict's reason in one line. "Is shorted" is only said of a switch that is proven. */
export function bridgeHeadline(assessment: BridgeAssessment): string {
  const { verdict, findings, drive } = assessment;
  if (verdict !== 'no-go') return headlineFrom(assessment, words, 'no short, and none of the six reads odd');
  const failed = findings.filter(({ severity }) => severity === 'fail');
  const [one, another] = suspectPositions(failed);
  const only = one !== undefined && another === undefined && failed.every(({ code }) => code === 'rail-short');
  if (drive === 'convicted' && only) return capital(`the ${switchName(one)} is shorted`);
  const standing = drive === 'convicted' ? 'drive proven bad' : 'drive suspect, not proven bad';
  return capital(`${foundIn(assessment, words)}; ${standing}`);
}
