import type { Branch } from '../../calculators/trip-trace/rule/input.ts';
import type { Cause } from '../../kernel/vocabulary.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import { mayBe } from './evidence.ts';

/** The families of causes that a recording means when it speaks for something. */
const causesOf: Record<Branch, readonly Cause[]> = {
  'short-outside': ['output-stage', 'cable-insulation', 'winding-insulation', 'winding-turns'],
  'earth-path': ['cable-insulation', 'winding-insulation', 'moisture'],
  'inside-drive': ['output-stage', 'drive-control'],
  sensing: ['current-sensor'],
  feedback: ['feedback-signal', 'commutation'],
  'open-core': ['moving-cable', 'contact'],
  mechanics: ['load', 'brake'],
  tuning: ['tuning'],
  'supply-braking': ['supply', 'braking-circuit'],
};

/** What a recording of the trip speaks for comes first among the possible causes. It excludes none. */
export const recordedCauses = ({ recording }: VisitAnswers): Cause[] =>
  (recording?.answer.speaksFor ?? []).flatMap((branch) => causesOf[branch]);

/** Whether a recording speaks for this. It may add a measurement; it never replaces one, and proves nothing. */
export const recordingSpeaksFor = ({ recording }: VisitAnswers, branch: Branch): boolean =>
  recording?.answer.speaksFor.includes(branch) ?? false;

/** The moment or a recording asks for the braking circuit; then the decision lists it as open until it is known. */
export const wantsBraking = (visit: VisitAnswers): boolean =>
  mayBe(visit, 'on-braking') || recordingSpeaksFor(visit, 'supply-braking');

/** The same for the moving cable. */
export const wantsBending = (visit: VisitAnswers): boolean =>
  mayBe(visit, 'position-or-cable') || recordingSpeaksFor(visit, 'open-core');
