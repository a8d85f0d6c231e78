import type { Typed } from '../kernel/form/field.ts';
import { trueOfTheMoment } from '../kernel/form/opening.ts';
import { enterStep } from './change-step.ts';
import { evaluate } from './evaluate.ts';
import type { VisitRecord } from './record/visit-schema.ts';
import { stepCalculators } from './steps/calculators.ts';
import type { MeasuredStepId } from './steps/questions.ts';

/** The steps that the readings of a calculator can belong to; empty if no step of a visit asks for them. */
export function stepsFor(calculator: string): MeasuredStepId[] {
  const ids = Object.keys(stepCalculators) as MeasuredStepId[];
  return ids.filter((id) => stepCalculators[id].name === calculator);
}

/** What of a calculator's entries a visit takes: the bus voltage and the leads it has proved by its own steps. */
export function takenAlong(id: MeasuredStepId, typed: Typed): Typed {
  const known = stepCalculators[id].fields.filter((field) => !trueOfTheMoment.includes(field.id));
  return Object.fromEntries(known.flatMap((field) => (typed[field.id] ? [[field.id, typed[field.id] ?? '']] : [])));
}

/** The visit with these readings in the step; nothing else of it is answered by them. */
export function withReadings(visit: VisitRecord, id: MeasuredStepId, typed: Typed, now: string): VisitRecord {
  return enterStep(evaluate(visit, now), id, takenAlong(id, typed), now).visit;
}
