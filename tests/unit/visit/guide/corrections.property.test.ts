import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type GuideState, nextStep } from '../../../../src/visit/guide/next-step.ts';
import type { StepId } from '../../../../src/visit/steps/ids.ts';
import type { VisitAnswers } from '../../../../src/visit/steps/questions.ts';
import { runs } from '../../../support/runs.ts';
import { type Option, optionsOf } from './support/options.ts';
import { decisionRules, dueRules } from './support/rules.ts';
import { type Given, onPath, standing, standingBefore, visitOf, words } from './support/visit.ts';

/** One act of a person: answering the due step, confirming an earlier answer, or changing it. */
interface Move {
  what: 'answer' | 'suffice' | 'confirm' | 'change' | 'pause';
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
    { weight: 1, arbitrary: fc.constant('pause' as const) },
  ),
  step: fc.nat(1000),
  option: fc.nat(100_000),
});

function drawn<T>(list: readonly T[], number: number): T | undefined {
  return list[number % list.length];
}

/** What the person answers; undefined if there is nothing to answer. Mostly steps on the way are changed. */
function answerOf({ what, step, option }: Move, { due, path }: GuideState, visit: VisitAnswers): Given | undefined {
  // On the way or off it: steps that have left the way can be changed too.
  const on = path.map(({ id }) => id).filter((id) => visit[id] !== undefined);
  const answered = step % 5 === 0 ? (Object.keys(visit) as StepId[]) : on;
  const earlier = drawn(answered, step);
  if (what === 'pause') return undefined;
  const target: StepId | undefined = what === 'change' || what === 'confirm' || due === undefined ? earlier : due;
  if (target === undefined) return undefined;
  const before = visit[target];
  if (what === 'confirm' && before !== undefined) return [target, before.answer] as Given;
  const options: Option[] = optionsOf(target, visit).filter(({ stops }) => !(what === 'suffice' && stops));
  return drawn(options, option)?.given;
}

describe('a person who goes back, changes, confirms and takes breaks at random', () => {
  const met = { breaks: 0, decisions: 0, checkAgain: 0, offPath: 0, moves: 0 };

  it('is never asked for a dangerous step, never gets a decision without proof, and loses nothing', () => {
    fc.assert(
      fc.property(fc.array(move, { minLength: 5, maxLength: 60, size: 'max' }), (moves) => {
        const history: Given[] = [];
        let state = nextStep({});
        let breakAt = 0;
        for (const one of moves) {
          const given = answerOf(one, state, visitOf(history, breakAt));
          if (one.what === 'pause') breakAt = history.length;
          else if (given === undefined) continue;
          else history.push(given);
          const visit = visitOf(history, breakAt);
          state = nextStep(visit);
          met.breaks += breakAt > 0 ? 1 : 0;
          met.moves += 1;
          met.decisions += state.decision ? 1 : 0;
          met.offPath += state.offPath.length > 0 ? 1 : 0;
          met.checkAgain += state.path.at(-1)?.status === 'check-again' ? 1 : 0;
          const way = onPath(state, visit);
          const rules = state.decision
            ? decisionRules(state.decision, way, visit)
            : dueRules(state.due as StepId, way, standing(history), standingBefore(history, breakAt));
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
