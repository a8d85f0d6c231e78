import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { missing, ohms, overOhms, type Reading, underOhms } from '../../../../src/kernel/reading/reading.ts';
import type { Damage, Symptom } from '../../../../src/kernel/vocabulary.ts';
import { nextStep } from '../../../../src/visit/guide/next-step.ts';
import type { StepId } from '../../../../src/visit/steps/ids.ts';
import { runs } from '../../../support/runs.ts';
import { soundLockout } from './support/answers.ts';
import {
  answerWith,
  type Measuring,
  measuring,
  type Retry,
  readingsIn,
  retries,
  series,
  trueAnswers,
  withReading,
} from './support/sound-axis.ts';
import { type Given, visitOf, words } from './support/visit.ts';

/*
 * All parts are sound. A tired technician reports one thing wrongly, in any order, with breaks and corrections, and says it
 * again when asked again. One false reading is one reading: it must prove no part bad. A misreported try is one of its
 * series; a second reading of the same thing is a reading of its own, and true.
 */

const falseOhms = fc.constantFrom<Reading>(
  ...[0, 0.01, 0.3, 0.9, 1.8, 40, 999, 5e3, 46e3, 3e5, 0.9e6, 12e6, 95e6, 400e6].map((value) => ohms(value)),
  ...[overOhms(), overOhms(1e3), overOhms(7e8), underOhms(), underOhms(1), missing],
);

/** Something else in the unit of the reading. */
const otherThan = (reading: Reading): fc.Arbitrary<Reading> => {
  if (reading.kind !== 'value' || reading.unit === 'Ω') return falseOhms;
  return fc.constantFrom(0, 0.1, 0.5, 2, 10, 50, 100).map((factor) => ({ ...reading, value: reading.value * factor }));
};

const measurement = fc
  .constantFrom(...(Object.keys(measuring) as Measuring[]))
  .chain((step) => fc.constantFrom(...readingsIn(measuring[step].input).map((place) => ({ step, ...place }))))
  .chain(({ step, path, reading }) =>
    otherThan(reading).map((other): Given => {
      return [step, answerWith(step, withReading(measuring[step].input, path, other))] as Given;
    }),
  );

const truth = trueAnswers(false);
const damages: Damage[] = ['burnt', 'wet', 'chafed', 'bent', 'loose', 'corroded', 'unseen'];
const look = fc
  .tuple(fc.constantFrom('drive', 'motor', 'motorCable', 'feedbackCable'), fc.constantFrom(...damages))
  .map(([part, damage]): Given => {
    const sound = truth.inspect?.seen;
    return ['inspect', { reseated: 'yes', seen: { ...sound, [part]: damage } }] as Given;
  });
const bend = fc
  .tuple(fc.constantFrom('opens', 'leaks'), fc.constantFrom('power', 'PE', 'screen', 'idle', 'feedback'))
  .map(([result, core]): Given => ['bend-test', { result, core, again: false }] as Given);
const brake = fc
  .tuple(fc.constantFrom('plate', 'ohms', 'toPe', 'toBus'), falseOhms)
  .map(([place, reading]): Given => ['braking', { ...truth.braking, [place]: reading, again: false }] as Given);
const idle = falseOhms.map((lowest): Given => ['idle-cores', { cores: 'measured', lowest }]);
const oneTry = fc
  .constantFrom(...(Object.keys(retries) as Retry[]))
  .map((id) => ({ id, trips: truth[id]?.result === 'trips' ? 2 : 1 }))
  .map(({ id, trips }): Given => [id, series(trips, retries[id])] as Given);

/** Of the symptom only this is wrong: the moment, or how often the trip came. */
const symptom = fc
  .oneof(
    fc.constantFrom<Symptom>('control-off', 'on-enable', 'on-acceleration', 'when-hot').map((when) => ({ when })),
    fc.constant({ came: 5, of: 5 }),
  )
  .map((part): Given => ['symptom', part as unknown] as Given);

const lie = fc.oneof(
  { weight: 5, arbitrary: measurement },
  ...[look, bend, brake, idle, symptom].map((arbitrary) => ({ weight: 1, arbitrary })),
  { weight: 3, arbitrary: oneTry },
);

/** Each is 40 to 60 turns. */
const visits = Math.max(400, runs / 4);

interface Visit {
  when: Symptom;
  tripsOn: boolean;
  lie: Given;
  /** Draws what is done beside answering: a change of an earlier answer, a break, or nothing. */
  turns: number[];
}
const visit: fc.Arbitrary<Visit> = fc.record({
  when: fc.constantFrom<Symptom>(
    ...(['control-off', 'on-enable', 'on-acceleration', 'on-braking'] as const),
    ...(['position-or-cable', 'when-hot', 'now-and-then'] as const),
  ),
  tripsOn: fc.boolean(),
  lie,
  turns: fc.array(fc.nat(100_000), { minLength: 40, maxLength: 60, size: 'max' }),
});

describe('one false reading at an axis whose parts are all sound', () => {
  const met = { decisions: 0, spoken: 0, suspect: 0, corrected: 0 };
  const spoken = new Set<StepId>();

  it('proves no part bad, in any order of answers and corrections', () => {
    fc.assert(
      fc.property(visit, ({ when, tripsOn, lie: wrong, turns }) => {
        // A trip that stays away by itself is known to come now and then.
        const often = tripsOn ? { came: 5, of: 5 } : { came: 2, of: 6 };
        const truly = { when, gravityLoaded: 'no' as const, ...often };
        const answers = { ...trueAnswers(tripsOn), symptom: truly } as Partial<Record<StepId, unknown>>;
        const falseAnswer = wrong[0] === 'symptom' ? (['symptom', { ...truly, ...wrong[1] }] as Given) : wrong;
        const trueAnswer = (id: StepId): Given => {
          if (id in measuring) return [id, answerWith(id as Measuring, measuring[id as Measuring].input)] as Given;
          return [id, answers[id] ?? (/^lockout|again$/.test(id) ? soundLockout : { done: true })] as Given;
        };
        const history: Given[] = [];
        let breakAt = 0;
        for (const turn of turns) {
          const { due, decision } = nextStep(visitOf(history, breakAt));
          if (decision) {
            met.decisions += 1;
            met.suspect += decision.suspect.length > 0 ? 1 : 0;
            expect(decision.replace, words(history)).toEqual([]);
          }
          const earlier = history[turn % Math.max(1, history.length)]?.[0];
          const isBack = due === undefined || turn % 7 === 0;
          const id = isBack ? earlier : due;
          if (turn % 23 === 0) breakAt = history.length;
          if (id === undefined) continue;
          const isFalse = id === wrong[0] && turn % 4 !== 1;
          if (isFalse) spoken.add(id);
          met.spoken += isFalse ? 1 : 0;
          met.corrected += isBack ? 1 : 0;
          history.push(isFalse ? falseAnswer : trueAnswer(id));
        }
      }),
      { numRuns: visits },
    );
  });

  it('was spoken at every kind of step, and often made a part suspect', () => {
    console.info(`one false reading: ${JSON.stringify({ ...met, steps: [...spoken] })}`);
    expect(Math.min(...Object.values(met))).toBeGreaterThan(visits / 10);
    expect([...spoken]).toEqual(expect.arrayContaining(['bridge', 'insulation', 'isolation', 'winding', 'inspect']));
    expect(spoken.size).toBeGreaterThan(8);
    expect([...spoken].filter((id) => id in retries).length).toBeGreaterThan(1);
  });
});
