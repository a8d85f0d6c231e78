import { type Phase, type Phases, phases } from '../../../kernel/electrics/phases.ts';
import { type AxisState, asFound, bondedExcept, cableFree } from '../../simulator/axis-state.ts';
import { type Measurement, measure } from '../../simulator/measure.ts';
import { exactInstruments, middle, middleAxis } from '../middle-axis.ts';

/** What the other cores, PE and screen are joined to while one core is tested. */
export type Ends = 'free' | 'bonded';

/** Insulation tester from each core to ground, on the cable alone. */
export type CoreReadings = Phases<Measurement>;

/** A leak of `ohms` from core U to core V, in the middle of the cable; Infinity is none. */
export function leakyCable(ohms: number) {
  const leaks = Number.isFinite(ohms) ? [{ a: 'cable.U', b: 'cable.V', ohms }] : [];
  return { ...middleAxis(), leaks };
}

export function cableAlone(ends: Ends, tested: Phase): AxisState {
  const free = cableFree(asFound(20, 20));
  return ends === 'free' ? free : { ...free, jumpers: bondedExcept(tested) };
}

export function coreReadings(ends: Ends, ohms: number): CoreReadings {
  const axis = leakyCable(ohms);
  const reading = (phase: Phase): Measurement => {
    const leads = { red: `cable.drive.${phase}`, black: 'ground' };
    return measure(axis, cableAlone(ends, phase), exactInstruments, 'insulation', leads, middle);
  };
  return Object.fromEntries(phases.map((phase) => [phase, reading(phase)])) as CoreReadings;
}
