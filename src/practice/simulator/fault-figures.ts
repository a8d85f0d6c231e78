import type { Phase } from '../../kernel/electrics/phases.ts';
import type { Damage, InspectedPart, Symptom } from '../../kernel/vocabulary.ts';
import type { Fault } from './fault-types.ts';

/*
 * All figures are typical, project judgement: a metal short has from well below an ohm to a few ohms, a burnt switch some
 * kilohms, a wet or carbonised path kilohms to tens of megohms.
 */
export const metal: [number, number] = [0.05, 3];
export const carbon: [number, number] = [2e3, 30e3];
/** A short for insulation tester and multimeter alike. */
export const dead: [number, number] = [1, 50e3];
/** A multimeter reads it as open or as a harmless figure; an insulation tester fails it. */
export const hidingFromMultimeter: [number, number] = [1e6, 40e6];
/** A loose crimp or terminal, a burnt pin. */
export const badContact: [number, number] = [0.05, 2];
/** A core that is interrupted. */
export const open: [number, number] = [1e9, 1e10];

/** A fault that does nothing; each fault changes what it needs. */
export const noFault = {
  leaks: [],
  broken: [],
  shortedShare: {},
  insulationFactor: [1, 1] as [number, number],
  circuit: 'drive' as const,
  every: 1,
  seen: [],
} satisfies Partial<Fault>;

export const noDamage: Record<InspectedPart, Damage> = {
  drive: 'nothing',
  motor: 'nothing',
  motorCable: 'nothing',
  feedbackCable: 'nothing',
};

/** One shorted transistor draws no current before its partner switches: with the control off it can't trip. */
export const atEnable: Symptom[] = ['on-enable'];
export const atOnce: Symptom[] = ['control-off', 'on-enable'];
export const underLoad: Symptom[] = ['on-enable', 'on-acceleration', 'when-hot'];

export const phasePairs: [Phase, Phase][] = [
  ['U', 'V'],
  ['V', 'W'],
  ['W', 'U'],
];
