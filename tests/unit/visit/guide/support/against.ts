import type { Reading } from '../../../../../src/kernel/reading/reading.ts';
import type { StepId } from '../../../../../src/visit/steps/ids.ts';
import type { VisitAnswers } from '../../../../../src/visit/steps/questions.ts';

/** One thing that speaks against power: what was found, and the steps with power that may be done all the same. */
interface Fact {
  found: string;
  holds: boolean;
  except: readonly StepId[];
}

const measurements = ['bridge', 'input-circuit', 'insulation', 'isolation', 'winding', 'winding-motor'] as const;
/** With the leads off, motor and motor cable get no voltage in these steps. */
const withoutMotor: StepId[] = ['retry-feedback-off', 'retry-device-end', 'retry-leads-off', 'retry-stripped'];
const withControlOff: StepId[] = ['retry-feedback-off', 'retry-device-end', 'retry-feedback-on'];
const beforeTheWhole: StepId[] = [...withControlOff, 'retry-leads-off', 'retry-stripped'];

/** The point below which an idle core is not free, in Ω; repeated on purpose: the checker must be independent. */
const idleCorePoint = 1e6;

/** The most that this reading can be; without a figure or a bound, anything. */
const most = (reading: Reading) =>
  reading.kind === 'value' ? reading.value : reading.kind === 'under' ? (reading.atMost ?? Infinity) : Infinity;
/** The least that it can be. */
const least = (reading: Reading) =>
  reading.kind === 'value' ? reading.value : reading.kind === 'over' ? (reading.atLeast ?? 0) : 0;

/** Whether an idle core touches another core or PE, is free of all, or nobody knows. */
export function idleCores(record: VisitAnswers): 'free' | 'touches' | 'unknown' {
  const answer = record['idle-cores']?.answer;
  if (answer?.cores === 'none') return 'free';
  if (answer?.cores !== 'measured' || answer.lowest.kind === 'missing') return 'unknown';
  if (least(answer.lowest) >= idleCorePoint) return 'free';
  return most(answer.lowest) < idleCorePoint ? 'touches' : 'unknown';
}

/** What the braking circuit shows, by the plate (25 %), a megohm to PE and a kilohm to DC−. */
export function brakingCircuit(record: VisitAnswers): 'bad' | 'switch' | 'sound' | 'unknown' {
  const answer = record.braking?.answer;
  if (answer?.fitted === 'none') return 'sound';
  if (answer?.fitted !== 'external') return 'unknown';
  const { plate, ohms, toPe, toBus } = answer;
  if (most(ohms) < 0.75 * least(plate) || least(ohms) > 1.25 * most(plate) || most(toPe) < 1e6) return 'bad';
  if (most(toBus) <= 1e3) return 'switch';
  const fits = least(ohms) >= 0.75 * most(plate) && most(ohms) <= 1.25 * least(plate);
  return fits && least(toPe) >= 1e6 && toBus.kind !== 'missing' ? 'sound' : 'unknown';
}

export function bends(record: VisitAnswers): 'bad' | 'steady' | 'unknown' {
  const answer = record['bend-test']?.answer;
  if (answer?.result === 'opens' || answer?.result === 'leaks') return 'bad';
  return answer?.result === 'steady' && answer.again ? 'steady' : 'unknown';
}

/**
 * What in a record speaks against power at this step, in words. Written from the rules of the trade and not from the
 * guide: every answer ever given counts, against each step with power that is not named as harmless.
 */
export function against(record: VisitAnswers, step: StepId, leadsOn: boolean): string[] {
  const verdict = (id: (typeof measurements)[number]) => record[id]?.answer.assessment.verdict;
  const seen = record.inspect?.answer.seen;
  const parts = record.isolation?.answer.assessment.parts;
  const bad = (part: string | undefined) => part === 'proven-bad' || part === 'suspect';
  const result = (id: 'retry-feedback-off' | 'retry-leads-off' | 'retry-stripped') => record[id]?.answer.result;
  const peMissing = record.insulation?.answer.assessment.findings.some(({ code }) => code === 'pe-not-short') ?? false;
  const separatePe = parts?.protectiveConductor;
  const found = record.mechanics?.answer.found;
  const braking = brakingCircuit(record);
  const motorSide = leadsOn ? [] : withoutMotor;
  // With the control off everything is unplugged, feedback too; for an enable the feedback stays.
  const strippedOfFeedback: StepId[] = record.symptom?.answer.when === 'control-off' ? ['retry-stripped'] : [];
  const fact = (words: string, holds: boolean, except: readonly StepId[] = []): Fact => ({
    found: words,
    holds,
    except,
  });
  const facts: Fact[] = [
    fact('nobody has looked', seen === undefined),
    fact('drive seen damaged', seen !== undefined && seen.drive !== 'nothing'),
    fact('output stage bad', verdict('bridge') === 'no-go'),
    fact('input bad', verdict('input-circuit') === 'no-go'),
    fact(
      'fuses or breaker opened, and the input did not pass',
      record.symptom?.answer.protection === 'opened' && verdict('input-circuit') !== 'go',
    ),
    // With everything off it is tried once more: that is how the drive alone is known.
    fact('trips without feedback', result('retry-feedback-off') === 'trips', ['retry-feedback-off', 'retry-stripped']),
    fact('trips without motor', result('retry-leads-off') === 'trips', ['retry-leads-off', 'retry-stripped']),
    fact('trips with everything off', result('retry-stripped') === 'trips', ['retry-stripped']),
    fact('PE broken', bad(separatePe) || (peMissing && separatePe !== 'proven-good')),
    fact('an idle core touches another', idleCores(record) === 'touches'),
    fact('braking circuit bad', braking === 'bad' || braking === 'switch', ['retry-stripped']),
    fact('feedback cable seen damaged', seen?.feedbackCable !== 'nothing', [
      'retry-feedback-off',
      ...strippedOfFeedback,
    ]),
    fact('trip gone without feedback', result('retry-feedback-off') === 'no-trip', [
      ...withControlOff,
      ...strippedOfFeedback,
    ]),
    fact('motor seen damaged', seen?.motor !== 'nothing', motorSide),
    fact('motor cable seen damaged', seen?.motorCable !== 'nothing', motorSide),
    fact('cable opens or leaks when bent', bends(record) === 'bad', motorSide),
    fact('insulation bad', verdict('insulation') === 'no-go', motorSide),
    fact('isolation bad', verdict('isolation') === 'no-go', motorSide),
    fact('cable bad', bad(parts?.cable), motorSide),
    fact('motor bad', bad(parts?.motor), motorSide),
    fact('winding bad', verdict('winding') === 'no-go', motorSide),
    fact('winding bad at the motor', verdict('winding-motor') === 'no-go', motorSide),
    fact(
      'a measurement undecided',
      measurements.some((id) => verdict(id) === 'undecided'),
      beforeTheWhole,
    ),
    fact('idle cores not measured', idleCores(record) === 'unknown', beforeTheWhole),
    fact('a change is wrong', record['after-change']?.answer.found === 'wrong', beforeTheWhole),
    fact('mechanics bad', found === 'stiff' || found === 'brake-drags', beforeTheWhole),
  ];
  return facts.filter(({ holds, except }) => holds && !except.includes(step)).map(({ found: words }) => words);
}
