import { phases } from '../../kernel/electrics/phases.ts';
import type { AxisState } from './axis-state.ts';
import { thermalVolts } from './diode-law.ts';
import { type Element, ground, resistor, source } from './network.ts';
import type { AxisParameters } from './parameters.ts';
import { typical } from './typical.ts';

/** Bus and output stage of the drive, from `DC+` and `DC-` to `drive.U`, `drive.V` and `drive.W`. */
export function driveNetwork(axis: AxisParameters, state: AxisState): Element[] {
  return [
    resistor('DC+', 'DC-', axis.bleedOhms),
    resistor('DC-', ground, axis.busToGroundOhms),
    ...bus(axis, state),
    ...phases.flatMap((phase) => arms(axis, state, phase, `drive.${phase}`)),
  ];
}

/** With power the rectifier feeds the bus; without it the capacitor holds the remaining charge. */
function bus(axis: AxisParameters, state: AxisState): Element[] {
  if (state.supply) return [source('DC+', 'DC-', axis.supplyVolts, typical.supplyOhms)];
  if (Math.abs(state.busVolts) <= typical.restVolts) return [];
  return [{ kind: 'capacitor', a: 'DC+', b: 'DC-', farads: axis.busFarads, volts: state.busVolts }];
}

function arms(axis: AxisParameters, state: AxisState, phase: 'U' | 'V' | 'W', terminal: string): Element[] {
  const warmer = state.airCelsius - 25;
  const grown = 2 ** (warmer / typical.kelvinPerDoubling);
  const saturation = axis.diodeSaturation * grown;
  const slope = axis.diodeIdeality * thermalVolts(state.airCelsius);
  const leak = axis.switchLeakOhms / grown;
  return [
    resistor('DC+', terminal, axis.upperOhms[phase]),
    resistor('DC+', terminal, leak),
    { kind: 'diode', anode: terminal, cathode: 'DC+', saturation, slope },
    resistor(terminal, 'DC-', axis.lowerOhms[phase]),
    resistor(terminal, 'DC-', leak),
    { kind: 'diode', anode: 'DC-', cathode: terminal, saturation, slope },
    ...switching(axis, state, terminal),
  ];
}

/** Enabled at rest, each terminal switches between the rails: on average it has half the bus voltage. */
function switching(axis: AxisParameters, state: AxisState, terminal: string): Element[] {
  if (!state.supply || !state.enabled) return [];
  return [source(terminal, 'DC-', axis.supplyVolts / 2, typical.supplyOhms)];
}
