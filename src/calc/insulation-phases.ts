import { type Finding, finding, type Severity } from './assessment.ts';
import { judgeDewPoint } from './insulation-air.ts';
import type { InsulationCode, InsulationInput } from './insulation-input.ts';
import { judgeAfterTrip, judgeRoutine, type PointJudgement } from './insulation-point.ts';
import { factorOf, type Target, targetOf } from './insulation-target.ts';
import { type Interval, intervalOf, times } from './interval.ts';
import { type Phase, phases } from './phases.ts';
import {
  type CorrectionMethod,
  correctionFactor,
  correctionMethods,
  limitsOfMethod,
  validityOf,
} from './temperature-correction.ts';

/** Judges U, V and W to PE against the limit of the occasion, with temperature and dew point. */
export function judgePhases(input: InsulationInput): Finding<InsulationCode>[] {
  const found: Finding<InsulationCode>[] = [];
  const absent = phases.filter((phase) => input.readings[phase].kind === 'missing');
  if (absent.length > 0) found.push(finding('phase-missing', 'undecided', { readings: [...absent] }));

  const dew = judgeDewPoint(input);
  found.push(...dew);
  // A wet winding is dried before it is judged: it would be condemned for the weather.
  if (dew.some(({ code }) => code === 'winding-at-dew-point')) return found;

  const factor = factorOf(input);
  if (input.windingTemperature.kind !== 'value') {
    found.push(finding('temperature-missing', 'undecided', { readings: ['windingTemperature'] }));
  }
  if (factor === undefined) {
    const { from, to } = validityOf(input.correction);
    const limits = limitsOfMethod[input.correction];
    const names = { method: input.correction };
    return [...found, finding('temperature-out-of-validity', 'undecided', { limits, numbers: { from, to }, names })];
  }
  const target = targetOf(input);
  // Without the rated voltage the minimum of an old winding is not known; that lack has its own finding.
  if (target === undefined) return found;
  for (const phase of phases) {
    if (input.readings[phase].kind !== 'missing') found.push(judgePhase(input, phase, target, factor));
  }
  return found;
}

function judgementOf(input: InsulationInput, phase: Phase, target: Target, factor: Interval): PointJudgement {
  const reading = input.readings[phase];
  const judge = input.occasion === 'after-trip' ? judgeAfterTrip : judgeRoutine;
  return judge(reading, intervalOf(reading, input.instrument), target.ohms, factor);
}

function severityOf(judgement: PointJudgement): Severity {
  if (judgement === 'good') return 'pass';
  return judgement === 'bad' ? 'fail' : 'undecided';
}

function judgePhase(input: InsulationInput, phase: Phase, target: Target, factor: Interval): Finding<InsulationCode> {
  const judgement = judgementOf(input, phase, target, factor);
  const dissenting = severityOf(judgement) === 'undecided' ? [] : dissentingMethods(input, phase, target, judgement);
  const limits = [...target.limits, ...[input.correction, ...dissenting].flatMap((method) => limitsOfMethod[method])];
  const numbers = { limit: target.ohms, reference: target.reference, ...shownNumbers(input, phase, factor) };
  const names = { occasion: input.occasion, method: input.correction, kind: input.readings[phase].kind };
  const parts = { readings: [phase], limits, numbers };
  if (dissenting.length === 0) return finding(`phase-${judgement}`, severityOf(judgement), { ...parts, names });
  return finding('phase-methods-differ', 'undecided', { ...parts, names: { ...names, methods: dissenting.join(' ') } });
}

/** Raw value (or bound), factor and corrected value, as far as they are single finite numbers. */
function shownNumbers(input: InsulationInput, phase: Phase, factor: Interval): Record<string, number> {
  const reading = input.readings[phase];
  const interval = intervalOf(reading);
  const raw = reading.kind === 'over' ? interval.lo : interval.hi;
  if (!Number.isFinite(raw)) return {};
  if (factor.lo !== factor.hi) return { raw };
  const corrected = times({ lo: raw, hi: raw }, factor).lo;
  return { raw, factor: factor.lo, corrected };
}

/**
 * The other methods valid at this temperature that would judge otherwise. All are rules of thumb for unlike
 * insulations, so a verdict that depends on which one was chosen is none.
 */
function dissentingMethods(
  input: InsulationInput,
  phase: Phase,
  target: Target,
  judgement: PointJudgement,
): CorrectionMethod[] {
  const winding = input.windingTemperature;
  if (winding.kind !== 'value') return [];
  return correctionMethods.filter((method) => {
    const factor = correctionFactor(method, winding.value, target.reference);
    if (factor === undefined) return false;
    return severityOf(judgementOf(input, phase, target, { lo: factor, hi: factor })) !== severityOf(judgement);
  });
}
