import { type AxisState, type Core, cores } from '../simulator/axis-state.ts';

/** Where a lead can be put: the node of the network, its row in the drawing and its column. */
export interface Terminal {
  node: string;
  row: 'bus' | 'drive' | 'drive-end' | 'motor-end' | 'motor';
  column: number;
}

/** One column of the drawing each. */
export const conductors: readonly Core[] = cores;

const onDrive = ['drive.U', 'drive.V', 'drive.W', 'ground'];
const ofMotor: Record<Core, string> = {
  U: 'motor.U',
  V: 'motor.V',
  W: 'motor.W',
  PE: 'motor.PE',
  screen: 'motor.frame',
};

/** Every point that leads reach, from the bus down to the motor, one column a conductor. */
export const terminals: readonly Terminal[] = [
  { node: 'DC+', row: 'bus', column: 0 },
  { node: 'DC-', row: 'bus', column: 1 },
  ...onDrive.map((node, column): Terminal => ({ node, row: 'drive', column })),
  ...cores.map((core, column): Terminal => ({ node: `cable.drive.${core}`, row: 'drive-end', column })),
  ...cores.map((core, column): Terminal => ({ node: `cable.motor.${core}`, row: 'motor-end', column })),
  ...cores.map((core, column): Terminal => ({ node: ofMotor[core], row: 'motor', column })),
];

/** The pins of the motor connector are hidden while it is plugged; its shell, which is the frame, never is. */
export function inReach({ motorEnd }: AxisState, { node, row }: Terminal): boolean {
  if (node === 'motor.frame') return true;
  return (row !== 'motor-end' && row !== 'motor') || !motorEnd.U;
}
