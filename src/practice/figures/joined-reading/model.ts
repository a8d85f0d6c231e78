import type { AxisState } from '../../simulator/axis-state.ts';
import { asFound, cableFree, leadsOff } from '../../simulator/axis-state.ts';
import { type Measurement, measure } from '../../simulator/measure.ts';
import { exactInstruments, middle, middleAxis } from '../middle-axis.ts';

/** Three readings of U, V and W joined against PE, by a tester of 500 V after one minute. */
export interface Readings {
  cable: Measurement;
  motor: Measurement;
  joined: Measurement;
}

const metres = 23;
/** Paths from one of the three cores to PE and to the screen, in parallel when the cores are joined. */
const pathsOfCable = 6;
const phasesOfMotor = 3;

/** An axis whose cable and motor have these insulation resistances, in Ω, with the three phases joined. */
export function joinedAxis(cableOhms: number, motorOhms: number) {
  const each = motorOhms * phasesOfMotor;
  return middleAxis({
    cableMetres: metres,
    insulationOhmMetres: cableOhms * pathsOfCable * metres,
    frameInsulationOhms: { U: each, V: each, W: each },
  });
}

const state = asFound(20, 20);
const joinedCores: [string, string][] = [
  ['cable.drive.U', 'cable.drive.V'],
  ['cable.drive.V', 'cable.drive.W'],
];
const bonded: [string, string][] = [
  ['cable.drive.PE', 'ground'],
  ['cable.drive.screen', 'ground'],
];

/** Off the drive; motor plugged, cable alone, motor alone. */
export function readings(cableOhms: number, motorOhms: number): Readings {
  const axis = joinedAxis(cableOhms, motorOhms);
  const tested = (now: AxisState, red: string): Measurement =>
    measure(axis, now, exactInstruments, 'insulation', { red, black: 'ground' }, middle);
  return {
    cable: tested({ ...cableFree(state), jumpers: [...joinedCores, ...bonded] }, 'cable.drive.U'),
    motor: tested(cableFree(state), 'motor.U'),
    joined: tested(leadsOff(state), 'cable.drive.U'),
  };
}
