import { limitValue } from '../../kernel/limits.ts';
import type { StepId } from './ids.ts';

/** A wait that a step asks for. A wait that has passed proves nothing: what it is for is measured. */
export interface WaitKind {
  id: 'label' | 'resistor' | 'test' | 'discharge' | 'between-tries';
  name: string;
  /** What to do when it has passed. */
  after: string;
  /** How long, in minutes, for the person to choose from. */
  minutes: readonly number[];
}

const label: WaitKind = {
  id: 'label',
  name: 'The time on the drive’s warning label',
  after: 'Now measure each point. The time proves nothing.',
  minutes: [1, 5, 10, 15, 30],
};

const resistor: WaitKind = {
  id: 'resistor',
  name: 'The braking resistor cools',
  after: 'Feel for its heat without touching it, then measure.',
  minutes: [10, 20, 30],
};

const betweenTries: WaitKind = {
  id: 'between-tries',
  name: 'The charging circuit cools between two tries',
  after: 'Try again, if the manual’s time has passed.',
  minutes: [1, 2, 5, 10],
};

/** One test, and the discharge after it: so many times as long as the test. */
const test = (): WaitKind[] => {
  const minutes = limitValue('reading-time');
  return [
    {
      ...{ id: 'test', name: 'The test voltage is on', minutes: [minutes] },
      after: 'Read the tester. Then switch it off, and discharge.',
    },
    {
      ...{ id: 'discharge', name: 'The winding discharges', minutes: [minutes * limitValue('discharge-after-test')] },
      after: 'See on the tester or a meter that no voltage is left before anyone touches it.',
    },
  ];
};

/** The waits that belong to a step. They run beside the work, and several at a time. */
export function waitsOf(id: StepId): WaitKind[] {
  if (id.startsWith('lockout-') || id === 'prove-again') return [label];
  if (id === 'insulation' || id === 'isolation') return test();
  if (id === 'braking') return [resistor];
  return id.startsWith('retry-') ? [betweenTries] : [];
}
