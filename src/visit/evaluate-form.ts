import type { Assessment } from '../kernel/assessment/assessment.ts';
import type { Outcome } from '../kernel/form/calculator-form.ts';
import { readForm } from '../kernel/form/read-form.ts';
import { verdictWords } from '../kernel/form/verdict-words.ts';
import { parseReading } from '../kernel/reading/parse-reading.ts';
import type { Snapshot } from './record/snapshot-schema.ts';
import { snapshotOf } from './snapshot.ts';
import { bendAnswer, olderLine } from './steps/bend-test/answer.ts';
import { stepCalculators } from './steps/calculators.ts';
import { type Form, ticked } from './steps/fields.ts';
import type { StepId } from './steps/ids.ts';
import type { MeasurementAnswer } from './steps/measurements/question.ts';
import type { Times } from './steps/question.ts';
import { type Answers, type AskedStepId, isMeasured, type MeasuredStepId, questions } from './steps/questions.ts';

/** The meaning of one step's form, computed from the typed texts alone. */
export interface EvaluatedForm<Id extends StepId = StepId> {
  /** The guide's answer; undefined if the form is incomplete or can't be read, so that its step stays due. */
  answer: Answers[Id] | undefined;
  /** The outcome of a measured step's calculator; undefined for other steps. */
  outcome: Outcome | undefined;
  /** The outcome as a record stores it; undefined if the readings give no verdict. */
  snapshot: Snapshot | undefined;
  /** The answer in one line, for the list of steps; empty if nothing is entered. */
  line: string;
}

/** Never throws. `readAt`: when each reading was typed. */
export function evaluateForm<Id extends StepId>(id: Id, form: Form, readAt: Times = {}): EvaluatedForm<Id> {
  const step: StepId = id;
  return (isMeasured(step) ? measuredForm(step, form) : askedForm(step, form, readAt)) as EvaluatedForm<Id>;
}

export function isEmpty(form: Form): boolean {
  return Object.values(form).every((value) => value.trim() === '');
}

function askedForm(id: AskedStepId, form: Form, readAt: Times): EvaluatedForm<AskedStepId> {
  const { read, line } = questions[id];
  return {
    answer: read(form),
    outcome: undefined,
    snapshot: undefined,
    line: isEmpty(form) ? '' : line(form, readAt),
  };
}

/** The calculator judges once; everything else is derived from its outcome. */
function measuredForm(id: MeasuredStepId, form: Form): EvaluatedForm<MeasuredStepId> {
  const typed = { ...form, ...questions[id].given };
  const outcome = stepCalculators[id].judge(typed);
  const leftOpen = ticked(form, 'leftOpen');
  if (id === 'bend-test') return bentForm(form, outcome, leftOpen);
  const assessment =
    outcome.state === 'judged' ? outcome.assessment : leftOpen ? ofBlank(id, typed, outcome) : undefined;
  const celsius = windingCelsius(typed);
  const answer =
    assessment &&
    ({ assessment, leftOpen, ...celsius } as MeasurementAnswer<Assessment> as Answers[Exclude<
      MeasuredStepId,
      'bend-test'
    >]);
  const parts = answer !== undefined && 'parts' in answer.assessment ? answer.assessment.parts : undefined;
  return {
    answer,
    outcome,
    snapshot: snapshotOf(outcome, parts),
    line: isEmpty(form) ? '' : measuredLine(outcome, leftOpen),
  };
}

/** Older records say what the cable showed, without readings. */
function bentForm(form: Form, outcome: Outcome, leftOpen: boolean): EvaluatedForm<'bend-test'> {
  const words = outcome.state === 'blank' ? olderLine(form) : '';
  return {
    answer: bendAnswer(form, outcome),
    outcome,
    snapshot: snapshotOf(outcome, undefined),
    line: isEmpty(form) ? '' : words || measuredLine(outcome, leftOpen),
  };
}

function windingCelsius(typed: Record<string, string>): { celsius?: number } {
  const read = parseReading(typed.windingTemperature ?? '', 'temperature');
  return read.ok && read.reading.kind === 'value' ? { celsius: read.reading.value } : {};
}

/** The assessment of a blank form that is left open: all readings are missing. */
function ofBlank(id: MeasuredStepId, typed: Record<string, string>, { state }: Outcome): Assessment | undefined {
  const { fields, assess } = stepCalculators[id];
  const read = readForm(fields, typed);
  return state === 'blank' && read.unchosen.length === 0 ? assess(read) : undefined;
}

/** The verdict in words, for the list of steps and the report. */
function measuredLine(outcome: Outcome, leftOpen: boolean): string {
  const verdict = outcome.state === 'judged' ? verdictWords[outcome.verdict] : 'No verdict';
  return verdict + (leftOpen ? ', left open' : '');
}
