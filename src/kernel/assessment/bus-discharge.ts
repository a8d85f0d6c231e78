import { limitValue } from '../limits.ts';
import { intervalOf, intervalShown } from '../reading/interval.ts';
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
  // `0 kV` can be hundreds of volts.
  const shown = isPossible(size) ? intervalShown(size).hi : Number.POSITIVE_INFINITY;
  const touch = limitValue('touch-voltage');
  const falsifying = limitValue('resistance-residual-voltage');
  // The regulation includes the figure itself.
  if (!(shown < touch)) {
    // An over-range has no figure, and none may be substituted.
    const highest = hi < touch ? shown : hi;
    const volts = Number.isFinite(highest) ? { volts: highest } : {};
    return finding('bus-not-discharged', 'stop', {
      readings,
      limits: ['touch-voltage'],
      touchVolts: touch,
      ...volts,
    });
  }
  const limits = ['resistance-residual-voltage' as const];
  // A bare 0 is how people write 0.00; in kilovolts it is not.
  const residual = size.kind === 'value' && (size.resolution ?? 0) > 1 ? shown : hi;
  if (!(residual <= falsifying)) {
    const parts = { readings, limits, volts: residual, falsifyingVolts: falsifying };
    return finding('bus-residual-voltage', 'undecided', parts);
  }
  return finding('bus-discharged', 'pass', { readings, limits });
}
