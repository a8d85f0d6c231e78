import { type BuiltAxis, seriesOhms } from './axis-defects.ts';
import type { AxisState } from './axis-state.ts';
import { type Element, ground, resistor, source } from './network.ts';
import type { AxisParameters } from './parameters.ts';
import { typical } from './typical.ts';

/** The control releases the brake with the enable, even if no motor holds the axis. */
function brakeReleased({ supply, enabled }: AxisState): boolean {
  return supply && enabled;
}

/**
 * The holding brake: a coil between `motor.brake+` and `motor.brake-`, released by power, applied by springs. The drive
 * feeds it through the motor cable if that has the cores, else through a cable of its own.
 */
export function brakeNetwork(axis: BuiltAxis, state: AxisState): Element[] {
  const { brakeVolts, brakeSupplyOhms, brakeInsulationOhms } = typical;
  const { brakeOhms, idleCores } = axis.parameters;
  const inCable = idleCores.includes('brake+');
  const [plus, minus] = inCable ? ['drive.brake+', 'drive.brake-'] : ['motor.brake+', 'motor.brake-'];
  const contacts = seriesOhms(axis, state, 'brake+', 'motor-half') + seriesOhms(axis, state, 'brake-', 'motor-half');
  return [
    resistor('motor.brake+', 'motor.brake-', brakeOhms + contacts),
    resistor('motor.brake-', 'motor.frame', brakeInsulationOhms),
    ...(brakeReleased(state) ? [source(plus, minus, brakeVolts, brakeSupplyOhms)] : []),
    ...(inCable ? [resistor(plus, minus, typical.outputOffOhms), resistor(minus, ground, typical.groundedOhms)] : []),
  ];
}

/** Whether an axis can fall whose brake opens with an enable of this drive: this one, or the other. */
export function anyCanFall({ gravityLoaded, neighbour }: AxisParameters): boolean {
  return gravityLoaded || neighbour?.gravityLoaded === true;
}

/**
 * Whether a load drops: it can fall, its brake is open, nothing supports it, and no motor holds it. A motor holds it only
 * while all three phases are on at both ends and the drive has not tripped; a trip stops both stages.
 */
export function axisFalls({ gravityLoaded, neighbour }: AxisParameters, state: AxisState, tripped: boolean): boolean {
  const { driveEnd, motorEnd, neighbourLeads } = state;
  const connected = (['U', 'V', 'W'] as const).every((phase) => driveEnd[phase] && motorEnd[phase]);
  const ownDrops = gravityLoaded && !(connected && !tripped);
  const otherDrops = neighbour?.gravityLoaded === true && !(neighbourLeads && !tripped);
  return brakeReleased(state) && !state.axisSupported && (ownDrops || otherDrops);
}
