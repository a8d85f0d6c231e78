import { type BuiltAxis, isThere, type LeakPath } from './axis-defects.ts';
import type { AxisState, Core } from './axis-state.ts';
import { brakeNetwork } from './brake.ts';
import { brakingNetwork } from './braking-network.ts';
import { cableNetwork } from './cable-network.ts';
import { driveNetwork } from './drive-network.ts';
import { feedbackNetwork } from './feedback-network.ts';
import { motorNetwork } from './motor-network.ts';
import { type Element, resistor } from './network.ts';
import { typical } from './typical.ts';

/** A multimeter is read once its reading is steady: absorption has faded by then. */
const restSeconds = 600;

/**
 * The whole axis as a network, in its present state. `testSeconds`: how long the measuring voltage has been on.
 */
export function axisNetwork(axis: BuiltAxis, state: AxisState, testSeconds = restSeconds): Element[] {
  return [
    ...driveNetwork(axis, state),
    ...cableNetwork(axis, state),
    ...motorNetwork(axis, state, testSeconds),
    ...feedbackNetwork(axis, state),
    ...brakeNetwork(axis, state),
    ...brakingNetwork(axis, state),
    ...state.jumpers.map(([a, b]) => resistor(a, b, typical.contactOhms)),
    ...axis.leaks.filter(({ condition }) => isThere(condition, state)).flatMap((leak) => leakage(leak, state)),
  ];
}

function leakage({ a, b, ohms, condition }: LeakPath, state: AxisState): Element[] {
  return placed(a, state).map((node) =>
    condition === 'above-200V' ? { kind: 'gap', a: node, b, ohms, volts: typical.gapVolts } : resistor(node, b, ohms),
  );
}

/** A leak between mated pins, `mated.U`, exists only while the connector is plugged. */
function placed(node: string, state: AxisState): string[] {
  const [place, core] = node.split('.');
  if (place !== 'mated') return [node];
  return state.motorEnd[core as Core] ? [`motor.${core}`] : [];
}
