import { metal, noFault } from './fault-figures.ts';
import type { Fault } from './fault-types.ts';

export const feedbackFaults: readonly Fault[] = [
  {
    ...noFault,
    id: 'feedback-cable-short',
    label: 'feedback cable shorted',
    cause: 'feedback-supply',
    bad: ['feedback-cable'],
    leaks: [{ a: 'feedback.cable.plus', b: 'feedback.cable.minus', ohms: metal }],
    circuit: 'feedback-cable',
    moments: ['control-off'],
    seen: [{ part: 'feedbackCable', damage: 'chafed', chance: 0.2 }],
  },
  {
    ...noFault,
    id: 'feedback-device',
    label: 'feedback device draws too much',
    cause: 'feedback-supply',
    bad: ['feedback-device'],
    leaks: [{ a: 'feedback.device.plus', b: 'feedback.device.minus', ohms: metal }],
    circuit: 'feedback-device',
    moments: ['control-off'],
  },
  // Unplugging and plugging cures the contact: the trip does not come back, and nothing has to be replaced.
  {
    ...noFault,
    id: 'feedback-contact',
    label: 'feedback contact, mended by plugging it again',
    cause: 'feedback-supply',
    bad: [],
    circuit: 'feedback-device',
    every: 0,
    moments: ['control-off'],
    hidden: 'watch',
  },
];
