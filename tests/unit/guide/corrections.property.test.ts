import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { StepId, VisitAnswers } from '../../../src/guide/answers.ts';
import { type GuideState, nextStep } from '../../../src/guide/next-step.ts';
import { runs } from '../../support/runs.ts';
import { type Option, optionsOf } from './support/options.ts';
import { decisionRules, dueRules } from './support/rules.ts';
import { type Given, visitOf, words } from './support/visit.ts';

/** One thing that a person does: answers what is due, gives an earlier answer anew or another one in its place. */
interface Move {
  what: 'answer' | 'suffice' | 'confirm' | 'change';
  /** Draws the step and the answer; any number will do. */
  step: number;
  option: number;
}

const move: fc.Arbitrary<Move> = fc.record({
  what: fc.oneof(
    { weight: 12, arbitrary: fc.constant('suffice' as const) },
    { weight: 2, arbitrary: fc.constant('answer' as const) },
    { weight: 2, arbitrary: fc.constant('confirm' as const) },
    { weight: 2, arbitrary: fc.constant('change' as const) },
  ),
  step: fc.nat(1000),
  option: fc.nat(100_000),
});

function drawn<T>(list: readonly T[], number: number): T | undefined {
  return list[number % list.length];
}

/** What the person answers; undefined where there is nothing to answer. Only steps on the way can be changed. */
function answerOf({ what, step, option }: Move, { due, path }: GuideState, visit: VisitAnswers): Given | undefined {
  const answered = path.map(({ id }) => id).filter((id) => visit[id] !== undefined);
  const earlier = drawn(answered, step);
  const target: StepId | undefined = what === 'change' || what === 'confirm' || due === undefined ? earlier : due;
  if (target === undefined) return undefined;
  const before = visit[target];
  if (what === 'confirm' && before !== undefined) return [target, before.answer] as Given;
  const options: Option[] = optionsOf(target, visit).filter(({ stops }) => !(what === 'suffice' && stops));
  return drawn(options, option)?.given;
}

function onPath({ path }: GuideState, visit: VisitAnswers): VisitAnswers {
  const ids = new Set<string>(path.map(({ id }) => id));
  return Object.fromEntries(Object.entries(visit).filter(([id]) => ids.has(id)));
}

/**
 * Each answer as it stands now, in the order of its last change: what a record knows of the past. A retry that is
 * taken back to "not done" counts as never made; nobody can tell it from a slip of the finger.
 */
function standing(history: readonly Given[]): Given[] {
  return history.filter(([id], index) => history.findLastIndex(([other]) => other === id) === index);
}

describe('a person who goes back, changes and confirms at random', () => {
  const met = { decisions: 0, checkAgain: 0, offPath: 0, moves: 0 };

  it('is never asked for a dangerous step, never gets a decision without proof, and loses nothing', () => {
    fc.assert(
      fc.property(fc.array(move, { minLength: 5, maxLength: 60 }), (moves) => {
        const history: Given[] = [];
        let state = nextStep({});
        for (const one of moves) {
          const given = answerOf(one, state, visitOf(history));
          if (given === undefined) continue;
          history.push(given);
          const visit = visitOf(history);
          state = nextStep(visit);
          met.moves += 1;
          met.decisions += state.decision ? 1 : 0;
          met.offPath += state.offPath.length > 0 ? 1 : 0;
          met.checkAgain += state.path.at(-1)?.status === 'check-again' ? 1 : 0;
          const way = onPath(state, visit);
          const rules = state.decision
            ? decisionRules(state.decision, way)
            : dueRules(state.due as StepId, way, standing(history));
          for (const [sentence, holds] of rules) expect(holds, `${sentence}${words(history)}`).toBe(true);
          const kept = new Set([...Object.keys(way), ...state.offPath]);
          expect([...kept].sort()).toEqual(Object.keys(visit).sort());
        }
      }),
      { numRuns: runs },
    );
  });

  it('met all of that', () => {
    console.info(`random corrections: ${JSON.stringify(met)}`);
    expect(Math.min(...Object.values(met))).toBeGreaterThan(runs / 10);
  });
});
