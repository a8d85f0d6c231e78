import { continues } from '../../kernel/time/work-pause.ts';
import type { VisitRecord } from './visit-schema.ts';

/**
 * A stretch of work is what one person does at one machine without a break. That the drive is dead and the axis held is
 * known within one stretch only: in a break somebody else may have been there, and a bus recovers.
 */

type Stretches = Pick<VisitRecord, 'stretch' | 'createdAt'> & {
  steps: Partial<Record<string, { at: string; stretch: number } | undefined>>;
};

/**
 * The stretch that an answer given at `now` belongs to: that of the last answer, or a new one after a pause longer than
 * the limit, on another day, or where the clock ran backwards. `now` is an ISO time with its offset.
 */
export function stretchAt(visit: Stretches, now: string): number {
  const last = lastAnswer(visit);
  return last === undefined || continues(last, now) ? newest(visit) : newest(visit) + 1;
}

/** The visit as it comes from a file or a link: nothing in it was proved here and now. */
export function takenOver(visit: VisitRecord): VisitRecord {
  return { ...visit, stretch: newest(visit) + 1 };
}

/**
 * When the last answer of the newest stretch was given, by the clock that wrote it; undefined where that stretch has none
 * yet. Answers before it may be by a clock that was ahead: held against them, each answer would begin a new stretch.
 */
function lastAnswer(visit: Stretches): string | undefined {
  const stretch = newest(visit);
  const times = Object.values(visit.steps).flatMap((step) => (step?.stretch === stretch ? [step.at] : []));
  return times.reduce<string | undefined>(
    (last, time) => (last === undefined || Date.parse(time) > Date.parse(last) ? time : last),
    undefined,
  );
}

/** Also where a hand has edited a number. */
function newest({ stretch, steps }: Stretches): number {
  return Math.max(stretch, ...Object.values(steps).map((step) => step?.stretch ?? 0));
}
