import { type Reading, volts } from '../../kernel/reading/reading.ts';
import type { LockoutAnswer } from '../../visit/steps/lockout/question.ts';
import type { Machine } from '../case/machine.ts';
import type { HookUp } from '../simulator/measure.ts';
import { typedBack } from './measure-rows.ts';

const leads = (red: string, black: string): HookUp => ({ red, black });

const bus = [leads('DC+', 'ground'), leads('DC-', 'ground')];

const output = [
  leads('drive.U', 'drive.V'),
  leads('drive.V', 'drive.W'),
  leads('drive.W', 'drive.U'),
  leads('drive.U', 'ground'),
  leads('drive.V', 'ground'),
  leads('drive.W', 'ground'),
];

/** Locks out and measures every point that the simulator has. The supply reads 0 V: the main switch is open. */
export function provenDead(machine: Machine): Pick<LockoutAnswer, 'supplyVoltage' | 'outputVoltage' | 'busVoltage'> {
  const rails = typedBack(machine.lockOut(), 'voltage');
  return { supplyVoltage: volts(0), outputVoltage: highest(machine, output), busVoltage: busDead(machine, [rails]) };
}

/** The highest reading at the bus. `known`: readings of the rails taken just now. */
export function busDead(machine: Machine, known: readonly Reading[]): Reading {
  const rails = known.length > 0 ? known : [typedBack(machine.measure('volts', 'DC+', 'DC-'), 'voltage')];
  return highestOf([...rails, highest(machine, bus)]);
}

function highest(machine: Machine, points: readonly HookUp[]): Reading {
  return highestOf(points.map(({ red, black }) => typedBack(machine.measure('volts', red, black), 'voltage')));
}

/** A reading here is a figure or beyond the range; beyond the range counts as higher than any figure. */
function highestOf(readings: readonly Reading[]): Reading {
  const size = (reading: Reading) => (reading.kind === 'value' ? Math.abs(reading.value) : Number.POSITIVE_INFINITY);
  return readings.reduce((highest, reading) => (size(reading) > size(highest) ? reading : highest));
}
