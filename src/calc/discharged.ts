import { type Finding, finding } from './assessment.ts';
import { intervalOf } from './interval.ts';
import { limitValue } from './limits.ts';
import { isPossible } from './possible-figures.ts';
import type { Reading } from './reading.ts';

export type DischargeCode = 'bus-not-measured' | 'bus-not-discharged' | 'bus-residual-voltage' | 'bus-discharged';

/**
 * Whether the DC bus, as measured just before, lets resistances be read.
 * A bound that does not exclude a dangerous voltage counts as dangerous, and so does what no meter can have shown.
 */
export function judgeDischarge(busVoltage: Reading): Finding<DischargeCode> {
  const readings = ['busVoltage'];
  if (busVoltage.kind === 'missing') {
    return finding('bus-not-measured', 'undecided', { readings, limits: ['touch-voltage'] });
  }
  // The sign only says which lead was where.
  const size = busVoltage.kind === 'value' ? { ...busVoltage, value: Math.abs(busVoltage.value) } : busVoltage;
  const hi = isPossible(size) ? intervalOf(size).hi : Number.POSITIVE_INFINITY;
  const touch = limitValue('touch-voltage');
  const falsifying = limitValue('resistance-residual-voltage');
  // What the meter showed; an over-range has no number, and no number may stand for it.
  const numbers: Record<string, number> = Number.isFinite(hi)
    ? { voltage: hi, touch, falsifying }
    : { touch, falsifying };
  // The regulation begins at the figure itself.
  if (!(hi < touch)) return finding('bus-not-discharged', 'stop', { readings, limits: ['touch-voltage'], numbers });
  const limits = ['resistance-residual-voltage' as const];
  if (!(hi <= falsifying)) return finding('bus-residual-voltage', 'undecided', { readings, limits, numbers });
  return finding('bus-discharged', 'pass', { readings, limits, numbers });
}
