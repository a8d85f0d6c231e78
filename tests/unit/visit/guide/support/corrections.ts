import { type GuideState, nextStep } from '../../../../../src/visit/guide/next-step.ts';
import type { StepId } from '../../../../../src/visit/steps/ids.ts';
import type { VisitAnswers } from '../../../../../src/visit/steps/questions.ts';
import { type Option, optionsOf } from './options.ts';
import { decisionRules, dueRules } from './rules.ts';
import { type Given, onPath, standing, visitOf, words } from './visit.ts';

/** More answers than any visit needs after one change. */
const longest = 30;

/** Changes every answer of whole visits to every other class of answer, goes on to the end, and checks each state. */
export class Corrections {
  changes = 0;
  states = 0;
  /** What was found wrong, by rule, with the first visit that shows it. */
  readonly faults = new Map<string, string>();

  constructor(visits: Iterable<readonly Given[]>) {
    for (const history of visits) {
      for (const [id] of history) this.change(history, id);
    }
  }

  private change(history: readonly Given[], id: StepId): void {
    for (const { given } of classesOf(id, visitOf(history))) {
      this.changes += 1;
      this.goOn([...history, given]);
    }
  }

  /** Gives the answers that were given before, and the best ones if something new is asked for. */
  private goOn(history: Given[]): void {
    for (let state = this.check(history); state.due !== undefined; state = this.check(history)) {
      const { due } = state;
      if (history.length > longest + 25) {
        this.fault('every walk ends', history);
        return;
      }
      const before = state.path.at(-1)?.status === 'problem' ? undefined : visitOf(history)[due];
      const sufficing = optionsOf(due, visitOf(history)).find(({ stops }) => !stops)?.given;
      const given = before === undefined ? sufficing : ([due, before.answer] as Given);
      if (given === undefined) {
        this.fault('every step has an answer that suffices', history);
        return;
      }
      history.push(given);
    }
  }

  private check(history: readonly Given[]): GuideState {
    this.states += 1;
    const visit = visitOf(history);
    const state = nextStep(visit);
    const way = onPath(state, visit);
    const rules = state.decision
      ? decisionRules(state.decision, way, visit)
      : dueRules(state.due as StepId, way, standing(history));
    for (const [sentence, holds] of rules) if (!holds) this.fault(sentence, history);
    return state;
  }

  private fault(rule: string, history: readonly Given[]): void {
    if (!this.faults.has(rule)) this.faults.set(rule, words(history));
  }
}

/** One answer of each class, and of each kind that the classes of the walk put together. */
function classesOf(id: StepId, visit: VisitAnswers): Option[] {
  const one = new Map<string, Option>();
  for (const option of optionsOf(id, visit)) {
    const key = `${option.stops} ${option.like} ${kindOf(option.given)}`;
    if (!one.has(key)) one.set(key, option);
  }
  return [...one.values()];
}

/** Each moment, each damage of each part alone, each verdict, and each answer of the small measurements. */
function kindOf([id, answer]: Given): string {
  if ('assessment' in answer) return answer.assessment.verdict;
  if (id === 'symptom') return `${answer.when} ${answer.protection ?? ''}`;
  if (id === 'bend-test' || id === 'idle-cores' || id === 'braking') return JSON.stringify(answer);
  if (id !== 'inspect') return '';
  const damages = Object.values(answer.seen);
  return damages.filter((damage) => damage !== 'nothing').length <= 1 ? damages.join() : '';
}
