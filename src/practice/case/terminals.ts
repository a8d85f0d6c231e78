import { type AxisState, type Core, cores } from '../simulator/axis-state.ts';

/** A point that takes a lead: its node in the network, its row and column in the drawing. */
export interface Terminal {
  node: string;
  row: 'bus' | 'drive' | 'drive-end' | 'motor-end' | 'motor';
  column: number;
}

/** One for each column of the drawing. */
export const conductors: readonly Core[] = cores;

const onDrive = ['drive.U', 'drive.V', 'drive.W', 'ground'];
const ofMotor: Record<Core, string> = {
  U: 'motor.U',
  V: 'motor.V',
  W: 'motor.W',
  PE: 'motor.PE',
  screen: 'motor.frame',
};

/** Every point that leads can reach, from the bus down to the motor. */
export const terminals: readonly Terminal[] = [
  { node: 'DC+', row: 'bus', column: 0 },
  { node: 'DC-', row: 'bus', column: 1 },
  ...onDrive.map((node, column): Terminal => ({ node, row: 'drive', column })),
  ...cores.map((core, column): Terminal => ({ node: `cable.drive.${core}`, row: 'drive-end', column })),
  ...cores.map((core, column): Terminal => ({ node: `cable.motor.${core}`, row: 'motor-end', column })),
  ...cores.map((core, column): Terminal => ({ node: ofMotor[core], row: 'motor', column })),
];

/** The pins of the motor connector are hidden while it is plugged; its shell (the frame) always is in reach. */
export function inReach({ motorEnd }: AxisState, { node, row }: Terminal): boolean {
  if (node === 'motor.frame') return true;
  return (row !== 'motor-end' && row !== 'motor') || !motorEnd.U;
}
