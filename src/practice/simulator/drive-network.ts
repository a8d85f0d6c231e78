import { type Phases, phases } from '../../kernel/electrics/phases.ts';
import type { BuiltAxis } from './axis-defects.ts';
import type { AxisState } from './axis-state.ts';
import { thermalVolts } from './diode-law.ts';
import { type Capacitor, type Element, ground, resistor, source } from './network.ts';
import type { AxisParameters } from './parameters.ts';
import { typical } from './typical.ts';

/** Bus and output stages of the drive, from `DC+` and `DC-` to `drive.U` … and `neighbour.U` … */
export function driveNetwork({ parameters }: BuiltAxis, state: AxisState): Element[] {
  return [
    ...busResistors(parameters, state),
    resistor('DC-', ground, parameters.busToGroundOhms),
    ...bus(parameters, state),
    ...stage(parameters, state, 'drive', parameters),
    ...(parameters.neighbour ? neighbour(parameters, parameters.neighbour, state) : []),
  ];
}

function busResistors({ bleedOhms, balance, link }: AxisParameters, state: AxisState): Element[] {
  const own = balance
    ? [resistor('DC+', 'DC.mid', balance.upperOhms), resistor('DC.mid', 'DC-', balance.lowerOhms)]
    : [resistor('DC+', 'DC-', bleedOhms)];
  return link && state.dcLink ? [...own, resistor('DC+', 'DC-', link.bleedOhms)] : own;
}

/** With power the rectifier feeds the bus; without it the capacitors hold the remaining charge. */
function bus(axis: AxisParameters, state: AxisState): Element[] {
  if (state.supply) return [source('DC+', 'DC-', axis.supplyVolts, typical.supplyOhms)];
  if (Math.abs(state.busVolts) <= typical.restVolts) return [];
  return busCapacitors(axis, state);
}

/** The capacitors with their charge: one, or two in series with `DC.mid` between them; those of the link beside them. */
export function busCapacitors({ busFarads, balance, link }: AxisParameters, state: AxisState): Capacitor[] {
  const linked = link && state.dcLink ? link.farads : 0;
  const whole = (farads: number): Capacitor => ({
    kind: 'capacitor',
    a: 'DC+',
    b: 'DC-',
    farads,
    volts: state.busVolts,
  });
  if (!balance) return [whole(busFarads + linked)];
  const lower = state.lowerBusVolts ?? state.busVolts / 2;
  const half = { kind: 'capacitor', farads: 2 * busFarads } as const;
  return [
    { ...half, a: 'DC+', b: 'DC.mid', volts: state.busVolts - lower },
    { ...half, a: 'DC.mid', b: 'DC-', volts: lower },
    ...(linked > 0 ? [whole(linked)] : []),
  ];
}

/** Three pairs of switches, with the diodes and resistors across them. */
function stage(
  axis: AxisParameters,
  state: AxisState,
  name: 'drive' | 'neighbour',
  { upperOhms, lowerOhms }: { upperOhms: Phases<number>; lowerOhms: Phases<number> },
): Element[] {
  const { saturation, slope, grown } = junction(axis, state);
  const leak = axis.switchLeakOhms / grown;
  return phases.flatMap((phase): Element[] => {
    const terminal = `${name}.${phase}`;
    return [
      resistor('DC+', terminal, upperOhms[phase]),
      resistor('DC+', terminal, leak),
      { kind: 'diode', anode: terminal, cathode: 'DC+', saturation, slope },
      resistor(terminal, 'DC-', lowerOhms[phase]),
      resistor(terminal, 'DC-', leak),
      { kind: 'diode', anode: 'DC-', cathode: terminal, saturation, slope },
      ...switching(axis, state, terminal),
    ];
  });
}

/** A diode of the drive, and the factor on leakage, at the temperature of the air. */
export function junction({ diodeSaturation, diodeIdeality }: AxisParameters, { airCelsius }: AxisState) {
  const grown = 2 ** ((airCelsius - 25) / typical.kelvinPerDoubling);
  return { grown, saturation: diodeSaturation * grown, slope: diodeIdeality * thermalVolts(airCelsius) };
}

/** Enabled at rest, each terminal switches between the rails: on average it has half the bus voltage. */
function switching(axis: AxisParameters, state: AxisState, terminal: string): Element[] {
  if (!state.supply || !state.enabled) return [];
  return [source(terminal, 'DC-', axis.supplyVolts / 2, typical.supplyOhms)];
}

/** The other axis: a stage like this one on the same bus, and its motor with its leads on or off. */
function neighbour(axis: AxisParameters, motor: NonNullable<AxisParameters['neighbour']>, state: AxisState): Element[] {
  return [
    ...stage(axis, state, 'neighbour', axis),
    ...phases.flatMap((phase) => [
      resistor(`neighbour.motor.${phase}`, 'neighbour.motor.star', motor.windingOhms),
      resistor(`neighbour.motor.${phase}`, ground, motor.frameInsulationOhms),
      ...(state.neighbourLeads
        ? [resistor(`neighbour.${phase}`, `neighbour.motor.${phase}`, typical.contactOhms)]
        : []),
    ]),
  ];
}
