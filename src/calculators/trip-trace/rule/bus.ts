import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { limitValue } from '../../../kernel/limits.ts';
import type { TraceFigures } from './figures.ts';
import type { TripTraceFinding, TripTracePayloads } from './input.ts';

const finding = findingMaker<TripTracePayloads>();

/**
 * Bus voltage at the trip. A motor that is slowed down feeds the bus, and its energy ½ · C · U² rises until the braking circuit
 * takes it: a rise while the speed falls speaks for that circuit. A fall beyond what acceleration takes speaks for the supply.
 */
export function busVoltage({ bus, busInVolts: inVolts }: TraceFigures): TripTraceFinding {
  if (bus === undefined || !(bus.before > 0)) return finding('bus-nothing', 'note', { why: 'no-column' });
  const { before, least, most, slowing } = bus;
  const rise = 100 * (most / before - 1);
  const fall = 100 * (1 - least / before);
  if (rise > limitValue('trace-bus-rise') && slowing !== false) {
    return finding('bus-braking', 'undecided', { limits: ['trace-bus-rise'], before, most, percent: rise, inVolts });
  }
  if (fall > limitValue('trace-bus-dip')) {
    return finding('bus-supply', 'undecided', { limits: ['trace-bus-dip'], before, least, percent: fall, inVolts });
  }
  const steady = Math.max(rise, fall) < limitValue('trace-bus-dip') / 2;
  const limits = ['trace-bus-rise', 'trace-bus-dip'] as const;
  return steady
    ? finding('bus-against', 'note', { limits: [...limits], percent: Math.max(rise, fall) })
    : finding('bus-nothing', 'note', { limits: [...limits], why: 'between' });
}
