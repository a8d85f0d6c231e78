import type { Cause, Damage, InspectedPart, Part, Symptom } from '../../kernel/vocabulary.ts';
import type { LeakPath, SeriesOhms } from './axis-defects.ts';

/** A figure that is drawn, uniform in the logarithm, from a range. */
type Drawn<Defect extends { ohms: number }> = Omit<Defect, 'ohms'> & { ohms: [number, number] };

/** An extra path that should not be there. */
export type Leak = Drawn<LeakPath>;

/**
 * What must be connected for the fault to trip the drive. `drive` and `supply`: nothing outside the drive; the supply is
 * on whenever the drive has power. `position`: motor and feedback, since the drive needs both to misjudge the rotor.
 * `idle-cores`: brake and sensor at the drive. `neighbour-leads`, `neighbour-feedback`: of another axis of the same drive.
 */
export type Circuit =
  | 'drive'
  | 'supply'
  | 'motor-cable'
  | 'motor'
  | 'position'
  | 'feedback-cable'
  | 'feedback-device'
  | 'idle-cores'
  | 'braking-resistor'
  | 'neighbour-leads'
  | 'neighbour-feedback';

/** How the axis feels when it is moved by hand, or what a look at its brake and guides shows. */
export type Feel = 'free' | 'stiff' | 'brake-drags';

/**
 * A fault as data. `bad`: every part that has to be replaced or mended; empty for a nuisance trip, for parts that only
 * need drying, and for what is no part of the axis (load, brake, parameters, supply, another axis). `hidden`: the usual
 * measurements can't show the fault; the test that would.
 */
export interface Fault {
  id: string;
  label: string;
  /** Family of the cause: what a decision that proves no part must still list as possible. */
  cause: Cause;
  bad: Part[];
  leaks: Leak[];
  /** Interrupted conductors, such as `cable.PE`. */
  broken: string[];
  /** Bad contacts, and cores that are open only under a condition. */
  contacts?: Drawn<SeriesOhms>[];
  /** Share of the turns of a winding that are shorted, by phase: 0 to 1. */
  shortedShare: Partial<Record<string, [number, number]>>;
  /** Factor on the motor's insulation resistance. */
  insulationFactor: [number, number];
  /** One of these is drawn as the moment of the trip; one that is named twice comes twice as often. */
  moments: Symptom[];
  circuit: Circuit;
  /** Probability, 0 to 1, that a try that reaches the moment trips again. */
  every: number;
  seen: { part: InspectedPart; damage: Damage; chance: number }[];
  /** How the axis feels by hand, and the probability, 0 to 1, that a hand at rest feels it. */
  feels?: { feel: Feel; chance: number };
  /** Probability, 0 to 1, that a part or a parameter was changed before the first trip. */
  changed?: number;
  hidden?: 'surge-test' | 'phase-to-phase-test' | 'drive-load-test' | 'dry-and-repeat' | 'watch';
}
