import type { AxisState } from './axis-state.ts';
import { type Element, resistor, source } from './network.ts';
import type { AxisParameters } from './parameters.ts';
import { typical } from './typical.ts';

/** The control releases the brake with the enable, even if no motor holds the axis. */
function brakeReleased({ supply, enabled }: AxisState): boolean {
  return supply && enabled;
}

/** The holding brake: a coil between `brake.plus` and `brake.minus`, released by power, applied by springs. */
export function brakeNetwork(axis: AxisParameters, state: AxisState): Element[] {
  const { brakeVolts, brakeSupplyOhms, brakeInsulationOhms } = typical;
  return [
    resistor('brake.plus', 'brake.minus', axis.brakeOhms),
    resistor('brake.minus', 'motor.frame', brakeInsulationOhms),
    ...(brakeReleased(state) ? [source('brake.plus', 'brake.minus', brakeVolts, brakeSupplyOhms)] : []),
  ];
}

/**
 * Whether the load drops: it can fall, its brake is open, nothing supports it, and no motor holds it. A motor holds it
 * only while all three phases are on at both ends and the drive has not tripped.
 */
export function axisFalls({ gravityLoaded }: AxisParameters, state: AxisState, tripped: boolean): boolean {
  const { driveEnd, motorEnd } = state;
  const connected = (['U', 'V', 'W'] as const).every((phase) => driveEnd[phase] && motorEnd[phase]);
  const held = connected && !tripped;
  return gravityLoaded && brakeReleased(state) && !state.axisSupported && !held;
}
