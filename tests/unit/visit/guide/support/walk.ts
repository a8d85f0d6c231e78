import { type GuideState, nextStep } from '../../../../../src/visit/guide/next-step.ts';
import type { StepId } from '../../../../../src/visit/steps/ids.ts';
import type { VisitAnswers } from '../../../../../src/visit/steps/questions.ts';
import { alike, type Option, optionsOf } from './options.ts';
import { decisionRules, dueRules } from './rules.ts';
import { type Given, onPath, visitOf, words } from './visit.ts';

/** Maximum length of a way; it stops a guide that goes round in circles. */
const longestVisit = 30;

/** Classes are wide, so each decision is tried with that many other sets of answers. */
const variantsOfDecision = 8;

interface Reached {
  options: Option[];
  /** The classes of the answers so far: two visits with the same key differ in nothing that leads another way. */
  key: string;
  state: GuideState;
}

/** Walks every state that answers can lead to from the empty record, and checks each against the rules. */
export class Walk {
  states = 0;
  transitions = 0;
  variants = 0;
  longest = 0;
  readonly kinds = new Map<string, number>();
  readonly steps = new Set<StepId>();
  /** One whole visit for each way and kind of decision. */
  readonly ways = new Map<string, Given[]>();
  /** What was found wrong, by rule, with the first visit that shows it. */
  readonly faults = new Map<string, { count: number; example: string }>();
  private readonly known = new Set<string>();
  private draw = 1;

  constructor() {
    const waiting: Reached[] = [{ options: [], key: '', state: nextStep({}) }];
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) waiting.push(...this.expand(next));
  }

  /** Checks one state and all its answers; gives the states that follow and are not known yet. */
  private expand(reached: Reached): Reached[] {
    this.states += 1;
    this.longest = Math.max(this.longest, reached.options.length);
    const history = reached.options.map(({ given }) => given);
    const visit = visitOf(history);
    this.check(reached.state, visit, history);
    const { decision, due } = reached.state;
    for (let times = decision ? variantsOfDecision : 1; times > 0; times -= 1) this.tryVariant(reached);
    if (decision) this.kinds.set(decision.kind, (this.kinds.get(decision.kind) ?? 0) + 1);
    if (decision) this.remember(history, reached.state, decision.kind);
    if (due === undefined) return [];
    this.steps.add(due);
    if (history.length < longestVisit) {
      return optionsOf(due, visit).flatMap((option) => this.answer(reached, visit, due, option));
    }
    this.fault('every walk ends', history);
    return [];
  }

  private answer({ options, key: before }: Reached, visit: VisitAnswers, due: StepId, option: Option): Reached[] {
    this.transitions += 1;
    const key = `${before}; ${due} ${option.like}`;
    // A class that was met here before is tried again only as a variant; an answer that stops always is.
    if (!option.stops && this.known.has(key)) return [];
    const longer = { ...visit, [due]: { seq: options.length + 1, answer: option.given[1] } };
    const state = nextStep(longer);
    // Back at a step that has its answer: at this one, or at the lockout that turned out not to hold. That the bus is
    // measured once more is a new step.
    const onceMore = state.due === 'bus-again' && due !== 'bus-again' && state.path.at(-1)?.status === 'check-again';
    const stopped = state.due !== undefined && longer[state.due] !== undefined && !onceMore;
    const rule = (sentence: string, holds: boolean) =>
      holds || this.fault(sentence, [...options.map(({ given }) => given), option.given]);
    rule('an answer that does not suffice stops the visit', stopped || !option.stops);
    rule('an answer that suffices lets the visit go on', !stopped || option.stops);
    rule('an answer that stops the visit has its problem named', !stopped || state.path.at(-1)?.status === 'problem');
    if (stopped) return [];
    this.known.add(key);
    return [{ options: [...options, option], key, state }];
  }

  /** Other answers of the same classes, drawn with a seed: the same way, and a decision that is as sound. */
  private tryVariant({ options, state }: Reached): void {
    const visit: VisitAnswers = {};
    const history: Given[] = [];
    for (const { given, like } of options) {
      const others = alike(optionsOf(given[0], visit), like);
      this.draw = (this.draw * 48271) % 2147483647;
      const other = others[this.draw % others.length]?.given ?? given;
      history.push(other);
      Object.assign(visit, { [other[0]]: { seq: history.length, answer: other[1] } });
    }
    this.variants += 1;
    const variant = nextStep(visit);
    this.check(variant, visit, history);
    if (stepsOf(variant) !== stepsOf(state)) this.fault('answers of one class lead the same way', history);
  }

  private check(state: GuideState, visit: VisitAnswers, history: Given[]): void {
    const way = onPath(state, visit);
    const rules = state.decision
      ? decisionRules(state.decision, way, visit)
      : dueRules(state.due as StepId, way, history);
    for (const [sentence, holds] of rules) if (!holds) this.fault(sentence, history);
  }

  private remember(history: Given[], { path }: GuideState, kind: string): void {
    const way = [...path.map(({ id }) => id), kind].join();
    if (!this.ways.has(way)) this.ways.set(way, history);
  }

  private fault(rule: string, history: readonly Given[]): void {
    const before = this.faults.get(rule);
    this.faults.set(rule, { count: (before?.count ?? 0) + 1, example: before?.example ?? words(history) });
  }
}

/**
 * The steps on the way with their states, and the one that is due. Without their order: once a reading speaks against the
 * motor, the list has the leads before the feedback, even if the feedback was tried first.
 */
function stepsOf({ path, due }: GuideState): string {
  const steps = path.map(({ id, status }) => `${id} ${status}`);
  return [due ?? 'decided', ...steps.sort()].join();
}
