import { type CorrectionMethod, correctionMethods } from '../electrics/correction-validity.ts';
import { correctionFactor, factorIfUnknown } from '../electrics/temperature-correction.ts';
import { limitRange } from '../limits.ts';
import { type Instrument, type Interval, intervalOf } from '../reading/interval.ts';
import type { Reading } from '../reading/reading.ts';
import type { Severity } from './assessment.ts';
import { judgeAfterTrip, judgeRoutine, type PointJudgement } from './judge-insulation.ts';

/** After a trip something has happened: the strict point on the reading. Routine: published minima, corrected. */
export type Occasion = 'after-trip' | 'routine';

/** One reading of a winding compared with its limit. `methods-differ`: another valid method would judge otherwise. */
export type WindingJudgement = PointJudgement | 'methods-differ';

/** The conditions of a judgement: `limit` in Ω at `reference` °C, the temperature of the winding in °C. */
interface WindingConditions {
  occasion: Occasion;
  limit: number;
  reference: number;
  temperature: Reading;
  correction: CorrectionMethod;
  instrument?: Instrument | undefined;
}

/**
 * The one rule by which a reading of a winding to ground is good or bad, for the insulation as a whole and for cable
 * against motor. Without a temperature nothing is good, and bad only what is bad at every usual one; outside the
 * method's validity nothing is judged. All methods are rules of thumb for different insulations, so if another method
 * that is valid at this temperature gives another judgement, nothing is decided; `dissenting` names those methods.
 */
export function judgeWinding(
  reading: Reading,
  conditions: WindingConditions,
): { judgement: WindingJudgement; dissenting: CorrectionMethod[] } {
  const { temperature, correction, reference } = conditions;
  const factor = factorAt(temperature, correction, reference);
  if (factor === undefined) return { judgement: 'temperature-needed', dissenting: [] };
  const judgement = judgeWith(reading, conditions, factor);
  if (temperature.kind !== 'value') {
    return { judgement: judgement === 'good' ? 'temperature-needed' : judgement, dissenting: [] };
  }
  const severity = severityOf(judgement);
  const dissenting = correctionMethods.filter((method) => {
    const other = correctionFactor(method, temperature.value, reference);
    return other !== undefined && severityOf(judgeWith(reading, conditions, { lo: other, hi: other })) !== severity;
  });
  if (severity === 'undecided' || dissenting.length === 0) return { judgement, dissenting: [] };
  return { judgement: 'methods-differ', dissenting };
}

export function severityOf(judgement: WindingJudgement): Severity {
  if (judgement === 'good') return 'pass';
  return judgement === 'bad' ? 'fail' : 'undecided';
}

/**
 * Factor to `reference` °C: an exact one if the temperature is known, else the range of possible ones; undefined
 * outside the method's validity.
 */
export function factorAt(temperature: Reading, method: CorrectionMethod, reference: number): Interval | undefined {
  if (temperature.kind !== 'value') return factorIfUnknown(method, limitRange('motor-temperature-unknown'), reference);
  const factor = correctionFactor(method, temperature.value, reference);
  return factor === undefined ? undefined : { lo: factor, hi: factor };
}

function judgeWith(reading: Reading, { occasion, limit, instrument }: WindingConditions, factor: Interval) {
  const judge = occasion === 'after-trip' ? judgeAfterTrip : judgeRoutine;
  return judge(reading, intervalOf(reading, instrument), limit, factor);
}
