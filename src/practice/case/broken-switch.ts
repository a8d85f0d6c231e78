import { between, type Random } from '../../kernel/random.ts';
import type { LeakPath } from '../simulator/axis-defects.ts';
import type { AxisState } from '../simulator/axis-state.ts';
import type { HookUp } from '../simulator/measure.ts';
import { drivePhase } from './unsafe-acts.ts';

/** Resistance of a switch that a tester's voltage has broken down, in ohms: typical, project judgement. */
const brokenDownOhms: [number, number] = [2e3, 20e3];

/** The leak of the switch that a tester's voltage breaks down at these leads; undefined if it does not reach the drive. */
export function brokenDown(state: AxisState, leads: HookUp, random: Random): LeakPath | undefined {
  const phase = drivePhase(state, leads);
  return phase && { a: 'DC+', b: `drive.${phase}`, ohms: between(random, ...brokenDownOhms) };
}
