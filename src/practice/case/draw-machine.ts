import { type FaultedAxis, faultedAxis } from '../simulator/faulted-axis.ts';
import { drawInstruments } from '../simulator/instruments.ts';
import { drawAxis } from '../simulator/parameters.ts';
import { between, seeded } from '../simulator/random.ts';
import { Machine } from './machine.ts';

/**
 * A machine with this fault, all figures drawn from `seed`. `windingCelsius` is drawn from 5 to 80 °C if it is not given;
 * the air has 10 to 35 °C and is never warmer than the winding. Throws for an unknown fault.
 */
export function drawMachine(fault: string, seed: number, windingCelsius?: number): Machine {
  const random = seeded(seed);
  const axis: FaultedAxis = faultedAxis(fault, drawAxis(random), random);
  const drawn = between(random, 5, 80);
  const winding = windingCelsius ?? drawn;
  const air = Math.min(winding, between(random, 10, 35));
  return new Machine(axis, drawInstruments(random), winding, air, random);
}
