import type { Phase } from '../../kernel/electrics/phases.ts';

/*
 * Nodes of the network, to measure between and to put faults at. `*` is a core.
 *
 *   DC+  DC-  DC.mid            bus; the middle exists if two capacitors are in series
 *   drive.U … drive.W           output terminals; drive.brake+, drive.brake-, drive.sensor+, drive.sensor-
 *   cable.drive.*               core at its drive end: U, V, W, PE, screen, brake+, brake-, sensor+, sensor-
 *   cable.*                     the same core in the middle of the cable
 *   cable.motor.*               the pin in the cable's half of the motor connector
 *   motor.*                     the pin in the motor's half; motor.frame is the shell, and where the screen ends
 *   motor.mid.U  motor.star     middle of a winding; star point
 *   mated.U … mated.W           the pins while the connector is plugged (leaks only)
 *   braking.plus  braking.minus the braking resistor; braking.chopper is its terminal at the drive, beside DC+
 *   neighbour.U …               terminals of the other axis of this drive; neighbour.motor.U …, neighbour.motor.star
 *   feedback.supply, feedback.cable.plus, .minus, feedback.device.plus, .minus
 *   ground                      protective bar, machine frame, housing of the braking resistor
 *
 * Idle cores, braking resistor, neighbour axis, link, filter exist only if the parameters of the axis have them; in the
 * tidy world none does, and a leak to a core that is absent leads nowhere. What is bad is in axis-defects.ts: leaks, and
 * resistance in series with a core at one of five places, each always or only when bent, hot or above a voltage.
 */

/** Conductors of the motor cable that belong to the power circuit. */
export type Core = 'U' | 'V' | 'W' | 'PE' | 'screen';

export const cores: readonly Core[] = ['U', 'V', 'W', 'PE', 'screen'];

/** Conductors of the motor cable that carry an extra-low voltage: holding brake and temperature sensor. */
export type IdleCore = 'brake+' | 'brake-' | 'sensor+' | 'sensor-';

export const idleCores: readonly IdleCore[] = ['brake+', 'brake-', 'sensor+', 'sensor-'];

/** What a person has done to the axis: which ends are connected, which wires are added, whether it has power. */
export interface AxisState {
  driveEnd: Record<Core, boolean>;
  motorEnd: Record<Core, boolean>;
  /** Drive ends of all idle cores: on the drive, off and hanging, or off, joined and on the protective bar. */
  idleCores: 'connected' | 'free' | 'to-pe';
  feedbackAtDrive: boolean;
  feedbackAtDevice: boolean;
  /** Leads of the braking resistor, on DC+ and the chopper's terminal. */
  brakingResistor: boolean;
  /** DC+ and DC− joined to the drives beside it. */
  dcLink: boolean;
  /** Motor leads and feedback of the other axis of this drive. */
  neighbourLeads: boolean;
  neighbourFeedback: boolean;
  /** Output filter or suppressor on the drive end of the cable. */
  filter: boolean;
  /** The moving cable is held where its fault shows, if it has one. */
  bent: boolean;
  /** Wires that the person has added, from node to node; `['cable.drive.PE', 'ground']` is part of bonding the other cores. */
  jumpers: [string, string][];
  supply: boolean;
  enabled: boolean;
  /** Every axis that can fall is on its support. */
  axisSupported: boolean;
  /**
   * Voltage of the bus, DC+ against DC−: negative if a meter has charged it so. It changes only when time passes, or
   * while the tips of a meter are on it: see discharge.ts.
   */
  busVolts: number;
  /** Part of it across the lower of two capacitors in series; half of it if absent. */
  lowerBusVolts?: number;
  /** Temperature of the winding, and of everything else, in °C. */
  windingCelsius: number;
  airCelsius: number;
}

const all = (on: boolean): Record<Core, boolean> => ({ U: on, V: on, W: on, PE: on, screen: on });

/** Everything connected, supply off, bus discharged. */
export function asFound(windingCelsius: number, airCelsius: number): AxisState {
  return {
    driveEnd: all(true),
    motorEnd: all(true),
    idleCores: 'connected',
    feedbackAtDrive: true,
    feedbackAtDevice: true,
    brakingResistor: true,
    dcLink: true,
    neighbourLeads: true,
    neighbourFeedback: true,
    filter: true,
    bent: false,
    jumpers: [],
    supply: false,
    enabled: false,
    axisSupported: false,
    busVolts: 0,
    windingCelsius,
    airCelsius,
  };
}

/** Idle cores that are on the drive come off and hang free; on the protective bar they stay. */
const idleCoresOff = ({ idleCores: now }: AxisState): AxisState['idleCores'] => (now === 'connected' ? 'free' : now);

/** U, V, W and the PE core off the drive, idle cores too; the screen stays in its clamp. */
export function leadsOff(state: AxisState): AxisState {
  return { ...state, driveEnd: { ...all(false), screen: true }, idleCores: idleCoresOff(state) };
}

/** Everything that can be taken off the drive is off, as its manual allows; the idle cores go to the protective bar. */
export function stripped(state: AxisState): AxisState {
  return {
    ...leadsOff(state),
    idleCores: 'to-pe',
    feedbackAtDrive: false,
    brakingResistor: false,
    dcLink: false,
    neighbourLeads: false,
    neighbourFeedback: false,
  };
}

/** Everything back on as it was found, no wires left; what is not a connection stays as it is. */
export function reconnected(state: AxisState): AxisState {
  const { supply, enabled, axisSupported, busVolts, windingCelsius, airCelsius, lowerBusVolts } = state;
  const now = { supply, enabled, axisSupported, busVolts, ...(lowerBusVolts !== undefined && { lowerBusVolts }) };
  return { ...asFound(windingCelsius, airCelsius), ...now };
}

/** The cable alone, free at both ends, screen too; idle cores on the protective bar stay there. */
export function cableFree(state: AxisState): AxisState {
  return { ...state, driveEnd: all(false), motorEnd: all(false), idleCores: idleCoresOff(state), jumpers: [] };
}

/** Wires from ground to every conductor at the drive end except this phase: the hook-up that bonds the other cores. */
export function bondedExcept(phase: Phase): [string, string][] {
  return cores.filter((core) => core !== phase).map((core) => [`cable.drive.${core}`, 'ground']);
}
