import type { StageReadings } from '../../calculators/isolation/rule/input.ts';
import type { WindingPair } from '../../calculators/winding/rule/phases.ts';
import type { Phase, Phases } from '../../kernel/electrics/phases.ts';
import { parseReading } from '../../kernel/reading/parse-reading.ts';
import type { Quantity } from '../../kernel/reading/quantity.ts';
import type { Reading } from '../../kernel/reading/reading.ts';
import { bondedExcept } from '../case/bonds.ts';
import type { World } from '../case/world.ts';
import { type AxisState, cableFree, leadsOff } from '../simulator/axis-state.ts';
import type { Measurement, Mode } from '../simulator/measure.ts';

const zeroed = { zeroed: true };
/** After an insulation test the robot leaves the leads on until the winding is discharged. */
const discharged = { discharge: true };

/** What the robot types is read back as the site reads it. Throws where the two differ: a slip in the simulator. */
export function typedBack({ text }: Measurement, quantity: Quantity = 'resistance'): Reading {
  // A leading zero says that the point is the display's decimal mark.
  const parsed = parseReading(text.replace('-', '').replace(/^(?=\d)/, '0'), quantity);
  if (!parsed.ok) throw new Error(`the site cannot read ${text}: ${parsed.error.code}`);
  return parsed.reading;
}

function row(world: World, mode: Mode, leads: (phase: Phase) => [string, string]): Phases<Reading> {
  const one = (phase: Phase) => typedBack(world.measure(mode, ...leads(phase), discharged));
  return { U: one('U'), V: one('V'), W: one('W') };
}

export function bridgeRows(world: World): { dcPlus: Phases<Reading>; dcMinus: Phases<Reading> } {
  return {
    dcPlus: row(world, 'ohms', (phase) => ['DC+', `drive.${phase}`]),
    dcMinus: row(world, 'ohms', (phase) => [`drive.${phase}`, 'DC-']),
  };
}

/** At the drive end, cable and motor joined, to ground; PE by multimeter with its leads zeroed. */
export function joinedRow(world: World): StageReadings {
  world.change(plugged);
  return {
    ...row(world, 'insulation', (phase) => [`cable.drive.${phase}`, 'ground']),
    PE: typedBack(world.measure('ohms', 'cable.drive.PE', 'ground', zeroed)),
  };
}

export function cableRow(world: World): StageReadings {
  world.change(cableFree);
  return {
    ...row(world, 'insulation', (phase) => [`cable.drive.${phase}`, 'ground']),
    PE: typedBack(world.measure('insulation', 'cable.drive.PE', 'ground', discharged)),
  };
}

/** PE core, screen and the cores that are not measured joined to ground. */
export function bondedRow(world: World): Phases<Reading> {
  const one = (phase: Phase) => {
    world.change((state) => ({ ...cableFree(state), jumpers: bondedExcept(phase) }));
    return typedBack(world.measure('insulation', `cable.drive.${phase}`, 'ground', discharged));
  };
  const readings = { U: one('U'), V: one('V'), W: one('W') };
  world.change(cableFree);
  return readings;
}

export function motorRow(world: World): StageReadings {
  world.change(cableFree);
  return {
    ...row(world, 'insulation', (phase) => [`motor.${phase}`, 'motor.frame']),
    PE: typedBack(world.measure('ohms', 'motor.PE', 'motor.frame', zeroed)),
  };
}

const ends: Record<WindingPair, [Phase, Phase]> = { UV: ['U', 'V'], VW: ['V', 'W'], WU: ['W', 'U'] };

/** Line to line, through the cable or at the motor. */
export function windingRow(world: World, at: 'cable.drive' | 'motor', mode: Mode): Record<WindingPair, Reading> {
  world.change(at === 'motor' ? cableFree : plugged);
  const one = (pair: WindingPair) => {
    const [a, b] = ends[pair];
    return typedBack(world.measure(mode, `${at}.${a}`, `${at}.${b}`, zeroed));
  };
  return { UV: one('UV'), VW: one('VW'), WU: one('WU') };
}

/** Leads off the drive, motor plugged. */
function plugged(state: AxisState): AxisState {
  return { ...leadsOff(state), motorEnd: { U: true, V: true, W: true, PE: true, screen: true }, jumpers: [] };
}
