import { inCelsius, inOhms } from '../../kernel/reading/format-reading.ts';
import {
  cableEndsFound,
  cableEndsMissing,
  figureHeadline,
  type HeadlineWords,
  headlineFrom,
  testVoltageFound,
  testVoltageMissing,
} from '../../kernel/words/headlines.ts';
import { listed } from '../../kernel/words/sentences.ts';
import type { InsulationAssessment, InsulationFinding, PhaseJudged } from './rule/input.ts';

const what = ({ phase }: PhaseJudged) => (phase === 'together' ? 'U, V and W joined' : phase);

function below(judged: PhaseJudged): string {
  const { kind, ohms, occasion, limitOhms } = judged;
  const read = ohms === undefined ? '' : ` (${kind === 'under' ? 'at most ' : ''}${inOhms(ohms)})`;
  return `${what(judged)}${read} to PE fails the ${occasion === 'routine' ? 'minimum' : 'point'} of ${inOhms(limitOhms)}`;
}

const words: HeadlineWords<InsulationFinding> = {
  found: {
    ...figureHeadline,
    'pe-not-short': () => 'PE shows no continuity: broken or bad contact',
    'phase-bad': below,
    'phase-methods-differ': (one) => `the methods of correction disagree on ${what(one)}`,
    'winding-at-dew-point': () => 'there is water on the winding: dry it first',
    ...cableEndsFound,
    ...testVoltageFound,
    'temperature-out-of-validity': ({ fromCelsius, toCelsius }) =>
      `the correction holds only from ${inCelsius(fromCelsius)} to ${inCelsius(toCelsius)}`,
    'phase-hot': (one) => `${what(one)} may be low only because the winding is warm`,
    'phase-cold': (one) => `${what(one)} may be good only because the winding is cold`,
    'phase-too-close': (one) => `${what(one)} is too close to call`,
    'phase-bound-too-low': (one) => `the range of ${what(one)} is too low to tell`,
    'phase-bound-too-high': (one) => `the bound of ${what(one)} is too high to tell`,
    'pe-higher-than-expected': () => 'PE reads more than a sound conductor should',
    'pe-not-proven': () => 'the PE reading is too coarse',
    'dew-point-incomplete': () => 'the winding may be wet: air temperature and humidity tell',
  },
  missing: {
    'together-missing': () => 'U, V and W joined, to PE',
    'phase-missing': ({ readings }) => `${listed(readings)} to PE`,
    'pe-missing': () => 'the PE pin to the frame',
    'temperature-missing': () => 'the winding temperature',
    'phase-temperature-needed': () => 'the winding temperature',
    ...testVoltageMissing,
    ...cableEndsMissing,
  },
};

/** Two phases that fail share one line: "U and W to PE fail the point of 100 MΩ". */
function several(findings: readonly InsulationFinding[]): string | undefined {
  const bad = findings.flatMap((one) => (one.code === 'phase-bad' && one.severity === 'fail' ? [one] : []));
  const [first] = bad;
  if (first === undefined || bad.length < 2 || findings.some(({ code }) => code === 'pe-not-short')) return undefined;
  const limit = `${first.occasion === 'routine' ? 'minimum' : 'point'} of ${inOhms(first.limitOhms)}`;
  return `${listed(bad.map(what))} to PE fail the ${limit}`;
}

/** The verdict's reason in one line. It names no part: the joined reading does not tell cable from motor. */
export function insulationHeadline(assessment: InsulationAssessment): string {
  return (
    several(assessment.findings) ??
    headlineFrom(assessment, words, 'the insulation to PE passes, and PE shows continuity')
  );
}
