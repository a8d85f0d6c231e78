import { continues } from '../../kernel/time/work-pause.ts';
import type { VisitRecord } from './visit-schema.ts';

/**
 * A stretch of work is what one person does at one machine without a break. Only within one stretch is it known that the
 * drive is dead and the axis held: during a break somebody else may work there, and a bus can recover voltage.
 */

type Stretches = Pick<VisitRecord, 'stretch' | 'createdAt'> & {
  steps: Partial<Record<string, { at: string; stretch: number } | undefined>>;
};

/**
 * The stretch that an answer given at `now` belongs to: that of the last answer, or a new one after a pause longer than
 * the limit, on another day, or if the clock ran backwards. `now` is an ISO time with its offset.
 */
export function stretchAt(visit: Stretches, now: string): number {
  const last = lastAnswer(visit);
  return last === undefined || continues(last, now) ? newest(visit) : newest(visit) + 1;
}

/** The visit at the beginning of a new stretch, such as after an import: no proof of safety in it holds now. */
export function asNewStretch(visit: VisitRecord): VisitRecord {
  return { ...visit, stretch: newest(visit) + 1 };
}

/**
 * The time of the last answer of the newest stretch; undefined if that stretch has no answer yet. Earlier stretches do
 * not count: they may come from a clock that was ahead, and then each answer would begin a new stretch.
 */
function lastAnswer(visit: Stretches): string | undefined {
  const stretch = newest(visit);
  const times = Object.values(visit.steps).flatMap((step) => (step?.stretch === stretch ? [step.at] : []));
  return times.reduce<string | undefined>(
    (last, time) => (last === undefined || Date.parse(time) > Date.parse(last) ? time : last),
    undefined,
  );
}

/** The highest number, even if one was edited by hand. */
function newest({ stretch, steps }: Stretches): number {
  return Math.max(stretch, ...Object.values(steps).map((step) => step?.stretch ?? 0));
}
