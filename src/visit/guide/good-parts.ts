import { limitValue } from '../../kernel/limits.ts';
import type { Part } from '../../kernel/vocabulary.ts';
import type { StepId } from '../steps/ids.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import { brakingState } from './braking.ts';
import { atRest, bentSteady, peSound } from './causes.ts';
import { insulationSettled, isolationClears, looksBad, mayBe, measuredHot } from './evidence.ts';
import { inputOpen, inputSpeaksAgainst } from './input-circuit.ts';
import { wantsBending, wantsBraking } from './recording.ts';
import { tripsEveryTime } from './tries.ts';

export interface Excluded {
  part: Part;
  /** The steps whose readings exclude it. */
  by: StepId[];
}

/** Parts that passed every measurement of them and do not look damaged. */
export function passedParts(visit: VisitAnswers): Part[] {
  const joined = visit.isolation === undefined && insulationSettled(visit);
  const through = visit.winding?.answer.assessment.verdict;
  const atMotor = visit['winding-motor']?.answer.assessment.verdict;
  const passed: Part[] = [];
  const inputKnown = !inputOpen(visit) && !inputSpeaksAgainst(visit);
  if (visit.bridge?.answer.assessment.verdict === 'go' && inputKnown && !looksBad(visit, 'drive')) passed.push('drive');
  const motorInsulated = (joined || isolationClears(visit, 'motor')) && !looksBad(visit, 'motor');
  if (motorInsulated && (through === 'go' || atMotor === 'go')) passed.push('motor');
  // Bad through the cable but not known to be bad at the motor: a core of the cable may be broken.
  const coreInDoubt = through === 'no-go' && atMotor !== 'no-go';
  const cableInsulated = (joined || isolationClears(visit, 'cable')) && !looksBad(visit, 'motorCable');
  if (cableInsulated && !coreInDoubt) passed.push('motor-cable');
  return passed;
}

/** Whether this part was measured in the state in which it trips: warm, bent, or with its braking circuit. */
export function measuredAsItTrips(visit: VisitAnswers, part: Part): boolean {
  if (part === 'motor' && mayBe(visit, 'when-hot')) return measuredHot(visit, limitValue('hot-winding'));
  if (part === 'drive' && wantsBraking(visit)) return brakingKnown(visit);
  return part !== 'motor-cable' || !wantsBending(visit) || bentSteady(visit);
}

/** Without a braking resistor nothing switches it; one that was not measured leaves the switch inside the drive unknown. */
function brakingKnown(visit: VisitAnswers): boolean {
  const state = brakingState(visit);
  return state?.resistor === 'none' || state?.switch === 'good';
}

/** Parts that readings of this visit exclude as the cause, each with the steps that do. */
export function excludedParts(visit: VisitAnswers, good: readonly Part[]): Excluded[] {
  const withoutMotor = (['retry-leads-off', 'retry-stripped'] as const).filter((id) => tripsEveryTime(visit, id));
  const withoutFeedback: StepId[] = tripsEveryTime(visit, 'retry-feedback-off') ? ['retry-feedback-off'] : [];
  const measured = (part: Part, steps: readonly StepId[]): StepId[] =>
    good.includes(part) ? steps.filter((id) => visit[id] !== undefined) : [];
  const cable: StepId[] = cableAlone(visit) ? ['isolation'] : [];
  const resistor: StepId[] = brakingState(visit)?.resistor === 'good' ? ['braking'] : [];
  const found: Excluded[] = [
    { part: 'drive', by: measured('drive', ['bridge']) },
    { part: 'motor', by: [...withoutMotor, ...measured('motor', motorSteps)] },
    { part: 'motor-cable', by: [...withoutMotor, ...cable, ...measured('motor-cable', cableSteps)] },
    { part: 'feedback-cable', by: withoutFeedback },
    { part: 'feedback-device', by: withoutFeedback },
    { part: 'protective-conductor', by: peSound(visit) ? ['insulation'] : [] },
    { part: 'braking-resistor', by: resistor },
  ];
  return found.map(({ part, by }) => ({ part, by: [...new Set(by)] })).filter(({ by }) => by.length > 0);
}

const motorSteps = ['winding', 'winding-motor', 'insulation', 'isolation'] as const;
const cableSteps = ['bend-test', 'insulation', 'isolation'] as const;

/** Measured alone, core against core too, for a trip that needs no motion. */
function cableAlone(visit: VisitAnswers): boolean {
  const alone = visit.isolation?.answer.assessment.parts.cable === 'proven-good';
  return alone && atRest(visit) && !looksBad(visit, 'motorCable');
}
