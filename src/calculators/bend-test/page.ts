import type { PageHead } from '../about.ts';

export const page: PageHead = {
  intro:
    'For a trip that comes when a cable moves: the loops of its cores at rest and while it is moved by hand, then its insulation at rest in several positions. It says which core opens or leaks, what proves it, and what a quiet test leaves open.',
  hazards: ['lethal-voltage', 'stored-energy', 'test-voltage', 'hanging-axis'],
  conditions:
    'locked out, bus dead, cable off at both ends, below 25 V while it moves, nobody near it at 500 V, axis held',
  preconditions: [
    'The supply is locked out, and the DC bus was measured dead.',
    'The cable is off at both ends, screen too, its PE core last. PE goes back on first, before anything gets power.',
    'While the cable is moved, only a meter below 25 V is on it. Never an insulation tester.',
    'While the test voltage is on, the cable is fixed and nobody can touch it or its ends. It is discharged before the next bend.',
    'Feedback, sensor and brake cores never get the test voltage: they are joined to PE.',
    'A hanging axis is supported or pinned, and stays so. Nobody pulls it by hand to bend the cable.',
  ],
  otherWords: [
    'bend test',
    'flex test',
    'wiggle test',
    'wiggle the cable',
    'intermittent open',
    'intermittent cable',
    'broken core',
    'cable breaks when it moves',
    'drag chain cable',
    'min max hold',
    'min/max recording',
    'cable carrier',
  ],
  related: ['trip/cable-and-connector-failure', 'measuring/cable-or-motor', 'trip/feedback-faults'],
};
