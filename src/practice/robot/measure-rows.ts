import type { StageReadings } from '../../calculators/isolation/rule/input.ts';
import type { WindingPair } from '../../calculators/winding/rule/pairs.ts';
import type { Phase, Phases } from '../../kernel/electrics/phases.ts';
import { parseReading } from '../../kernel/reading/parse-reading.ts';
import type { Quantity } from '../../kernel/reading/quantity.ts';
import type { Reading } from '../../kernel/reading/reading.ts';
import type { Machine } from '../case/machine.ts';
import { type AxisState, bondedExcept, cableFree, leadsOff } from '../simulator/axis-state.ts';
import type { Measurement, Mode } from '../simulator/measure.ts';

const zeroed = { zeroed: true };
/** After an insulation test the robot leaves the leads on until the winding is discharged. */
const discharged = { discharge: true };

/** Reads a displayed text as the site reads it when it is typed. Throws if the site can't: an error in the simulator. */
export function typedBack({ text }: Measurement, quantity: Quantity = 'resistance'): Reading {
  // With a leading zero the point can only be the display's decimal mark.
  const parsed = parseReading(text.replace('-', '').replace(/^(?=\d)/, '0'), quantity);
  if (!parsed.ok) throw new Error(`the site cannot read ${text}: ${parsed.error.code}`);
  return parsed.reading;
}

function row(machine: Machine, mode: Mode, leads: (phase: Phase) => [string, string]): Phases<Reading> {
  const one = (phase: Phase) => typedBack(machine.measure(mode, ...leads(phase), discharged));
  return { U: one('U'), V: one('V'), W: one('W') };
}

/** From the drive end to ground, cable and motor joined; PE by multimeter with its leads zeroed. */
export function joinedRow(machine: Machine): StageReadings {
  machine.change(plugged);
  return {
    ...row(machine, 'insulation', (phase) => [`cable.drive.${phase}`, 'ground']),
    PE: typedBack(machine.measure('ohms', 'cable.drive.PE', 'ground', zeroed)),
  };
}

export function cableRow(machine: Machine): StageReadings {
  machine.change(cableFree);
  return {
    ...row(machine, 'insulation', (phase) => [`cable.drive.${phase}`, 'ground']),
    PE: typedBack(machine.measure('insulation', 'cable.drive.PE', 'ground', discharged)),
  };
}

/** With PE core, screen and the cores that are not being measured joined to ground. */
export function bondedRow(machine: Machine): Phases<Reading> {
  const one = (phase: Phase) => {
    machine.change((state) => ({ ...cableFree(state), jumpers: bondedExcept(phase) }));
    return typedBack(machine.measure('insulation', `cable.drive.${phase}`, 'ground', discharged));
  };
  const readings = { U: one('U'), V: one('V'), W: one('W') };
  machine.change(cableFree);
  return readings;
}

export function motorRow(machine: Machine): StageReadings {
  machine.change(cableFree);
  return {
    ...row(machine, 'insulation', (phase) => [`motor.${phase}`, 'motor.frame']),
    PE: typedBack(machine.measure('ohms', 'motor.PE', 'motor.frame', zeroed)),
  };
}

const ends: Record<WindingPair, [Phase, Phase]> = { UV: ['U', 'V'], VW: ['V', 'W'], WU: ['W', 'U'] };

/** Phase to phase, through the cable or at the motor. */
export function windingRow(machine: Machine, at: 'cable.drive' | 'motor', mode: Mode): Record<WindingPair, Reading> {
  machine.change(at === 'motor' ? cableFree : plugged);
  const one = (pair: WindingPair) => {
    const [a, b] = ends[pair];
    return typedBack(machine.measure(mode, `${at}.${a}`, `${at}.${b}`, zeroed));
  };
  return { UV: one('UV'), VW: one('VW'), WU: one('WU') };
}

/** Leads off the drive, motor plugged. */
function plugged(state: AxisState): AxisState {
  return { ...leadsOff(state), motorEnd: { U: true, V: true, W: true, PE: true, screen: true }, jumpers: [] };
}
