import minuteData from '../../../content/field/minutes.json' with { type: 'json' };
import type { StepId } from '../steps/ids.ts';

const { steps, try: tryMinutes, other } = minuteData.minutes;

/** How long a step takes one person, in minutes, without its tries with power: project judgement. */
export function minutesOf(id: StepId): number {
  return (steps as Partial<Record<StepId, number>>)[id] ?? other;
}

/** One try with power, the waiting for the charging circuit included, in minutes: project judgement. */
export const minutesOfTry: number = tryMinutes;
