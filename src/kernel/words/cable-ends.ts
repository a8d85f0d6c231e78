import type { Step } from '../assessment/assessment.ts';
import type { CableEndFinding, CableEndStepCode } from '../assessment/cable-ends.ts';
import type { FindingSentences, StepSentences } from './sentences.ts';

/** What insulation and isolation both say about what else hangs on the cable. */
export const cableEndFindings: FindingSentences<CableEndFinding> = {
  'idle-cores-at-pe': () =>
    'The idle cores were joined and connected to PE, so a leak from a phase to one of them shows.',
  'idle-cores-none': () => 'The cable has no idle cores.',
  'idle-cores-free': () =>
    'The idle cores hung free. A phase core that is shorted to a brake or sensor core passes this test, and the next enable puts the bus voltage on an extra-low-voltage circuit.',
  'idle-cores-not-stated': () =>
    'It is not stated how the brake, sensor and other idle cores were connected. If they hang free, a phase core that is shorted to one of them passes this test.',
  'filter-fitted': () =>
    'An output filter or a surge suppressor is on the cable. Its resistors or varistors lead to PE, so these readings say nothing of the insulation.',
};

export const cableEndSteps: StepSentences<Step<CableEndStepCode>> = {
  'join-idle-cores': () =>
    'Take brake, sensor and all other idle cores off at the drive end, join them and connect them to PE. Then repeat the readings. For a motor alone do the same with its idle pins.',
  'take-filter-off': () => 'Take the filter or suppressor off the cable and repeat the readings.',
};
