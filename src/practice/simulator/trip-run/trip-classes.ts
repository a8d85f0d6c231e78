import { between, betweenDecades, oneOf, type Random } from '../../../kernel/random.ts';
import type { AxisInMotion } from './axis-in-motion.ts';
import type { SensorFault } from './current-sensors.ts';

/** Why the axis trips in a run. */
export const tripClasses = [
  'short-between-phases',
  'short-to-earth',
  'leak-to-earth',
  'inside-drive',
  'current-sensor',
  'encoder',
  'commutation',
  'open-core',
  'load',
  'tuning',
  'supply-braking',
  'shorted-turns',
] as const;

export type TripClass = (typeof tripClasses)[number];

/** What goes wrong, from `begins` (s) on; what is not named is sound. */
export interface Disturbance {
  begins: number;
  /** A path between two phases, or from a phase to earth: resistance in Ω, inductance in H. */
  path?: { from: 0 | 1 | 2; to: 0 | 1 | 2 | 'earth'; resistance: number; inductance: number };
  /** The drive trips by itself, whatever flows. */
  tripsItself?: true;
  sensor?: SensorFault;
  /** The encoder stands still, loses angle steadily (rad/s electrical), or jumps (rad electrical). */
  encoder?: { kind: 'frozen' } | { kind: 'slips'; rate: number } | { kind: 'jumps'; angle: number };
  /** The commutation is off by this electrical angle from the start. */
  commutationOffset?: number;
  openPhase?: 0 | 1 | 2;
  /** Load torque as a multiple of the torque at peak current, and the time in which it comes. */
  load?: { torque: number; seconds: number };
  /** Gains of current and speed loop are this many times too high. */
  gains?: { current: number; speed: number };
  /** The supply falls to this share for a time, or the braking circuit is without effect. */
  supply?: { share: number; seconds: number } | 'no-braking';
  /** Share of the turns of one phase that are shorted. */
  shortedTurns?: { phase: 0 | 1 | 2; share: number };
}

/** The moment at which a run gets disturbed: at rest, speeding up, travelling, or slowing down. */
const somewhere = (random: Random) => between(random, 0.03, 0.5);

/** A current loop that samples at this rate is unstable from a gain on that moves the current by twice its error in one step. */
const unstableGain = (random: Random, { currentBandwidth, controlSeconds }: AxisInMotion) =>
  between(random, 2, 4) / (0.5 * currentBandwidth * controlSeconds);

/** Draws one way in which a class comes about. */
export function drawDisturbance(random: Random, kind: TripClass, axis: AxisInMotion): Disturbance {
  const begins = somewhere(random);
  const from = oneOf(random, [0, 1, 2] as const);
  const next = ((from + 1) % 3) as 0 | 1 | 2;
  const cable = between(random, 5e-6, 40e-6);
  switch (kind) {
    case 'short-between-phases':
      return { begins, path: { from, to: next, resistance: between(random, 0.05, 1), inductance: cable } };
    case 'short-to-earth':
      return { begins, path: { from, to: 'earth', resistance: between(random, 0.2, 2), inductance: cable * 2 } };
    case 'leak-to-earth': {
      const amperes = axis.peakCurrent * between(random, 0.3, 1.3);
      return { begins, path: { from, to: 'earth', resistance: axis.bus / 2 / amperes, inductance: cable } };
    }
    case 'inside-drive':
      return { begins, tripsItself: true };
    case 'current-sensor': {
      const phase = oneOf(
        random,
        ([0, 1, 2] as const).filter((one) => one !== axis.sensors.computed),
      );
      const sensors = [
        { phase, gain: between(random, 0.3, 0.7), offset: 0 },
        { phase, gain: 1, offset: axis.peakCurrent * between(random, 0.3, 0.9) },
        { phase, gain: 0, offset: 0 },
      ];
      return { begins, sensor: oneOf(random, sensors) };
    }
    case 'encoder': {
      const kinds = [
        { kind: 'frozen' as const },
        { kind: 'slips' as const, rate: oneOf(random, [-1, 1]) * betweenDecades(random, 100, 800) },
        { kind: 'jumps' as const, angle: oneOf(random, [-1, 1]) * between(random, 1.2, 3) },
      ];
      return { begins, encoder: oneOf(random, kinds) };
    }
    case 'commutation':
      return { begins: 0, commutationOffset: oneOf(random, [-1, 1]) * between(random, 1.2, 2.6) };
    case 'open-core':
      return { begins, openPhase: from };
    case 'load':
      return {
        begins,
        load: { torque: between(random, 1.2, 6), seconds: betweenDecades(random, 0.002, 0.1) },
      };
    case 'tuning':
      return {
        begins: 0,
        gains: oneOf(random, [
          { current: unstableGain(random, axis), speed: 1 },
          { current: 1, speed: between(random, 8, 20) },
        ]),
      };
    case 'supply-braking': {
      const share = between(random, 0.3, 0.6);
      return oneOf(random, [
        { begins, supply: { share, seconds: between(random, 0.02, 0.08) } },
        { begins: 0, supply: 'no-braking' as const },
      ]);
    }
    case 'shorted-turns':
      return {
        begins,
        tripsItself: true,
        shortedTurns: { phase: from, share: between(random, 0.05, 0.4) },
      };
  }
}
