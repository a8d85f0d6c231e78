import { type AxisState, type Core, cores } from './axis-state.ts';
import { copperOhms } from './copper.ts';
import { type Element, ground, resistor } from './network.ts';
import type { AxisParameters } from './parameters.ts';
import { typical } from './typical.ts';

/**
 * Motor cable from `cable.drive.*` through `cable.*` (its middle, where the faults are) to `cable.motor.*`, and its two
 * ends: a lead that is on joins `cable.drive.U` to `drive.U`, a plugged connector `cable.motor.U` to `motor.U`.
 */
export function cableNetwork(axis: AxisParameters, state: AxisState, broken: readonly string[]): Element[] {
  const half = copperOhms((axis.coreOhmsPerMetre * axis.cableMetres) / 2, state.airCelsius);
  const insulation = axis.insulationOhmMetres / axis.cableMetres;
  const pairs = cores.flatMap((a, position) => cores.slice(position + 1).map((b): [Core, Core] => [a, b]));
  return [
    ...cores.flatMap((core) => [
      resistor(`cable.drive.${core}`, `cable.${core}`, core === 'screen' ? half * typical.screenShare : half),
      ...(broken.includes(`cable.${core}`) ? [] : [resistor(`cable.${core}`, `cable.motor.${core}`, half)]),
      ...(state.driveEnd[core] ? [resistor(`cable.drive.${core}`, driveTerminal(core), typical.contactOhms)] : []),
      ...(state.motorEnd[core] ? [resistor(`cable.motor.${core}`, motorTerminal(core), typical.contactOhms)] : []),
    ]),
    ...pairs.map(([a, b]) => resistor(`cable.${a}`, `cable.${b}`, insulation)),
    // Only the screen has the jacket, and ground behind it, as a neighbour.
    resistor('cable.screen', ground, insulation),
  ];
}

/** PE and screen end at the protective bar. */
function driveTerminal(core: Core): string {
  return core === 'PE' || core === 'screen' ? ground : `drive.${core}`;
}

/** The screen ends at the shell of the connector, which is the frame. */
function motorTerminal(core: Core): string {
  return core === 'screen' ? 'motor.frame' : `motor.${core}`;
}
