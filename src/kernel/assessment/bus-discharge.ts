import { limitValue } from '../limits.ts';
import { intervalOf } from '../reading/interval.ts';
import type { Reading } from '../reading/reading.ts';
import { type FindingOf, findingMaker, type Nothing } from './assessment.ts';
import { isPossible } from './possible-figures.ts';

export interface BusPayloads {
  'bus-not-measured': Nothing;
  /** `volts`: the highest possible bus voltage; absent if the meter was over-range. Work begins below `touchVolts`. */
  'bus-not-discharged': { volts?: number; touchVolts: number };
  /** `falsifyingVolts`: above it a reading of the stage is falsified. */
  'bus-residual-voltage': { volts: number; falsifyingVolts: number };
  'bus-discharged': Nothing;
}

type BusFinding = FindingOf<BusPayloads>;

const finding = findingMaker<BusPayloads>();

/**
 * Whether the DC bus, as measured just before, lets resistances be read. A bound that does not exclude a dangerous
 * voltage counts as dangerous, and so does an impossible figure.
 */
export function judgeDischarge(busVoltage: Reading): BusFinding {
  const readings = ['busVoltage'];
  if (busVoltage.kind === 'missing') {
    return finding('bus-not-measured', 'undecided', { readings, limits: ['touch-voltage'] });
  }
  // The sign only shows the polarity of the leads.
  const size = busVoltage.kind === 'value' ? { ...busVoltage, value: Math.abs(busVoltage.value) } : busVoltage;
  const hi = isPossible(size) ? intervalOf(size).hi : Number.POSITIVE_INFINITY;
  const touch = limitValue('touch-voltage');
  const falsifying = limitValue('resistance-residual-voltage');
  // The regulation includes the figure itself.
  if (!(hi < touch)) {
    // An over-range has no figure, and none may be substituted.
    const shown = Number.isFinite(hi) ? { volts: hi } : {};
    return finding('bus-not-discharged', 'stop', {
      readings,
      limits: ['touch-voltage'],
      touchVolts: touch,
      ...shown,
    });
  }
  const limits = ['resistance-residual-voltage' as const];
  if (!(hi <= falsifying)) {
    const parts = { readings, limits, volts: hi, falsifyingVolts: falsifying };
    return finding('bus-residual-voltage', 'undecided', parts);
  }
  return finding('bus-discharged', 'pass', { readings, limits });
}
