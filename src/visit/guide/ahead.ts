import { lastIn } from '../../kernel/reading/last-in.ts';
import { missing } from '../../kernel/reading/reading.ts';
import { type StepId, stepIds } from '../steps/ids.ts';
import type { Answers, VisitAnswers } from '../steps/questions.ts';
import { minutesOf, minutesOfTry } from './minutes.ts';
import { nextStep } from './next-step.ts';
import { isPowerStep } from './power.ts';
import { triesNeededIn } from './tries.ts';

/** What is left of a visit. */
export interface Ahead {
  /** The steps to come, the one that is due first, if every measurement passes. */
  steps: StepId[];
  /** How long they take one person, in minutes: project judgement. */
  minutes: number;
}

/**
 * The way from here to the decision if everything that is still asked passes, by the guide's own rules. Undefined once there
 * is a decision, and if the guide comes to none that way.
 */
export function wayAhead(visit: VisitAnswers): Ahead | undefined {
  const supposed: VisitAnswers = { ...visit };
  const steps: StepId[] = [];
  let seq = Math.max(0, ...Object.values(visit).map((answered) => answered?.seq ?? 0));
  for (let id = nextStep(supposed).due; id !== undefined; id = nextStep(supposed).due) {
    // A step that still does not pass is one that no good answer settles. The bus may be due more than once.
    if (lastIn(steps) === id || steps.length > stepIds.length) return undefined;
    steps.push(id);
    seq += 1;
    Object.assign(supposed, { [id]: { seq, answer: passing(id) } });
  }
  if (steps.length === 0) return undefined;
  return { steps, minutes: steps.reduce((sum, id) => sum + minutesWithTries(id, visit), 0) };
}

function minutesWithTries(id: StepId, visit: VisitAnswers): number {
  return minutesOf(id) + (isPowerStep(id) ? (triesNeededIn(visit) ?? 1) * minutesOfTry : 0);
}

const dead = {
  ...{ lockedOut: true, waited: true, meterProved: true, peProved: true },
  supplyVoltage: { kind: 'value', value: 0, unit: 'V' },
  outputVoltage: { kind: 'value', value: 0, unit: 'V' },
  busVoltage: { kind: 'value', value: 0, unit: 'V' },
} as const;
const noTrip = { powerAllowed: true, result: 'no-trip', tries: 1, trips: 0, asItTrips: true } as const;
const passed = {
  assessment: { verdict: 'go', findings: [], parts: { cable: 'proven-good', motor: 'proven-good' } },
};

/** The answer of a step that passes. Of a measurement the guide reads only what is here. */
function passing(id: StepId): Answers[StepId] {
  const answers: { [Id in StepId]?: unknown } = {
    'find-drive': { observation: 'known', axesOnDrive: 1 },
    symptom: { when: 'on-enable', gravityLoaded: 'no' },
    recording: { speaksFor: [], read: true },
    'bus-again': dead,
    inspect: {
      reseated: 'none',
      seen: { drive: 'nothing', motor: 'nothing', motorCable: 'nothing', feedbackCable: 'nothing' },
    },
    mechanics: { found: 'free' },
    braking: { fitted: 'none', plate: missing, ohms: missing, toPe: missing, toBus: missing },
    'strip-drive': { state: 'all-off' },
    'bend-test': { result: 'steady', again: true },
    'idle-cores': { cores: 'none', lowest: missing },
    ...{ bridge: passed, winding: passed, 'winding-motor': passed, insulation: passed, isolation: passed },
  };
  const otherwise =
    id.startsWith('lockout-') || id === 'prove-again' ? dead : isPowerStep(id) ? noTrip : { done: true };
  return (answers[id] ?? otherwise) as Answers[StepId];
}
