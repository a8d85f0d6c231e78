import { type Finding, finding } from './assessment.ts';
import { judgeDewPoint } from './insulation-air.ts';
import type { InsulationCode, InsulationInput } from './insulation-input.ts';
import { referenceOf, type Target, targetOf } from './insulation-target.ts';
import { type Interval, intervalOf, times } from './interval.ts';
import { type Phase, phases } from './phases.ts';
import { limitsOfMethod, validityOf } from './temperature-correction.ts';
import { factorAt, judgeWinding, severityOf } from './winding-insulation.ts';

/** Judges U, V and W to PE against the limit of the occasion, with temperature and dew point. */
export function judgePhases(input: InsulationInput): Finding<InsulationCode>[] {
  const found: Finding<InsulationCode>[] = [];
  const absent = phases.filter((phase) => input.readings[phase].kind === 'missing');
  if (absent.length > 0) found.push(finding('phase-missing', 'undecided', { readings: [...absent] }));

  const dew = judgeDewPoint(input);
  found.push(...dew);
  // A wet winding is dried before it is judged: it would be condemned for the weather.
  if (dew.some(({ code }) => code === 'winding-at-dew-point')) return found;

  const factor = factorAt(input.windingTemperature, input.correction, referenceOf(input.occasion));
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

function judgePhase(input: InsulationInput, phase: Phase, target: Target, factor: Interval): Finding<InsulationCode> {
  const { judgement, dissenting } = judgeWinding(input.readings[phase], {
    occasion: input.occasion,
    limit: target.ohms,
    reference: target.reference,
    temperature: input.windingTemperature,
    correction: input.correction,
    instrument: input.instrument,
  });
  const limits = [...target.limits, ...[input.correction, ...dissenting].flatMap((method) => limitsOfMethod[method])];
  const numbers = { limit: target.ohms, reference: target.reference, ...shownNumbers(input, phase, factor) };
  const names = { occasion: input.occasion, method: input.correction, kind: input.readings[phase].kind };
  const methods = dissenting.length > 0 ? { methods: dissenting.join(' ') } : {};
  const parts = { readings: [phase], limits, numbers, names: { ...names, ...methods } };
  return finding(`phase-${judgement}`, severityOf(judgement), parts);
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
