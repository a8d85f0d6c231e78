import { asFound, bondedExcept, cableFree } from '../../simulator/axis-state.ts';
import { faultedAxis } from '../../simulator/faulted-axis.ts';
import { type Measurement, measure } from '../../simulator/measure.ts';
import { drawAxis } from '../../simulator/parameters.ts';
import { exactInstruments, middle } from '../middle-axis.ts';

export type CableFault = 'bent-open-U' | 'bent-leak-U';

/** Metres from the fixed end: where the cable is damaged, and how far a bend reaches to either side of its middle. */
export const damagedAt = 1.25;
const bendReach = 0.3;

export interface Bent {
  fault: CableFault;
  /** Middle of the bend, in m from the fixed end. */
  bendAt: number;
  overDamage: boolean;
  /** Through two cores each, joined at the motor end, in Ω. */
  loops: Record<'U–V' | 'V–W' | 'W–U', Measurement>;
  /** Insulation tester from U to ground, with the rest bonded. */
  insulation: Measurement;
}

/** The cable alone with one of the moving faults of the practice. */
export const damagedCable = (fault: CableFault) => faultedAxis(fault, drawAxis(middle), middle);

const joinedAtMotor: [string, string][] = [
  ['cable.motor.U', 'cable.motor.V'],
  ['cable.motor.V', 'cable.motor.W'],
];

/** All four readings with the bend fixed at this place; the voltage of the tester is off while it moves. */
export function bentCable(fault: CableFault, bendAt: number): Bent {
  const overDamage = Math.abs(bendAt - damagedAt) <= bendReach;
  const axis = damagedCable(fault);
  const free = { ...cableFree(asFound(20, 20)), bent: overDamage };
  const loop = (one: string, other: string) =>
    measure(
      axis,
      { ...free, jumpers: joinedAtMotor },
      exactInstruments,
      'ohms',
      { red: `cable.drive.${one}`, black: `cable.drive.${other}` },
      middle,
    );
  const leads = { red: 'cable.drive.U', black: 'ground' };
  return {
    fault,
    bendAt,
    overDamage,
    loops: { 'U–V': loop('U', 'V'), 'V–W': loop('V', 'W'), 'W–U': loop('W', 'U') },
    insulation: measure(axis, { ...free, jumpers: bondedExcept('U') }, exactInstruments, 'insulation', leads, middle),
  };
}
