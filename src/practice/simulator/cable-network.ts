import { type BuiltAxis, seriesOhms } from './axis-defects.ts';
import { type AxisState, type Core, cores, type IdleCore } from './axis-state.ts';
import { copperOhms } from './copper.ts';
import { type Element, ground, resistor } from './network.ts';
import type { AxisParameters } from './parameters.ts';
import { typical } from './typical.ts';

/**
 * Motor cable from `cable.drive.*` through `cable.*` (its middle, where the faults are) to `cable.motor.*`, and its two
 * ends: a lead that is on joins `cable.drive.U` to `drive.U`, a plugged connector `cable.motor.U` to `motor.U`.
 */
export function cableNetwork(axis: BuiltAxis, state: AxisState): Element[] {
  const { parameters, broken } = axis;
  const insulation = insulationOhms(parameters, state);
  const inside = [...cores, ...parameters.idleCores].map((core) => `cable.${core}`);
  if (parameters.oneCable) inside.push('feedback.cable.plus', 'feedback.cable.minus');
  const pairs = inside.flatMap((a, position) => inside.slice(position + 1).map((b): [string, string] => [a, b]));
  return [
    ...[...cores, ...parameters.idleCores].flatMap((core): Element[] => {
      const half = copperOhms((ohmsPerMetre(parameters, core) * parameters.cableMetres) / 2, state.airCelsius);
      const series = (place: 'drive-terminal' | 'in-cable' | 'cable-half' | 'mated') =>
        seriesOhms(axis, state, core, place);
      const middle = `cable.${core}`;
      return [
        resistor(`cable.drive.${core}`, middle, core === 'screen' ? half * typical.screenShare : half),
        ...(broken.includes(middle)
          ? []
          : [resistor(middle, `cable.motor.${core}`, half + series('in-cable') + series('cable-half'))]),
        ...driveEnd(state, core, typical.contactOhms + series('drive-terminal')),
        ...(plugged(state, core)
          ? [resistor(`cable.motor.${core}`, motorTerminal(core), typical.contactOhms + series('mated'))]
          : []),
      ];
    }),
    ...pairs.map(([a, b]) => resistor(a, b, insulation)),
    // Only the screen has the jacket, and ground behind it, as a neighbour.
    resistor('cable.screen', ground, insulation),
    ...filter(parameters, state),
  ];
}

/** Between any two conductors, at the temperature of the air. */
function insulationOhms({ insulationOhmMetres, cableMetres, cableKelvinPerHalving }: AxisParameters, now: AxisState) {
  return (insulationOhmMetres / cableMetres) * 2 ** ((20 - now.airCelsius) / cableKelvinPerHalving);
}

function ohmsPerMetre({ coreOhmsPerMetre, peOhmsPerMetre }: AxisParameters, core: Core | IdleCore): number {
  if (isIdle(core)) return typical.idleCoreOhmsPerMetre;
  return core === 'PE' ? peOhmsPerMetre : coreOhmsPerMetre;
}

const isIdle = (core: Core | IdleCore): core is IdleCore => core.endsWith('+') || core.endsWith('-');

/** Where this core ends at the drive: its terminal, the protective bar, or nowhere. PE and screen end at the bar. */
function driveEnd(state: AxisState, core: Core | IdleCore, ohms: number): Element[] {
  const end = `cable.drive.${core}`;
  if (isIdle(core)) {
    if (state.idleCores === 'free') return [];
    return [resistor(end, state.idleCores === 'to-pe' ? ground : `drive.${core}`, ohms)];
  }
  if (!state.driveEnd[core]) return [];
  return [resistor(end, core === 'PE' || core === 'screen' ? ground : `drive.${core}`, ohms)];
}

/** Idle cores have their pins in the connector of the power cores, whose plug comes off as one. */
function plugged({ motorEnd }: AxisState, core: Core | IdleCore): boolean {
  return isIdle(core) ? motorEnd.U : motorEnd[core];
}

/** The screen ends at the shell of the connector, which is the frame. */
function motorTerminal(core: Core | IdleCore): string {
  return core === 'screen' ? 'motor.frame' : `motor.${core}`;
}

function filter({ filterOhms }: AxisParameters, state: AxisState): Element[] {
  if (filterOhms === undefined || !state.filter) return [];
  return (['U', 'V', 'W'] as const).map((phase) => resistor(`cable.drive.${phase}`, ground, filterOhms));
}
