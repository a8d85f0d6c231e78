import { figureHeadline, type HeadlineWords, headlineFrom } from '../../kernel/words/headlines.ts';
import type { CoreAssessment, CoreFinding } from './rule/input.ts';

const words: HeadlineWords<CoreFinding> = {
  found: {
    ...figureHeadline,
    'core-open': () => 'it reads open',
    'core-too-high': () => 'more than length, cross-section and contacts explain',
    'core-over-range': () => 'over a range that a sound core may exceed too',
    'core-other-path-possible': () => 'both ends are on: other paths are measured with it',
    'core-above-expected': () => 'above what is expected, not far enough to be bad',
    'core-below-expected': () => 'less than the copper alone has: another path, or other data',
  },
  missing: {
    'core-way-not-stated': () => 'what was measured',
    'core-end-not-stated': () => 'whether one end is off',
    'core-meter-not-stated': () => 'with what it was measured',
    'core-data-missing': () => 'length and cross-section',
    'core-reading-missing': () => 'the reading',
  },
};

/** The verdict's reason in one line. */
export function coreHeadline(assessment: CoreAssessment): string {
  return headlineFrom(assessment, words, 'it reads what length and cross-section let expect');
}
