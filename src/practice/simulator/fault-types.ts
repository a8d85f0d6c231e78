import type { Damage, InspectedPart, Part, Symptom } from '../../kernel/vocabulary.ts';

/** An extra path that should not be there, drawn from this range of ohms. */
export interface Leak {
  a: string;
  b: string;
  ohms: [number, number];
}

/** What must be connected for the fault to trip the drive; `drive`: nothing outside the drive. */
export type Circuit = 'drive' | 'motor-cable' | 'motor' | 'feedback-cable' | 'feedback-device';

/**
 * A fault as data. `bad`: every part that has to be replaced or mended; empty for a nuisance trip and for parts that only
 * need drying. `hidden`: the usual measurements can't show the fault; the test that would.
 */
export interface Fault {
  id: string;
  label: string;
  bad: Part[];
  leaks: Leak[];
  /** Interrupted conductors, such as `cable.PE`. */
  broken: string[];
  /** Share of the turns of a winding that are shorted, by phase: 0 to 1. */
  shortedShare: Partial<Record<string, [number, number]>>;
  /** Factor on the motor's insulation resistance. */
  insulationFactor: [number, number];
  /** One of these is drawn as the moment of the trip. */
  moments: Symptom[];
  circuit: Circuit;
  /** Probability, 0 to 1, that a retry that reaches the moment trips again. */
  repeats: number;
  seen: { part: InspectedPart; damage: Damage; chance: number }[];
  hidden?: 'surge-test' | 'phase-to-phase-test' | 'drive-load-test' | 'dry-and-repeat' | 'watch';
}
