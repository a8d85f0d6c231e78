import { figureHeadline, foundIn, type HeadlineWords, headlineFrom } from '../../kernel/words/headlines.ts';
import { capital, listed, percent } from '../../kernel/words/sentences.ts';
import { pairNames } from './pair-names.ts';
import type { WindingAssessment, WindingFinding } from './rule/assess.ts';
import type { WindingCause } from './rule/cause.ts';

const pairs = (list: readonly string[]) => listed(list.map((pair) => pairNames[pair as keyof typeof pairNames]));

const words: HeadlineWords<WindingFinding> = {
  found: {
    ...figureHeadline,
    'winding-joint-bad': () => 'the mated connector has too much resistance',
    'winding-open': ({ readings }) => `${pairs(readings)} ${readings.length === 1 ? 'is' : 'are'} open`,
    'winding-again-passes': () => 'the second set passes: a contact has changed',
    'winding-again-fails': () => 'the second set fails and the first did not',
    'winding-unbalanced': ({ deviationPercent }) =>
      `the windings differ by ${percent(deviationPercent)} from their mean`,
    'winding-between-limits': ({ deviationPercent }) =>
      `${percent(deviationPercent)} of deviation neither passes nor fails`,
    'winding-range-not-noted': ({ readings }) => `the range of ${pairs(readings)} does not tell an open winding`,
    'winding-leads-contradict': () => 'what is said of the leads contradicts itself',
    'winding-leads-exceed': () => 'the leads have more than a whole reading',
    'winding-needs-four-leads': () => 'too low a resistance for two leads',
    'winding-too-coarse': () => 'the display is too coarse to tell',
    'winding-again-unclear': () => 'the second set can’t be judged',
    'winding-joint-unclear': () => 'the reading across the connector does not tell',
    'winding-reference-differs': () => 'alike, but the mean differs from the nameplate or earlier value',
    'winding-reference-too-close': () => 'whether the mean fits the earlier value is too close to call',
  },
  missing: {
    'winding-incomplete': ({ readings }) => pairs(readings),
    'winding-leads-not-stated': () => 'how the test leads were kept out',
    'winding-leads-missing': () => 'the resistance of the leads',
    'winding-reference-no-temperature': () => 'both temperatures of the comparison',
  },
};

/** What two sets say of the cause; one set convicts nothing. */
const causes: Record<WindingCause, string> = {
  winding: 'two sets agree',
  contact: 'a contact explains it',
  open: 'cause not proven',
  none: 'cause not proven',
};

/** The winding that stands apart, if one does: "suspect: U (star) or V–W (delta)". */
function suspectIn(findings: readonly WindingFinding[]): string {
  const suspects = findings.flatMap((one) => {
    if (one.code === 'winding-open-phase') return [`phase ${one.terminal}`];
    if (one.code === 'winding-suspect-star') return [`${one.name} if in star`];
    return one.code === 'winding-suspect-delta' ? [`${pairNames[one.name]} if in delta`] : [];
  });
  return suspects.length === 0 ? '' : `suspect ${suspects.join(', ')}; `;
}

/** The verdict's reason in one line. */
export function windingHeadline(assessment: WindingAssessment): string {
  const { verdict, findings, cause } = assessment;
  if (verdict !== 'no-go') return headlineFrom(assessment, words, 'the three windings are alike');
  return capital(`${foundIn(assessment, words)}; ${suspectIn(findings)}${causes[cause]}`);
}
