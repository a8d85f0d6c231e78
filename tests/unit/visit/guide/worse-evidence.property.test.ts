import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { missing } from '../../../../src/kernel/reading/reading.ts';
import type { Damage, Symptom } from '../../../../src/kernel/vocabulary.ts';
import type { Decision } from '../../../../src/visit/guide/decision.ts';
import { nextStep } from '../../../../src/visit/guide/next-step.ts';
import type { StepId } from '../../../../src/visit/steps/ids.ts';
import type { Answers, VisitAnswers } from '../../../../src/visit/steps/questions.ts';
import { runs } from '../../../support/runs.ts';
import { soundLockout } from './support/answers.ts';
import { isolationClasses } from './support/isolation-classes.ts';
import { bridges, insulations, windings } from './support/readings.ts';

/** The evidence of one visit: an answer to whatever the guide may ask. */
type Evidence = Pick<
  Answers,
  | 'inspect'
  | 'retry-feedback-off'
  | 'retry-device-end'
  | 'retry-feedback-on'
  | 'retry-leads-off'
  | 'mechanics'
  | 'bridge'
  | 'insulation'
  | 'isolation'
  | 'winding'
  | 'winding-motor'
  | 'retry-all'
>;

/** Answers what the guide asks, from the evidence, until it decides. Undecided readings are left open. */
type Moment = Answers['symptom']['when'];

function decisionFrom(evidence: Evidence, when: Moment): Decision {
  const answers: Partial<Answers> = {
    'find-drive': { observation: 'looked', axesOnDrive: 2, indicatedAxis: 1 },
    symptom: { when, gravityLoaded: 'unknown', came: 5, of: 5 },
    'idle-cores': { cores: 'none', lowest: missing },
    'bend-test': { result: 'steady', again: true },
    braking: { fitted: 'none', plate: missing, ohms: missing, toPe: missing, toBus: missing, again: false },
    'strip-drive': { state: 'all-off' },
    'retry-stripped': retry('no-trip'),
    ...evidence,
  };
  const visit: VisitAnswers = {};
  for (let seq = 1; seq < 40; seq += 1) {
    const { due, decision } = nextStep(visit);
    if (decision) return decision;
    const id = due as StepId;
    const answer = answers[id] ?? (id.startsWith('lockout') || id === 'bus-again' ? soundLockout : { done: true });
    Object.assign(visit, { [id]: { seq, answer } });
  }
  throw new Error('no decision');
}

const measured = <A>(assessment: A) => ({ assessment, leftOpen: true, celsius: 60 });
const retry = (result: 'no-trip' | 'not-done' | 'trips') => ({
  powerAllowed: true,
  result,
  ...(result !== 'not-done' && { tries: 3 }),
});

const isolation = [...isolationClasses().values()];
const bothProven = ({ parts }: (typeof isolation)[number]) =>
  parts.cable === 'proven-good' && parts.motor === 'proven-good';

/** From best to worst. Of the isolation, parts that are proven good are better than parts that are not suspect. */
const scales = {
  'retry-leads-off': [retry('no-trip'), retry('not-done'), retry('trips')],
  'retry-all': [retry('no-trip'), retry('not-done'), retry('trips')],
  mechanics: (['free', 'not-checked', 'stiff', 'brake-drags'] as const).map((found) => ({ found })),
  bridge: [bridges.good, bridges.tooClose, bridges.incomplete, bridges.shortedOnce, bridges.shorted].map(measured),
  insulation: [
    insulations.good,
    insulations.noTemperature,
    insulations.warm,
    insulations.low,
    insulations.dead,
    insulations.peBroken,
  ].map(measured),
  isolation: [
    ...isolation.filter((one) => one.verdict === 'go' && bothProven(one)),
    ...isolation.filter((one) => one.verdict === 'go' && !bothProven(one)),
    ...isolation.filter(({ verdict }) => verdict === 'undecided'),
    ...isolation.filter(({ verdict }) => verdict === 'no-go'),
  ].map(measured),
  winding: [windings.alike, windings.between, windings.incomplete, windings.unlike, windings.open].map(measured),
  'winding-motor': [windings.alike, windings.between, windings.incomplete, windings.unlike, windings.open].map(
    measured,
  ),
} as const;

type Scale = keyof typeof scales;
const scaleIds = Object.keys(scales) as Scale[];
const grades = Object.fromEntries(scaleIds.map((id) => [id, fc.nat(scales[id].length - 1)]));

/** From the least to the gravest, as the question of the step counts them. */
const byGravity: Damage[] = ['nothing', 'unseen', 'loose', 'bent', 'corroded', 'wet', 'chafed', 'burnt'];
const damaged = byGravity.slice(1);

const damage = fc.oneof(
  { weight: 6, arbitrary: fc.constant<Damage>('nothing') },
  { weight: 1, arbitrary: fc.constantFrom(...damaged) },
);

const moments: Symptom[] = [
  'control-off',
  'on-enable',
  'on-acceleration',
  'on-braking',
  'position-or-cable',
  'when-hot',
  'now-and-then',
];

