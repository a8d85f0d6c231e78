import { inVolts } from '../../kernel/reading/format-reading.ts';
import { figureHeadline, type HeadlineWords, headlineFrom } from '../../kernel/words/headlines.ts';
import type { TestVoltageChoice, TestVoltageChoiceFinding } from './rule/input.ts';
import { voltageSpan } from './span-words.ts';

const words: HeadlineWords<TestVoltageChoiceFinding> = {
  found: {
    ...figureHeadline,
    'drive-connected': () => 'a drive still hangs on these conductors',
    'never-on-electronics': () => 'no insulation test on a feedback device',
    'set-too-high': ({ setVolts, fromVolts, toVolts }) =>
      `${inVolts(setVolts)} is too high: the table gives ${voltageSpan(fromVolts, toVolts)}`,
    'not-extra-low': ({ ratedVolts }) => `${inVolts(ratedVolts)} is no extra-low voltage`,
    'beyond-tables': ({ ratedVolts }) => `${inVolts(ratedVolts)} is beyond the tables`,
    'brake-supply-unknown': () => 'what feeds the brake coil decides',
    'set-too-low': ({ setVolts, fromVolts, toVolts }) =>
      `${inVolts(setVolts)} is below the ${voltageSpan(fromVolts, toVolts)} of the table`,
  },
  missing: {
    'rated-voltage-not-stated': () => 'the rated voltage',
    'drive-not-stated': () => 'whether every drive is off',
    'sensitive-not-stated': () => 'whether suppressors or electronics are off',
    'set-voltage-missing': ({ fromVolts, toVolts }) =>
      `what is set on the tester (the table gives ${voltageSpan(fromVolts, toVolts)})`,
  },
};

/** The verdict's reason in one line. */
export function testVoltageHeadline(assessment: TestVoltageChoice): string {
  const fits = assessment.findings.find(({ code }) => code === 'set-fits');
  const volts = fits?.code === 'set-fits' ? inVolts(fits.setVolts) : 'this voltage';
  return headlineFrom(assessment, words, `as stated, the test may be made with ${volts}`);
}
