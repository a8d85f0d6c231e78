import { formatSeconds, inVolts } from '../../kernel/reading/format-reading.ts';
import { figureHeadline, foundIn, type HeadlineWords } from '../../kernel/words/headlines.ts';
import { capital } from '../../kernel/words/sentences.ts';
import type { DischargeAssessment } from './rule/assess.ts';
import type { DischargeFinding } from './rule/input.ts';

const words: HeadlineWords<DischargeFinding> = {
  found: {
    ...figureHeadline,
    'voltage-rises': () => 'the voltage rises: something feeds the bus',
    'slower-than-values': () => 'the bus discharges more slowly than its parts would',
    'slower-than-label': () => 'the bus discharges more slowly than its label says',
    'value-impossible': () => 'an entry of zero is impossible',
    'no-end': () => 'the bus may keep its charge without end',
    'pair-incomplete': () => 'two voltages and the time between them belong together',
    'times-equal': () => 'no time passed between the two readings',
    'no-fall-shown': () => 'the two readings show no fall',
    'discharge-data-missing': () => 'nothing tells how fast the bus discharges',
    'start-missing': () => 'the voltage at the start is missing',
  },
  missing: {},
};

/** The longest wait that the figures leave open, from the moment that it counts from. */
function wait(findings: readonly DischargeFinding[]): string {
  const found = findings.find(({ code }) => code === 'longest-wait' || code === 'longest-wait-from-reading');
  if (found?.code === 'longest-wait')
    return `up to ${formatSeconds(found.longestSeconds)} to ${inVolts(found.touchVolts)} after the supply is cut`;
  return found?.code === 'longest-wait-from-reading'
    ? `up to ${formatSeconds(found.longestSeconds)} to ${inVolts(found.touchVolts)} after your first reading`
    : '';
}

/** The verdict's reason in one line. A computed time never stands without the word that only the meter tells. */
export function dischargeHeadline(assessment: DischargeAssessment): string {
  const { findings } = assessment;
  const found = foundIn(assessment, words).split('; ')[0] ?? '';
  const half = findings.some(({ code }) => code === 'stands-near-half') ? 'it stands at about half' : '';
  const said = [found, half, wait(findings)].filter(Boolean).slice(0, 2);
  const dead = findings.some(({ severity }) => severity === 'stop') ? [] : ['only the meter tells that it is dead'];
  return capital([...said, ...dead].join('; '));
}
