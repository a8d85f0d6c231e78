import type { Assessment, LimitId, Severity, Verdict } from '../../calc/index.ts';
import type { FindingSentences, StepSentences } from '../../texts/sentences.ts';
import { type FormField, isBlank, type Typed } from './field.ts';
import { type FieldError, type ReadForm, readForm } from './read-form.ts';

export type CalculatorName =
  | 'bridge'
  | 'bridge-diode'
  | 'insulation'
  | 'isolation'
  | 'winding'
  | 'test-voltage'
  | 'discharge'
  | 'absorption'
  | 'cable-length'
  | 'trend';

/** All that a calculator is, apart from its looks. */
export interface CalculatorForm<
  FindingCode extends string = string,
  StepCode extends string = string,
  A extends Assessment<FindingCode, StepCode> = Assessment<FindingCode, StepCode>,
> {
  name: CalculatorName;
  fields: readonly FormField[];
  /** Judges from the answer to this question on, before any reading is typed. */
  judgesFrom?: string;
  /** Called only with a form that could be read whole. */
  assess: (read: ReadForm) => A;
  findingTexts: FindingSentences<FindingCode>;
  stepTexts: StepSentences<StepCode>;
}

/** A calculator whose rule and sentences are loaded with the first entry: its script is too long to come with the form. */
export interface LateForm<
  FindingCode extends string = string,
  StepCode extends string = string,
  A extends Assessment<FindingCode, StepCode> = Assessment<FindingCode, StepCode>,
> extends Pick<CalculatorForm, 'name' | 'fields'> {
  load: () => Promise<CalculatorForm<FindingCode, StepCode, A>>;
}

export interface FindingLine {
  severity: Severity;
  text: string;
}

/** What the verdict panel shows. `stop` is a verdict of its own here: nothing is judged because going on is dangerous. */
export type Outcome<A extends Assessment = Assessment> =
  | { state: 'blank' }
  /** The rule of a `LateForm` is on its way, or did not come. */
  | { state: 'loading' | 'not-loaded' }
  | { state: 'unreadable'; read: ReadForm; errors: Record<string, FieldError>; dangers: FindingLine[] }
  | { state: 'unchosen'; read: ReadForm; questions: string[] }
  | {
      state: 'judged';
      verdict: Verdict | 'stop';
      assessment: A;
      /** The entries as they were judged: what is drawn beside the verdict shows these. */
      read: ReadForm;
      findings: FindingLine[];
      steps: string[];
      limits: LimitId[];
    };

const weight: Severity[] = ['stop', 'fail', 'undecided', 'caution', 'pass', 'note'];

/**
 * From what stands in the form to what is said about it. An entry that can't be read gives no verdict, but never
 * hides a danger that the other entries show. What was only `offered`, and not typed, judges nothing by itself.
 */
export function judge<F extends string, S extends string, A extends Assessment<F, S>>(
  form: CalculatorForm<F, S, A>,
  typed: Typed,
  offered: Typed = {},
): Outcome<A> {
  const read = readForm(form.fields, typed);
  const isReadable = Object.keys(read.errors).length === 0;
  const asked = form.judgesFrom !== undefined && (typed[form.judgesFrom] ?? '') !== '';
  if (isReadable && !asked && isBlank(form.fields, typed, offered)) return { state: 'blank' };
  if (isReadable && read.unchosen.length > 0)
    return { state: 'unchosen', read, questions: read.unchosen.map(({ name }) => name) };
  const assessment = form.assess(read);
  const findings = assessment.findings
    .map((finding) => ({ severity: finding.severity, text: form.findingTexts[finding.code](finding) }))
    .sort((a, b) => weight.indexOf(a.severity) - weight.indexOf(b.severity));
  const dangers = findings.filter(({ severity }) => severity === 'stop');
  if (!isReadable) return { state: 'unreadable', read, errors: read.errors, dangers };
  return {
    state: 'judged',
    verdict: dangers.length > 0 ? 'stop' : assessment.verdict,
    assessment,
    read,
    findings,
    steps: assessment.next.map((step) => form.stepTexts[step.code](step)),
    limits: [...new Set(assessment.findings.flatMap(({ limits }) => limits))],
  };
}
