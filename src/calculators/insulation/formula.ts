import type { CorrectionMethod } from '../../kernel/electrics/correction-validity.ts';
import { correctionFactor } from '../../kernel/electrics/temperature-correction.ts';
import { limitConstant, limitValue } from '../../kernel/limits.ts';
import { formatRounded } from '../../kernel/reading/format-reading.ts';
import type { InsulationInput } from './rule/input.ts';

/** The formula of each method, with T₀ the temperature that is corrected to. */
const formulas: Record<CorrectionMethod, () => string> = {
  halving: () => `K = 0.5^((T₀ − T) / ${formatRounded(limitValue('halving-rule'), '°C')})`,
  thermosetting: () => {
    const join = formatRounded(limitValue('reference-temperature-routine'), '°C');
    const [cool, hot] = [limitConstant('thermosetting-cool', 'k'), limitConstant('thermosetting-hot', 'k')];
    return `K = f(T) / f(T₀), f(T) = exp(−k / (T + 273)) joined at ${join}, k = ${cool} below it and ${hot} above`;
  },
  table: () => 'K = factor at T / factor at T₀, both from the table, logarithm interpolated',
};

/** The correction with its numbers; empty without a temperature at which the method is valid. */
export function formulaText({ occasion, correction, windingTemperature }: InsulationInput): string {
  if (windingTemperature.kind !== 'value') return '';
  const id = occasion === 'routine' ? 'reference-temperature-routine' : 'reference-temperature-after-trip';
  const reference = limitValue(id);
  const factor = correctionFactor(correction, windingTemperature.value, reference);
  if (factor === undefined) return '';
  const [at, to] = [formatRounded(windingTemperature.value, '°C'), formatRounded(reference, '°C')];
  return `${formulas[correction]()}. With T = ${at} and T₀ = ${to}: corrected = ${Number(factor.toPrecision(3))} × reading.`;
}
