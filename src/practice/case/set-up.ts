import { type FaultedAxis, faultedAxis } from '../simulator/faulted-axis.ts';
import { drawInstruments } from '../simulator/instruments.ts';
import { drawAxis } from '../simulator/parameters.ts';
import { between, seeded } from '../simulator/random.ts';
import { World } from './world.ts';

/**
 * A machine with this fault, all its figures drawn from `seed`. Winding from 5 to 80 °C unless it is given; the air as in
 * a workshop, and no warmer than a cold winding. Throws for an unknown fault.
 */
export function setUp(fault: string, seed: number, windingCelsius?: number): World {
  const random = seeded(seed);
  const axis: FaultedAxis = faultedAxis(fault, drawAxis(random), random);
  const drawn = between(random, 5, 80);
  const winding = windingCelsius ?? drawn;
  const air = Math.min(winding, between(random, 10, 35));
  return new World(axis, drawInstruments(random), winding, air, random);
}
