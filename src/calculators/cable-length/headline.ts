import { inOhms } from '../../kernel/reading/format-reading.ts';
import { figureHeadline, type HeadlineWords, headlineFrom } from '../../kernel/words/headlines.ts';
import type { CableLengthAssessment, CableLengthFinding } from './rule/input.ts';

const words: HeadlineWords<CableLengthFinding> = {
  found: {
    ...figureHeadline,
    'cable-below-machine-minimum': ({ minimumOhms }) => `below ${inOhms(minimumOhms)}: no length explains that`,
    'cable-fails': () => 'the length does not explain this reading',
    'diameters-impossible': () => 'these diameters or this length are impossible',
    'cable-long-enough-to-explain': () => 'below the after-trip limit, but a sound cable of this length may read so',
    'cable-too-close': () => 'too close to call',
  },
  missing: {
    'cable-data-missing': () => 'both diameters and the length',
    'cable-reading-missing': () => 'the reading of the core',
    'cable-temperature-missing': () => 'the temperature of the cable',
  },
};

/** The verdict's reason in one line. */
export function cableLengthHeadline(assessment: CableLengthAssessment): string {
  const below = assessment.findings.some(({ code }) => code === 'cable-below-new');
  const passed = below
    ? 'reaches the after-trip limit, but may be below what a new cable has'
    : 'reaches the after-trip limit and what a new cable has';
  return headlineFrom(assessment, words, `this core ${passed}`);
}
