import { findingMaker } from '../../../kernel/assessment/assessment.ts';
import { limitValue } from '../../../kernel/limits.ts';
import type { BusFigures, TraceFigures } from './figures.ts';
import type { TripTraceFinding, TripTraceInput, TripTracePayloads } from './input.ts';

const finding = findingMaker<TripTracePayloads>();

/** Largest rise and fall of the bus before the trip, in per cent. */
const moves = ({ before, least, most, leastEarlier }: BusFigures) =>
  // Braking raises the bus, and what it was raised by is no fall afterwards.
  [100 * (most / before - 1), 100 * (1 - least / Math.min(before, leastEarlier))] as const;

/** The bus was recorded, and hardly moved. */
export const busIsSteady = ({ bus }: TraceFigures): boolean =>
  bus !== undefined && bus.before > 0 && 100 * bus.moved < limitValue('trace-bus-steady');

/**
 * Bus voltage at the trip. A motor that is slowed down feeds the bus, and its energy ½ · C · U² rises until the braking circuit
 * takes it and holds the bus: a rise while the speed falls that nothing holds speaks for that circuit. A fall beyond what acceleration takes speaks for the supply.
 */
export function busVoltage(figures: TraceFigures, input: TripTraceInput): TripTraceFinding {
  const { bus, busInVolts: inVolts } = figures;
  if (bus === undefined || !(bus.before > 0)) return finding('bus-nothing', 'note', { why: 'no-column' });
  const { before, least, most, slowing, rising } = bus;
  const [rise, fall] = moves(bus);
  if (rise > limitValue('trace-bus-rise') && slowing !== false && rising) {
    // Without a speed nothing tells whether the motor fed the bus by slowing down, or was driven.
    if (slowing === undefined) return finding('bus-nothing', 'note', { why: 'no-speed' });
    return finding('bus-braking', 'undecided', { limits: ['trace-bus-rise'], before, most, percent: rise, inVolts });
  }
  if (fall > limitValue('trace-bus-dip')) {
    // A high current pulls the bus down itself: only a fall that comes before it is a cause.
    const { inAmperes } = figures;
    const first =
      input.tripAmps === undefined || !inAmperes ? undefined : (bus.currentBeforeFall ?? 0) / input.tripAmps;
    if (first === undefined) return finding('bus-nothing', 'note', { why: 'level-unknown' });
    if (first > limitValue('trace-ordinary') / 100) return finding('bus-nothing', 'note', { why: 'current-first' });
    return finding('bus-supply', 'undecided', { limits: ['trace-bus-dip'], before, least, percent: fall, inVolts });
  }
  const steady = busIsSteady(figures);
  const limits = ['trace-bus-rise', 'trace-bus-dip', 'trace-bus-steady'] as const;
  if (steady && figures.tripFrom === 'file-end') return finding('bus-nothing', 'note', { why: 'trip-not-seen' });
  return steady
    ? finding('bus-against', 'note', { limits: [...limits], percent: 100 * bus.moved })
    : finding('bus-nothing', 'note', { limits: [...limits], why: 'between' });
}
