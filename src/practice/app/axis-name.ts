import type { Session } from '../case/session.ts';

/** The three axes of the invented line 2: Lift is the vertical one. */
export function axisName({ world, code }: Session): string {
  if (world.axis.parameters.gravityLoaded) return 'Lift';
  return code.charCodeAt(0) % 2 === 0 ? 'Bridge' : 'Carriage';
}
