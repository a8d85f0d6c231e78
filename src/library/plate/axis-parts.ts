import type { LimitId } from '../../kernel/limits.ts';

/** A way to look at or measure a part, with the page that shows how. */
interface Way {
  text: string;
  path: string;
}

/** A part of the axis on the front page's drawing, in the order in which the current meets it. */
export interface AxisPart {
  id: string;
  name: string;
  /** What fails there, a sentence each. */
  fails: string[];
  measured: Way[];
  /** The limits that its readings are judged by, the most asked for first. */
  limits: LimitId[];
}

const when = '/articles/trip/when-it-trips/';
const message = '/articles/trip/find-the-drive-and-axis/';

export const axisParts: AxisPart[] = [
  {
    id: 'supply',
    name: 'Supply',
    fails: [
      'A missing phase or a dip shows as bus undervoltage, often in the same second as the trip. The message that came first leads.',
      'A shorted input rectifier blows the fuses when power comes on.',
    ],
    measured: [
      { text: 'Lock it out before anything else', path: '/articles/safety/lockout-and-stored-energy/' },
      { text: 'Read the messages that came together', path: message },
      { text: 'The input rectifier, by diode test', path: '/articles/measuring/braking-circuit-and-input/' },
    ],
    limits: ['touch-voltage'],
  },
  {
    id: 'drive',
    name: 'Drive',
    fails: [
      'Its message says that too much current went through the output stage, or seemed to. It names no part.',
      'Heat kills it slowly: a dead fan, a blocked filter, a warm cabinet.',
    ],
    measured: [
      { text: 'Read the message, find the drive and the axis', path: message },
      { text: 'When it trips: the first suspects', path: when },
      { text: 'A failed output stage: what to replace', path: '/articles/trip/output-stage-failure/' },
    ],
    limits: ['short-circuit-withstand', 'retry-doubt'],
  },
  {
    id: 'dc-bus',
    name: 'DC bus',
    fails: [
      'Its capacitors stay charged after switch-off. An open discharge resistor keeps them charged for hours.',
      'What is left of the charge falsifies every resistance reading.',
    ],
    measured: [
      { text: 'Prove it dead: live, dead, live', path: '/articles/safety/proving-dead/' },
      { text: 'Judge fuses, rectifier and bus', path: '/calculators/input-circuit/' },
      { text: 'How long it takes to discharge', path: '/calculators/discharge/' },
      { text: 'Why it stays charged', path: '/articles/safety/the-dc-bus/' },
    ],
    limits: ['touch-voltage', 'resistance-residual-voltage', 'work-pause'],
  },
  {
    id: 'braking-resistor',
    name: 'Braking resistor',
    fails: [
      'Open, shorted, or through to its housing; its lead, and the transistor that switches it. Then the trip comes on braking, stopping or lowering.',
      'It stays hot for long, and it is at bus voltage in service.',
    ],
    measured: [
      { text: 'Judge resistor, housing and chopper', path: '/calculators/braking-circuit/' },
      {
        text: 'Dead and cool: its ohms, its housing, its terminals',
        path: '/articles/measuring/braking-circuit-and-input/',
      },
    ],
    limits: ['braking-resistor-off-plate', 'braking-resistor-to-pe'],
  },
  {
    id: 'output-stage',
    name: 'Output stage',
    fails: [
      'Six switches join U, V and W to the bus. A switch that fails is mostly a short.',
      'It seldom fails alone: a bad cable or motor kills the next drive too.',
    ],
    measured: [
      { text: 'Judge six readings', path: '/calculators/bridge/' },
      { text: 'Judge a diode test', path: '/calculators/bridge-diode/' },
      { text: 'Take the six readings', path: '/articles/measuring/bridge-check/' },
      { text: 'A failed output stage: what to replace', path: '/articles/trip/output-stage-failure/' },
    ],
    limits: ['bridge-short', 'bridge-tolerance', 'diode-short'],
  },
  {
    id: 'motor-leads',
    name: 'Motor leads',
    fails: [
      'U, V and W are taken off here before anything is measured: the winding joins them, and a shorted transistor then looks balanced.',
      'A loose or burnt terminal, a filter, choke or contactor between drive and motor: measure before and behind it.',
    ],
    measured: [
      { text: 'Disconnect before you test', path: '/articles/safety/safe-measurement/#disconnect-before-you-test' },
      { text: 'Hook up the insulation test', path: '/articles/measuring/insulation-testing/' },
      { text: 'Instruments and leads', path: '/articles/safety/instruments-and-leads/' },
    ],
    limits: ['pe-dead-short', 'idle-core-free', 'tips-together'],
  },
  {
    id: 'motor-cable',
    name: 'Motor cable',
    fails: [
      'A cable that moves is a wearing part: at both clamps, in the travelling bend and at the plug.',
      'A broken core passes every insulation test; the winding resistance through the cable shows it.',
    ],
    measured: [
      { text: 'Cable or motor?', path: '/calculators/isolation/' },
      { text: 'Ohms of PE and cores by length', path: '/calculators/core-resistance/' },
      { text: 'The cable while it bends', path: '/calculators/bend-test/' },
      { text: 'What a cable of this length should read', path: '/calculators/cable-length/' },
      { text: 'Is the moving cable bad?', path: '/articles/trip/cable-and-connector-failure/' },
    ],
    limits: ['after-trip-point', 'moving-bend-radius', 'bend-jump', 'winding-open'],
  },
  {
    id: 'connectors',
    name: 'Connectors',
    fails: [
      'Water or coolant joins pin to pin and pin to shell: bad at night, good on the bench.',
      'A pin that has lost its grip turns brown. Both halves are replaced.',
    ],
    measured: [
      { text: 'Connectors and water', path: '/articles/trip/cable-and-connector-failure/#connectors-and-water' },
      { text: 'The winding, through the cable and at the motor', path: '/articles/measuring/winding-resistance/' },
      {
        text: 'Hot, cold or wet: can you believe the reading?',
        path: '/articles/measuring/choosing-the-limit/#temperature',
      },
    ],
    limits: ['winding-joint', 'after-trip-point'],
  },
  {
    id: 'motor',
    name: 'Motor',
    fails: [
      'Winding to frame: the insulation test shows it. Winding to winding and many shorted turns: the winding resistance.',
      'A few shorted turns pass every meter. Only a surge test or a repair shop finds them.',
    ],
    measured: [
      { text: 'Judge insulation', path: '/calculators/insulation/' },
      { text: 'Compare windings', path: '/calculators/winding/' },
      { text: 'Which test sees which fault', path: '/articles/trip/motor-failure/#which-test-sees-which-fault' },
    ],
    limits: ['after-trip-point', 'winding-unbalance-good', 'winding-unbalance-bad'],
  },
  {
    id: 'brake',
    name: 'Brake',
    fails: [
      'It does not open, or opens late: the motor works against it, and the trip comes at the start of the move.',
      'It does not hold: the axis sinks. A holding brake is no support for work below it.',
    ],
    measured: [
      { text: 'Judge coil, cores, voltage and release', path: '/calculators/brake/' },
      { text: 'The brake and its coil, measured dead', path: '/articles/trip/mechanics-tuning-and-brake/#the-brake' },
      {
        text: 'When a lower test voltage is right',
        path: '/articles/measuring/choosing-the-limit/#when-a-lower-voltage-is-right',
      },
      { text: 'Gravity-loaded axes', path: '/articles/safety/gravity-loaded-axes/' },
    ],
    limits: ['test-voltage-extra-low', 'idle-core-free'],
  },
  {
    id: 'feedback',
    name: 'Feedback',
    fails: [
      'A short of its supply trips the drive at power on, with the control off.',
      'A wrong offset or a slipping device makes little torque from much current, often after a repair.',
    ],
    measured: [
      { text: 'The test with the plugs', path: '/articles/trip/feedback-faults/#the-test-with-the-plugs' },
      { text: 'What the meter can add', path: '/articles/trip/feedback-faults/#what-the-meter-can-add' },
    ],
    limits: ['retry-doubt', 'touch-voltage'],
  },
];
