import { cableFaults } from './cable-faults.ts';
import { driveFaults } from './drive-faults.ts';
import { noFault } from './fault-figures.ts';
import type { Fault } from './fault-types.ts';
import { feedbackFaults } from './feedback-faults.ts';
import { motorFaults } from './motor-faults.ts';

/** Nothing is bad: interference, a dip of the supply, one bump of the machine. It does not return in a retry. */
const nuisance: Fault = {
  ...noFault,
  id: 'nuisance',
  label: 'healthy axis, one nuisance trip',
  cause: 'interference',
  bad: [],
  moments: ['on-enable', 'on-acceleration', 'position-or-cable', 'when-hot', 'now-and-then'],
  every: 0,
  hidden: 'watch',
};

/** Every fault that the simulator knows. The order decides which case is drawn at random. */
export const singleFaults: readonly Fault[] = [
  ...driveFaults,
  ...feedbackFaults,
  ...cableFaults,
  ...motorFaults,
  nuisance,
];

/** Faults that occur together, by their ids. The first one sets the moment of the trip. */
export const combinations: readonly { id: string; label: string; of: string[] }[] = [
  { id: 'motor-took-cable', label: 'motor took its cable', of: ['frame-U', 'core-V-PE'] },
  { id: 'motor-took-cable-inside', label: 'motor took its cable, core to core', of: ['frame-V', 'core-U-V'] },
  { id: 'motor-and-cable-high', label: 'motor and cable, both in megohms', of: ['frame-W-high', 'core-U-screen-high'] },
  { id: 'motor-took-drive', label: 'motor took the drive', of: ['short-lower-U', 'frame-U'] },
  { id: 'turns-took-drive', label: 'shorted turns took the drive', of: ['short-upper-V', 'turns-V-many'] },
  { id: 'wet-motor-took-drive', label: 'wet motor took the drive', of: ['leaky-lower-W', 'motor-wet'] },
  { id: 'cable-took-drive', label: 'cable took the drive', of: ['short-upper-W', 'core-W-ground'] },
  { id: 'all-three', label: 'motor, cable and drive', of: ['short-lower-V', 'frame-V', 'core-V-screen'] },
  { id: 'all-three-high', label: 'all three, megohms', of: ['leaky-upper-U', 'frame-U-high', 'core-W-PE-high'] },
  { id: 'pe-and-frame', label: 'PE broken and winding to frame', of: ['frame-W', 'pe-broken'] },
  { id: 'pe-and-core', label: 'PE broken and core to ground', of: ['core-U-ground', 'pe-broken'] },
];
