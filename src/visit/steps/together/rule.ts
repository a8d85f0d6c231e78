import { tripsAsAWhole } from '../../guide/evidence.ts';
import { peCoreOff } from '../../guide/power.ts';
import { notDone } from '../done.ts';
import { retryProblem } from '../retry.ts';
import type { PlainRule, Rule } from '../rule.ts';

export const connectPeRule: Rule<'connect-pe'> = { problem: notDone, undone: peCoreOff };

export const reconnectRule: PlainRule<'reconnect'> = {
  touches: true,
  energy: 'none',
  restsOn: [
    'bridge',
    'input-circuit',
    'braking',
    'winding',
    'winding-motor',
    'bend-test',
    'idle-cores',
    'insulation',
    'isolation',
  ],
  problem: notDone,
  undone: peCoreOff,
  next: () => 'retry-all',
};

export const retryAllRule: PlainRule<'retry-all'> = {
  touches: false,
  energy: 'enable',
  restsOn: ['reconnect'],
  problem: retryProblem,
  // Before nothing is found, cable and motor are measured alone.
  next: (visit) => (tripsAsAWhole(visit) && visit.isolation === undefined ? 'isolation' : 'decide'),
};
