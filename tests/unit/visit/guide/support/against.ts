import type { StepId } from '../../../../../src/visit/steps/ids.ts';
import type { VisitAnswers } from '../../../../../src/visit/steps/questions.ts';

/** One thing that speaks against power: what was found, and the steps with power that may be done all the same. */
interface Fact {
  found: string;
  holds: boolean;
  except: readonly StepId[];
}

const measurements = ['bridge', 'insulation', 'isolation', 'winding', 'winding-motor'] as const;
/** With the leads off, motor and motor cable get no voltage in these steps. */
const withoutMotor: StepId[] = ['retry-feedback-off', 'retry-device-end', 'retry-leads-off'];
const withControlOff: StepId[] = ['retry-feedback-off', 'retry-device-end', 'retry-feedback-on'];
const beforeTheWhole: StepId[] = [...withControlOff, 'retry-leads-off'];

/**
 * What in a record speaks against power at this step, in words. Written from the rules of the trade and not from the
 * guide: every answer ever given counts, against each step with power that is not named as harmless.
 */
export function against(record: VisitAnswers, step: StepId, leadsOn: boolean): string[] {
  const verdict = (id: (typeof measurements)[number]) => record[id]?.answer.assessment.verdict;
  const seen = record.inspect?.answer.seen;
  const parts = record.isolation?.answer.assessment.parts;
  const result = (id: 'retry-feedback-off' | 'retry-leads-off') => record[id]?.answer.result;
  const peMissing = record.insulation?.answer.assessment.findings.some(({ code }) => code === 'pe-not-short') ?? false;
  const separatePe = parts?.protectiveConductor;
  const found = record.mechanics?.answer.found;
  const motorSide = leadsOn ? [] : withoutMotor;
  const fact = (words: string, holds: boolean, except: readonly StepId[] = []): Fact => ({
    found: words,
    holds,
    except,
  });
  const facts: Fact[] = [
    fact('nobody has looked', seen === undefined),
    fact('drive seen damaged', seen !== undefined && seen.drive !== 'nothing'),
    fact('output stage bad', verdict('bridge') === 'no-go'),
    fact('trips without feedback', result('retry-feedback-off') === 'trips', ['retry-feedback-off']),
    fact('trips without motor', result('retry-leads-off') === 'trips', ['retry-leads-off']),
    fact('PE broken', separatePe === 'proven-bad' || (peMissing && separatePe !== 'proven-good')),
    fact('feedback cable seen damaged', seen?.feedbackCable !== 'nothing', ['retry-feedback-off']),
    fact('trip gone without feedback', result('retry-feedback-off') === 'no-trip', withControlOff),
    fact('motor seen damaged', seen?.motor !== 'nothing', motorSide),
    fact('motor cable seen damaged', seen?.motorCable !== 'nothing', motorSide),
    fact('insulation bad', verdict('insulation') === 'no-go', motorSide),
    fact('isolation bad', verdict('isolation') === 'no-go', motorSide),
    fact('cable proven bad', parts?.cable === 'proven-bad', motorSide),
    fact('motor proven bad', parts?.motor === 'proven-bad', motorSide),
    fact('winding bad', verdict('winding') === 'no-go', motorSide),
    fact('winding bad at the motor', verdict('winding-motor') === 'no-go', motorSide),
    fact(
      'a measurement undecided',
      measurements.some((id) => verdict(id) === 'undecided'),
      beforeTheWhole,
    ),
    fact('mechanics bad', found === 'stiff' || found === 'brake-drags', beforeTheWhole),
  ];
  return facts.filter(({ holds, except }) => holds && !except.includes(step)).map(({ found: words }) => words);
}
