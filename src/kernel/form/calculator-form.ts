import type { Assessment, Severity, Verdict } from '../assessment/assessment.ts';
import { reminderCodes } from '../assessment/test-reminders.ts';
import type { LimitId } from '../limits.ts';
import { type LimitLine, limitLine } from '../words/limit-lines.ts';
import { type FindingSentences, type StepSentences, sentenceOf } from '../words/sentences.ts';
import { blankForm, type FormField, isBlank, type Typed } from './field.ts';
import { type Opening, type StepLine, stepLine } from './opening.ts';
import { type FieldError, type ReadForm, readForm } from './read-form.ts';

/** What a calculator is made of, apart from its looks. */
interface Definition<A extends Assessment> {
  name: string;
  title: string;
  fields: readonly FormField[];
  /** Judges from the answer to this question on, before any reading is typed. */
  judgesFrom?: string;
  /** Called only with a form that could be read whole. */
  assess: (read: ReadForm) => A;
  findingTexts: FindingSentences<A['findings'][number]>;
  stepTexts: StepSentences<A['next'][number]>;
  /** The verdict's reason in one line, without the word of the verdict. It never says more than the findings. */
  headline: (assessment: A) => string;
  /** Remarks that are never folded away: what a verdict does not mean, and what it still lacks. */
  inSight?: readonly A['findings'][number]['code'][];
  /** The calculators with which steps go on. */
  opens?: Partial<Record<A['next'][number]['code'], Opening>>;
}

/** A calculator as pages, cases and visits use it: none of them needs to know its findings to have them put into words. */
export interface CalculatorForm<A extends Assessment = Assessment>
  extends Pick<Definition<A>, 'name' | 'title' | 'fields' | 'assess'> {
  /**
   * From what stands in the form to what is said about it. An entry that can't be read gives no verdict, but never
   * hides a danger that the other entries show. What was only `offered`, and not typed, judges nothing by itself.
   */
  judge: (typed: Typed, offered?: Typed) => Outcome<A>;
  /** The calculators that its steps open. */
  opens: readonly Opening[];
}

export interface FindingLine {
  severity: Severity;
  text: string;
  /** Protects the person, or says what the verdict does not mean: never folded away. */
  inSight?: true;
}

/** What the verdict panel shows. `stop` is a verdict of its own here: nothing is judged because going on is dangerous. */
export type Outcome<A extends Assessment = Assessment> =
  | { state: 'blank' }
  | {
      state: 'unreadable';
      read: ReadForm;
      errors: Record<string, FieldError>;
      dangers: FindingLine[];
      headline: string;
    }
  | { state: 'unchosen'; read: ReadForm; questions: string[] }
  | {
      state: 'judged';
      verdict: Verdict | 'stop';
      assessment: A;
      /** The entries as they were judged: what is drawn beside the verdict shows these. */
      read: ReadForm;
      headline: string;
      findings: FindingLine[];
      steps: StepLine[];
      limits: LimitId[];
      limitLines: LimitLine[];
    };

const weight: Severity[] = ['stop', 'fail', 'undecided', 'caution', 'pass', 'note'];

/** Ties the rule of a calculator to its sentences: each finding of the rule has one, made from what it carries. */
export function defineCalculator<A extends Assessment>(definition: Definition<A>): CalculatorForm<A> {
  const { name, title, fields, assess } = definition;
  const opens = Object.values<Opening | undefined>(definition.opens ?? {}).flatMap((opening) => opening ?? []);
  return { name, title, fields, assess, opens, judge: (typed, offered = {}) => judge(definition, typed, offered) };
}

function judge<A extends Assessment>(definition: Definition<A>, typed: Typed, offered: Typed): Outcome<A> {
  const { fields, judgesFrom, findingTexts, stepTexts } = definition;
  const opens: Partial<Record<string, Opening>> = definition.opens ?? {};
  const inSight: readonly string[] = [...reminderCodes, ...(definition.inSight ?? [])];
  const read = readForm(fields, typed);
  const isReadable = Object.keys(read.errors).length === 0;
  const asked = judgesFrom !== undefined && (typed[judgesFrom] ?? '') !== '';
  if (isReadable && !asked && isBlank(fields, typed, offered)) return { state: 'blank' };
  if (isReadable && read.unchosen.length > 0)
    return { state: 'unchosen', read, questions: read.unchosen.map(({ name }) => name) };
  const assessment = definition.assess(read);
  const found: readonly A['findings'][number][] = assessment.findings;
  const next: readonly A['next'][number][] = assessment.next;
  const findings = found
    .map(
      (finding): FindingLine => ({
        severity: finding.severity,
        text: sentenceOf(findingTexts, finding),
        ...(inSight.includes(finding.code) && { inSight: true }),
      }),
    )
    .sort((a, b) => weight.indexOf(a.severity) - weight.indexOf(b.severity));
  const dangers = findings.filter(({ severity }) => severity === 'stop');
  const headline = definition.headline(assessment);
  if (!isReadable) return { state: 'unreadable', read, errors: read.errors, dangers, headline };
  const blank = blankForm(fields);
  const limits = [...new Set(found.flatMap((one) => one.limits))];
  const answered = Object.fromEntries(Object.entries(typed).filter(([id, value]) => value !== blank[id]));
  return {
    state: 'judged',
    verdict: dangers.length > 0 ? 'stop' : assessment.verdict,
    assessment,
    read,
    headline,
    findings,
    steps: next.map((step) => stepLine(sentenceOf(stepTexts, step), opens[step.code], answered)),
    limits,
    limitLines: limits.map(limitLine),
  };
}
