import type { PageHead } from '../about.ts';

export const page: PageHead = {
  intro:
    'Reads the recording of a trip from any recorder and holds it against physics: how fast a current can rise, whether the currents add up, whether the motor turned as the drive thought. It says what the trace speaks for, what it speaks against, and of what it says nothing. It never proves a part good or bad.',
  hazards: ['lethal-voltage', 'unexpected-motion', 'arc-flash'],
  conditions: 'a recording that the drive or a scope has kept; no new trip made for it with a part that is suspect',
  preconditions: [
    'The recording is there already, or it is read out of the drive’s own memory. Reading it out touches nothing live.',
    'Nobody makes the drive trip again for a recording before bridge, insulation and winding have been measured: each trip can destroy more.',
    'Clamps and probes are set with the supply locked out and proven dead. A person who records on a live machine is qualified and permitted to.',
  ],
  otherWords: [
    'oscilloscope',
    'scope',
    'recorder',
    'recording',
    'CSV',
    'black box',
    'waveform',
    'phase current',
    'current slope',
    'di/dt',
    'fault memory',
    'data log',
    'transient',
  ],
  related: ['trip/when-it-trips', 'trip/mechanics-tuning-and-brake', 'trip/cable-and-connector-failure'],
};
