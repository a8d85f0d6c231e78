import { type LimitId, limitValue } from '../../../kernel/limits.ts';
import type { TraceFigures } from './figures.ts';
import type { TripTraceInput } from './input.ts';

/**
 * The largest rise of a phase current, in A, that the winding of a sound motor allows within one sample.
 *
 * The bus across one phase against the two others in parallel drives the current through 1.5 times the inductance of a phase,
 * which is 0.75 of that between two terminals (`inductance`, in H): di/dt = U / (0.75 · L). A motor that turns may add its own
 * voltage: from terminal to terminal it is proportional to the speed, and at the highest speed of the recording about as high as
 * the bus at the most, since the diodes of the output stage would feed the bus otherwise. A phase has 1/√3 of it. `share` of the
 * inductance is left: 1, or what the least favourable case leaves of it (`trace-least-inductance`). Undefined if bus or inductance
 * are unknown. A bus that is stated and not recorded counts with what braking may add to it (`trace-bus-rise`).
 *
 * The same bound holds for the vector of the three currents (amplitudes kept): no state of the output stage makes a voltage vector
 * longer than 2/3 of the bus, the motor's own has 1/√3, and no direction of a rotor has less than the least inductance. A rise
 * from one phase to another makes a vector that is 2/√3 longer than the rise in either.
 */
export function allowedRise(
  figures: TraceFigures,
  { inductance, busVolts }: TripTraceInput,
  share: number,
): number | undefined {
  const bus = highestBus(figures, busVolts);
  if (bus === undefined || inductance === undefined || !figures.inAmperes) return undefined;
  const perPhase = bus * (2 / 3 + speedShare(figures) / Math.sqrt(3));
  return (perPhase / ((inductance / 2) * share)) * figures.sampleSeconds;
}

/**
 * The time between samples, in s, at which no more than `amps` are left where `allowed` are at this one; undefined if there is
 * none, or none shorter.
 */
export function sampleTimeFor(amps: number, allowed: number, sampleSeconds: number): number | undefined {
  const seconds = (sampleSeconds * amps) / allowed;
  return seconds > 0 && seconds < sampleSeconds ? seconds : undefined;
}

/** The rise that the bus alone drives through the stated inductance of a motor at rest, in A. */
export function restingRise(figures: TraceFigures, { inductance, busVolts }: TripTraceInput): number | undefined {
  const bus = busOf(figures, busVolts);
  if (bus === undefined || inductance === undefined || !figures.inAmperes) return undefined;
  return ((bus * (2 / 3)) / (inductance / 2)) * figures.sampleSeconds;
}

/** What is left of the inductance in the least favourable case: more if the least direction of the rotor was stated. */
const leastLimit = ({ inductanceIs }: Pick<TripTraceInput, 'inductanceIs'>): LimitId =>
  inductanceIs === 'smaller' ? 'trace-least-of-smaller' : 'trace-least-inductance';
/** The limits that the largest rise rests on. */
export const riseLimits = (figures: TraceFigures, input: Pick<TripTraceInput, 'inductanceIs'>): LimitId[] => [
  leastLimit(input),
  ...(mayBeHigher(figures) ? (['trace-bus-rise'] as const) : []),
];

export const leastShare = (input: Pick<TripTraceInput, 'inductanceIs'>): number => limitValue(leastLimit(input));

/** The highest bus voltage shortly before the trip: of the file, or as stated. */
export function busOf({ bus, busInVolts }: TraceFigures, stated: number | undefined): number | undefined {
  if (bus !== undefined && busInVolts) return Math.max(bus.most, bus.before);
  return stated;
}

/** A motor that slows down, or is driven, raises a bus that was only stated as it usually is. */
const mayBeHigher = ({ bus, busInVolts, motion }: TraceFigures): boolean =>
  (bus === undefined || !busInVolts) && motion?.speedBefore !== 0;

function highestBus(figures: TraceFigures, stated: number | undefined): number | undefined {
  const bus = busOf(figures, stated);
  return bus !== undefined && mayBeHigher(figures) ? bus * (1 + limitValue('trace-bus-rise') / 100) : bus;
}

/** Without a recorded speed the motor may have turned at its highest. */
function speedShare({ motion }: TraceFigures): number {
  if (motion === undefined) return 1;
  return motion.speedBefore === 0 ? 0 : Math.min(1, motion.speedRecent / motion.speedBefore);
}
