import type { Assessment, Finding, Severity } from '../assessment/assessment.ts';
import type { CableEndFinding } from '../assessment/cable-ends.ts';
import type { FigureFinding } from '../assessment/possible-figures.ts';
import type { TestVoltageFinding } from '../assessment/test-voltage.ts';
import { inVolts } from '../reading/format-reading.ts';
import { capital, listed } from './sentences.ts';

/** A few words for some of the codes; where several findings have words, the order of the codes decides. */
export type ShortWords<F extends Finding> = {
  [Code in F['code']]?: (finding: F & { code: Code }) => string;
};

/** What a headline may say of the findings of one calculator. */
export interface HeadlineWords<F extends Finding> {
  /** What was found. For each finding that can decide a verdict: at the most what its sentence says. */
  found: ShortWords<F>;
  /** What has not been measured or stated, as a noun: it follows "still missing:". */
  missing: ShortWords<F>;
}

/** The findings that a verdict rests on have this severity. */
function deciding({ verdict, findings }: Assessment): Severity {
  if (findings.some(({ severity }) => severity === 'stop')) return 'stop';
  return ({ go: 'pass', 'no-go': 'fail', undecided: 'undecided' } as const)[verdict];
}

/** The words of the findings that the verdict rests on, in the order of the table, each once. */
function wordsOf<F extends Finding>(assessment: Assessment<F>, table: ShortWords<F>): string[] {
  const severity = deciding(assessment);
  const words = Object.entries<((finding: never) => string) | undefined>(table).flatMap(([code, of]) =>
    assessment.findings.flatMap((one) =>
      one.severity === severity && one.code === code && of !== undefined ? [of(one as never)] : [],
    ),
  );
  return [...new Set(words)];
}

/** At most two facts: a headline is read at a glance, and the sentences below have them all. */
export function foundIn<F extends Finding>(assessment: Assessment<F>, { found }: HeadlineWords<F>): string {
  return wordsOf(assessment, found).slice(0, 2).join('; ');
}

/** "W to PE, the winding temperature and more". */
function missingIn<F extends Finding>(assessment: Assessment<F>, { missing }: HeadlineWords<F>): string {
  const all = wordsOf(assessment, missing);
  const shown = all.length > 3 ? [...all.slice(0, 2), 'more'] : all;
  return shown.length === 0 ? '' : `still missing: ${listed(shown)}`;
}

/**
 * The headline of a verdict that has no more to it than its findings. Undecided says what was found and what is
 * missing, a stop or a no-go what was found. `passed` stands for a go.
 */
export function headlineFrom<F extends Finding>(
  assessment: Assessment<F>,
  words: HeadlineWords<F>,
  passed: string,
): string {
  if (deciding(assessment) === 'pass') return capital(passed);
  const first = deciding(assessment) === 'undecided' ? wordsOf(assessment, words.found)[0] : foundIn(assessment, words);
  const parts = [first, missingIn(assessment, words)].filter(Boolean);
  return capital(parts.length > 0 ? parts.join('; ') : notEnough);
}

/** Where nothing but the lack of evidence decides. */
const notEnough = 'not enough is known yet';

export const figureHeadline: ShortWords<FigureFinding> = {
  'figure-impossible': () => 'no instrument shows such a figure: read it again',
};

export const testVoltageFound: ShortWords<TestVoltageFinding> = {
  'test-voltage-too-low': ({ setVolts }) => `${inVolts(setVolts)} is no insulation test`,
};

export const testVoltageMissing: ShortWords<TestVoltageFinding> = {
  'test-voltage-missing': () => 'the test voltage',
  'rated-voltage-missing': () => 'the rated voltage',
};

export const cableEndsFound: ShortWords<CableEndFinding> = {
  'filter-fitted': () => 'a filter on the cable takes part in the readings',
  'idle-cores-free': () => 'the idle cores hung free: a short to one of them does not show',
};

export const cableEndsMissing: ShortWords<CableEndFinding> = {
  'idle-cores-not-stated': () => 'what the idle cores were connected to',
};