const found = fc.record({
  when: fc.constantFrom<Moment>(...moments, 'unknown'),
  seen: fc.record({ drive: damage, motor: damage, motorCable: damage, feedbackCable: damage }),
  // The two retries without feedback show which part it is; neither result is worse than the other.
  feedbackOff: fc.constantFrom('trips' as const, 'no-trip' as const, 'not-done' as const),
  deviceEnd: fc.constantFrom('trips' as const, 'no-trip' as const, 'not-done' as const),
  feedbackOn: fc.constantFrom('trips' as const, 'no-trip' as const, 'not-done' as const),
  // Often all but one or two are at their best: close to "no fault found".
  grade: fc
    .record(grades)
    .chain((all) =>
      fc
        .subarray(scaleIds, { maxLength: 3 })
        .map((bad) => Object.fromEntries(scaleIds.map((id) => [id, bad.includes(id) ? (all[id] ?? 0) : 0]))),
    ),
});
type Found = typeof found extends fc.Arbitrary<infer F> ? F : never;

function decide({ when, seen, feedbackOff, deviceEnd, feedbackOn, grade }: Found): Decision {
  const at = (id: Scale) => scales[id][grade[id] ?? 0];
  const evidence = {
    inspect: { reseated: 'yes', seen },
    'retry-feedback-off': retry(feedbackOff),
    'retry-device-end': retry(deviceEnd),
    'retry-feedback-on': retry(feedbackOn),
    ...Object.fromEntries(scaleIds.map((id) => [id, at(id)])),
  } as Evidence;
  return decisionFrom(evidence, when);
}

describe('worse evidence', () => {
  const met = { better: 0, notFound: 0 };

  it('never turns any other decision into no fault found', () => {
    const worse = fc.record({ id: fc.constantFrom(...scaleIds), by: fc.integer({ min: 1, max: 80 }) });
    fc.assert(
      fc.property(found, worse, (before, { id, by }) => {
        const grade = { ...before.grade, [id]: Math.min((before.grade[id] ?? 0) + by, scales[id].length - 1) };
        const [first, second] = [decide(before), decide({ ...before, grade })];
        met.better += first.kind === 'no-fault-found' ? 1 : 0;
        if (first.kind !== 'no-fault-found') {
          met.notFound += 1;
          expect(second.kind, `${id} ${JSON.stringify(before)}`).not.toBe('no-fault-found');
        }
      }),
      { numRuns: runs },
    );
  });

  it('a part that looks damaged does not either', () => {
    const part = fc.constantFrom('drive', 'motor', 'motorCable', 'feedbackCable');
    const looks = fc.constantFrom(...damaged);
    fc.assert(
      fc.property(found, part, looks, (before, id, now) => {
        fc.pre(decide(before).kind !== 'no-fault-found');
        const seen = { ...before.seen, [id]: now };
        expect(decide({ ...before, seen }).kind).not.toBe('no-fault-found');
      }),
      { numRuns: runs },
    );
  });

  it('a part that was not looked at is never called good, never suspect for that, and is named', () => {
    const parts = {
      drive: 'drive',
      motor: 'motor',
      motorCable: 'motor-cable',
      feedbackCable: 'feedback-cable',
    } as const;
    fc.assert(
      fc.property(found, fc.constantFrom(...(Object.keys(parts) as (keyof typeof parts)[])), (before, id) => {
        const unseen = decide({ ...before, seen: { ...before.seen, [id]: 'unseen' } });
        const bad = ({ replace, suspect }: Decision) => [...replace, ...suspect].map(({ part }) => part);
        expect(unseen.good).not.toContain(parts[id]);
        if (!bad(unseen).includes(parts[id])) expect(unseen.open).toContain('not-looked-at');
        const reasons = unseen.suspect.flatMap(({ part, reasons: all }) => (part === parts[id] ? all : []));
        expect(reasons).not.toContain('drive-burnt');
        expect(reasons).not.toContain('feedback-cable-damaged');
      }),
      { numRuns: runs },
    );
  });

  it('a moment that nobody saw proves no part and clears none that a known moment does not', () => {
    fc.assert(
      fc.property(found, fc.constantFrom(...moments), (one, when) => {
        const [unknown, known] = [decide({ ...one, when: 'unknown' }), decide({ ...one, when })];
        expect(unknown.kind).not.toBe('no-fault-found');
        // On the way of another moment other steps are asked, so only what both ways measure can be compared.
        const measured = unknown.baseline.every((id) => known.baseline.includes(id));
        fc.pre(measured && when !== 'control-off');
        const proven = ({ replace }: Decision) => replace.map(({ part }) => part);
        expect(proven(known)).toEqual(expect.arrayContaining(proven(unknown)));
      }),
      { numRuns: runs },
    );
  });

  it('no fault found needs the best of every measurement that was asked', () => {
    fc.assert(
      fc.property(found, (one) => {
        fc.pre(decide(one).kind === 'no-fault-found');
        const asked: Scale[] = ['bridge', 'insulation', 'winding', 'retry-all'];
        expect(asked.filter((id) => one.grade[id] !== 0)).toEqual([]);
        expect(new Set(Object.values(one.seen))).toEqual(new Set(['nothing']));
      }),
      { numRuns: Math.ceil(runs / 10) },
    );
  });

  it('was tried on both sides', () => {
    expect(met.better).toBeGreaterThan(runs / 50);
    expect(met.notFound).toBeGreaterThan(runs / 2);
  });
});
