import type { Damage, InspectedPart, Part, Symptom } from '../../kernel/vocabulary.ts';

/** An extra path that should not be there, drawn from this range of ohms. */
export interface Leak {
  a: string;
  b: string;
  ohms: [number, number];
}

/** What must be connected for the fault to trip the drive; `drive` needs nothing outside it. */
export type Circuit = 'drive' | 'motor-cable' | 'motor' | 'feedback-cable' | 'feedback-device';

/**
 * A fault as data. `bad` is the truth: every part that has to be replaced or mended, none for a nuisance trip and for
 * what only needs drying. `hidden` marks a fault that the usual measurements can't tell, with the test that would.
 */
export interface Fault {
  id: string;
  label: string;
  bad: Part[];
  leaks: Leak[];
  /** Conductors that are interrupted, as `cable.PE`. */
  broken: string[];
  /** Share of the turns of a winding that are shorted, by phase: 0 to 1. */
  shortedShare: Partial<Record<string, [number, number]>>;
  /** What is left of the motor's insulation. */
  insulationFactor: [number, number];
  /** One of these is drawn as the moment of the trip. */
  moments: Symptom[];
  circuit: Circuit;
  /** How likely a retry that reaches the moment trips again; 1 if it trips every time. */
  repeats: number;
  seen: { part: InspectedPart; damage: Damage; chance: number }[];
  hidden?: 'surge-test' | 'phase-to-phase-test' | 'drive-load-test' | 'dry-and-repeat' | 'watch';
}
