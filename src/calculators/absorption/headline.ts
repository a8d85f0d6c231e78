import { formatSeconds } from '../../kernel/reading/format-reading.ts';
import { figureHeadline, type HeadlineWords, headlineFrom } from '../../kernel/words/headlines.ts';
import type { AbsorptionAssessment, AbsorptionFinding } from './rule/input.ts';
import { ratioText } from './words.ts';

const words: HeadlineWords<AbsorptionFinding> = {
  found: {
    ...figureHeadline,
    'index-below': ({ index, wanted }) => `polarization index ${ratioText(index)}, below ${wanted}`,
    'index-says-nothing': () => 'the resistance is too high for an index to say anything',
    'curve-breaks': ({ atSeconds }) => `the curve breaks at ${formatSeconds(atSeconds)}`,
    'one-minute-low': () => 'the level at 1 minute is low, whatever the index',
    'index-too-close': ({ index, wanted }) => `polarization index ${ratioText(index)}, too close to ${wanted}`,
    'index-not-for-random-wound': () => 'the index does not judge a random-wound winding',
  },
  missing: {
    'index-incomplete': () => 'the readings at 1 minute and at 10 minutes',
  },
};

/** The verdict's reason in one line. It is about the curve, never about the level. */
export function absorptionHeadline(assessment: AbsorptionAssessment): string {
  const meets = assessment.findings.find((one) => one.code === 'index-meets');
  const index = meets?.code === 'index-meets' ? ` ${ratioText(meets.index)}` : '';
  return headlineFrom(assessment, words, `the curve passes: polarization index${index}`);
}
