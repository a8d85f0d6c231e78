import type { Cause } from '../../kernel/vocabulary.ts';
import { minutesOf, minutesOfTry } from '../../visit/guide/minutes.ts';
import type { StepId } from '../../visit/steps/ids.ts';
import { causeTexts } from '../../visit/words/causes.ts';
import type { CallFacts } from './facts.ts';

export type Person = 'you' | 'switcher' | 'second' | 'rigger' | 'programmer';
export type Permit = 'lockout' | 'look-live' | 'height';

/** Who is needed besides you. */
export function people({ canFall, moment }: CallFacts, shown: readonly Cause[]): Person[] {
  const wanted: [Person, boolean][] = [
    ['you', true],
    ['switcher', true],
    ['second', canFall !== 'no' || moment === 'position-or-cable' || shown.includes('moving-cable')],
    ['rigger', canFall === 'yes'],
    ['programmer', shown.includes('tuning') || shown.includes('commutation')],
  ];
  return wanted.filter(([, needed]) => needed).map(([person]) => person);
}

export function permits({ high }: CallFacts): Permit[] {
  return ['lockout', 'look-live', ...(high === 'yes' ? (['height'] as const) : [])];
}

/** A retry shows nothing before it was done so often. */
const triesAtTheEnd = 3;

/** Steps of a visit that begins at this moment, up to the reading that first can prove a part bad. */
function firstSteps({ moment, canFall }: CallFacts): StepId[] {
  const feedback: StepId[] = ['unplug-feedback', 'lockout-2', 'plug-feedback'];
  const moves = moment !== undefined && moment !== 'control-off' && moment !== 'on-enable';
  return [
    ...(['find-drive', 'symptom'] as const),
    ...(canFall === 'no' ? [] : (['support-axis'] as const)),
    ...(['lockout-1', 'inspect', 'disconnect-leads'] as const),
    ...(moment === 'control-off' ? feedback : []),
    ...(moves ? (['mechanics'] as const) : []),
    ...(['bridge', 'bus-again', 'winding', 'idle-cores', 'insulation'] as const),
    ...(moment === 'on-braking' ? (['braking'] as const) : []),
    ...(moment === 'position-or-cable' ? (['bend-test'] as const) : []),
  ];
}

/** Steps that follow if these readings pass or point at motor or cable. */
const furtherSteps: StepId[] = ['isolation', 'winding-motor', 'reconnect', 'retry-all'];

/**
 * Minutes at the machine, waiting for the bus included: `least` until the first readings have shown a part, `most` if
 * they show none and each suspect shown is looked for in turn. Exchange of parts, travel and permits come on top.
 */
export function minutesToPlan(facts: CallFacts, shown: readonly Cause[]): { least: number; most: number } {
  const sum = (steps: readonly StepId[]) => steps.reduce((total, id) => total + minutesOf(id), 0);
  const tries = facts.moment === 'control-off' ? minutesOfTry : 0;
  const least = sum(firstSteps(facts)) + tries;
  const looked = shown.reduce((total, cause) => total + (causeTexts[cause].minutes ?? 0), 0);
  return { least, most: least + sum(furtherSteps) + triesAtTheEnd * minutesOfTry + looked };
}

/** Hours to write into a calendar: rounded up to half an hour. */
export function hoursToPlan(minutes: number): number {
  return Math.ceil(minutes / 30) / 2;
}
