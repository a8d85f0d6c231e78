import { type Reading, volts } from '../../kernel/reading/reading.ts';
import type { LockoutAnswer } from '../../visit/steps/lockout/question.ts';
import type { World } from '../case/world.ts';
import type { HookUp } from '../simulator/measure.ts';
import { typedBack } from './rows.ts';

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

/** Locks out and measures every point that the simulator has; its supply ends at the main switch, which is open then. */
export function provenDead(world: World): Pick<LockoutAnswer, 'supplyVoltage' | 'outputVoltage' | 'busVoltage'> {
  const rails = typedBack(world.lockOut(), 'voltage');
  return { supplyVoltage: volts(0), outputVoltage: highest(world, output), busVoltage: busDead(world, [rails]) };
}

/** The highest reading at the bus. `known`: what was read there just now. */
export function busDead(world: World, known: readonly Reading[]): Reading {
  const rails = known.length > 0 ? known : [typedBack(world.measure('volts', 'DC+', 'DC-'), 'voltage')];
  return highestOf([...rails, highest(world, bus)]);
}

function highest(world: World, points: readonly HookUp[]): Reading {
  return highestOf(points.map(({ red, black }) => typedBack(world.measure('volts', red, black), 'voltage')));
}

/** Every reading here is a figure or beyond the range, and a range that is exceeded is higher than any figure. */
function highestOf(readings: readonly Reading[]): Reading {
  const size = (reading: Reading) => (reading.kind === 'value' ? Math.abs(reading.value) : Number.POSITIVE_INFINITY);
  return readings.reduce((highest, reading) => (size(reading) > size(highest) ? reading : highest));
}
