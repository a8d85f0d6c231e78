import type { VisitRecord } from './visit-schema.ts';

/** The visit as it was typed, without anything that was computed from it. */
export function withoutSnapshots({ decision: _decision, ...visit }: VisitRecord): VisitRecord {
  const steps = Object.entries(visit.steps).map(([id, { snapshot: _snapshot, ...step }]) => [id, step]);
  return { ...visit, steps: Object.fromEntries(steps) };
}
