import type { AxisState, Core } from './axis-state.ts';
import { brakeNetwork } from './brake.ts';
import { cableNetwork } from './cable-network.ts';
import { driveNetwork } from './drive-network.ts';
import type { FaultedAxis } from './faulted-axis.ts';
import { feedbackNetwork } from './feedback-network.ts';
import { motorNetwork } from './motor-network.ts';
import { type Element, resistor } from './network.ts';
import { typical } from './typical.ts';

/** A multimeter is read once its reading is steady: absorption has faded by then. */
const restSeconds = 600;

/**
 * The whole axis as a network, in its present state. `testSeconds`: how long the measuring voltage has been on.
 */
export function axisNetwork(axis: FaultedAxis, state: AxisState, testSeconds = restSeconds): Element[] {
  const { parameters, leaks, broken, motor } = axis;
  return [
    ...driveNetwork(parameters, state),
    ...cableNetwork(parameters, state, broken),
    ...motorNetwork(parameters, state, motor, testSeconds),
    ...feedbackNetwork(parameters, state),
    ...brakeNetwork(parameters, state),
    ...state.jumpers.map(([a, b]) => resistor(a, b, typical.contactOhms)),
    ...leaks.flatMap(({ a, b, ohms }) => placed(a, state).map((node) => resistor(node, b, ohms))),
  ];
}

/** A leak between mated pins, `mated.U`, exists only while the connector is plugged. */
function placed(node: string, state: AxisState): string[] {
  const [place, core] = node.split('.');
  if (place !== 'mated') return [node];
  return state.motorEnd[core as Core] ? [`motor.${core}`] : [];
}
