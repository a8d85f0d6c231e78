import type { FormField } from '../../../kernel/form/field.ts';
import { limitValue } from '../../../kernel/limits.ts';
import { formatRounded } from '../../../kernel/reading/format-reading.ts';
import type { Reading } from '../../../kernel/reading/reading.ts';
import { type Form, tick, ticked } from '../fields.ts';
import { oneReadingField } from '../ids.ts';
import { answerInLine, measuredAt, type Question } from '../question.ts';
import { busPoints, groupReading, highestOf, outputPoints, type PointGroup, supplyPoints } from './points.ts';

export type LockoutId = 'lockout-1' | 'lockout-2' | 'lockout-3';

/** Steps that prove by measurement that the drive is dead. `prove-again`: after a break of the work. */
export type DeadProofId = LockoutId | 'prove-again';

/** Steps with a reading of the DC bus. `bus-again`: after something that can have charged it. */
export type BusProofId = DeadProofId | 'bus-again';

export interface LockoutAnswer {
  lockedOut: boolean;
  /** The time on the drive's warning label has passed. */
  waited: boolean;
  /** The meter was proved on a known source before and after. */
  meterProved: boolean;
  /** PE, the reference of the measurements, was shown to be connected. */
  peProved: boolean;
  /** The highest reading at the supply terminals, to each other and to PE, AC and DC. */
  supplyVoltage: Reading;
  /** The highest reading at U, V, W, to each other and to PE, AC and DC. */
  outputVoltage: Reading;
  /** The highest of DC+ to DC−, DC+ to PE, DC− to PE, on a DC range. */
  busVoltage: Reading;
}

/** The bus measured once more under a lockout that holds. */
export type BusAnswer = Pick<LockoutAnswer, 'meterProved' | 'busVoltage'>;

const lockoutTicks = [
  tick('lockedOut', 'The supply is locked out and tagged. I keep the key.', 'Locked out'),
  tick('waited', 'The time on the drive’s warning label has passed.', 'waited'),
  tick('meterProved', 'The meter was proved on a known source before and after, on AC and on DC.', 'meter proved'),
  tick('peProved', 'PE at the drive is proved: continuity to bare metal of the machine.', 'PE proved'),
];
const busTick = tick('meterProved', 'The meter was proved on a known DC source before and after.', 'meter proved');

/** What is not ticked was not done; the guide then says what is missing. */
function readLockout(form: Form): LockoutAnswer | undefined {
  const busVoltage = groupReading(form, busPoints);
  // Version 1 asked for the highest of all points in one field, and not for PE.
  const oneReading = ticked(form, oneReadingField);
  const supplyVoltage = oneReading ? busVoltage : groupReading(form, supplyPoints);
  const outputVoltage = oneReading ? busVoltage : groupReading(form, outputPoints);
  if (!begun(form, asked(allPoints)) || !busVoltage || !supplyVoltage || !outputVoltage) return undefined;
  return {
    lockedOut: ticked(form, 'lockedOut'),
    waited: ticked(form, 'waited'),
    meterProved: ticked(form, 'meterProved'),
    peProved: oneReading || ticked(form, 'peProved'),
    supplyVoltage,
    outputVoltage,
    busVoltage,
  };
}

function readBus(form: Form): BusAnswer | undefined {
  const busVoltage = groupReading(form, busPoints);
  return busVoltage && begun(form, asked([busPoints]))
    ? { meterProved: ticked(form, 'meterProved'), busVoltage }
    : undefined;
}

const allPoints = [supplyPoints, outputPoints, busPoints];
const asked = (groups: readonly PointGroup[]) => groups.flatMap(({ fields }) => fields);

function begun(form: Form, points: readonly FormField[]): boolean {
  const readings = new Set(points.filter(({ kind }) => kind === 'reading').map(({ id }) => id));
  return Object.entries(form).some(([id, value]) => (readings.has(id) ? value.trim() !== '' : value === 'yes'));
}

/** What is ticked, the highest reading of each group, and when. */
const lineOfPoints =
  (ticks: readonly FormField[], groups: readonly PointGroup[]): Question<unknown>['line'] =>
  (form, readAt) => {
    const highest = groups.flatMap((group) => {
      const { text } = highestOf(form, group) ?? {};
      return text === undefined ? [] : [`${group.older.inLine} ${text}`];
    });
    return [...ticks.flatMap((field) => answerInLine(field, form)), ...highest, ...measuredAt(readAt)].join(', ');
  };

const touch = () => formatRounded(limitValue('touch-voltage'), 'V');
const pause = () => formatRounded(limitValue('work-pause'), 'min');

/** The points of the proof, in the order of the fields. */
const proveDead = [
  'Prove the meter on a known source, AC and DC.',
  `Prove the PE that you measure to: on volts no voltage between the drive’s PE and bare metal of the machine, then on ohms at most ${formatRounded(limitValue('pe-dead-short'), 'Ω')}. Set the meter back to volts.`,
  'Measure each point below, the motor at rest. In a row with several terminals type the highest reading, without its sign.',
  'Prove the meter again.',
];

const askLockout: Pick<Question<LockoutAnswer>, 'fields' | 'groups' | 'older' | 'read' | 'line'> = {
  fields: [...lockoutTicks, ...asked(allPoints)],
  groups: allPoints,
  older: allPoints.map(({ older }) => older),
  read: readLockout,
  line: lineOfPoints(lockoutTicks, allPoints),
};

export const firstLockout: Question<LockoutAnswer> = {
  title: 'Lock out, wait, measure the DC bus',
  instructions: [
    'Switch off, lock out and tag every supply after your site’s procedure, control and brake supplies and a shared bus too. Keep the key, and try to start.',
    'Block or relieve every other stored energy: springs, pressure, hanging loads.',
    'Wait the time on the drive’s warning label.',
    ...proveDead,
  ],
  why: `The bus capacitors stay charged after switch-off, filters keep DC at the supply terminals, and a motor that turns feeds U, V and W. Only the measurement says that all of them are dead: go on when every point is below ${touch()}.`,
  when: 'Before every step near conductors, and again after every step with power.',
  caution: 'Until the bus is measured, everything in the drive counts as live. Only qualified persons measure.',
  ...askLockout,
};

export const laterLockout: Question<LockoutAnswer> = {
  ...firstLockout,
  title: 'Lock out again, wait, measure the DC bus',
};

export const proveAgain: Question<LockoutAnswer> = {
  title: 'Prove it dead again',
  instructions: [
    'Before you touch anything: look whether your lock and tag are on every supply, and the key is with you. If not, lock out again. Try to start.',
    'Look whether anything was changed while you were away: leads, connectors, covers, supports. Wait the time on the label if it can have had power.',
    ...proveDead,
  ],
  why: `It was proved dead in an earlier stretch of work. Since then there was a break of more than ${pause()}, another day, another device, or a clock that was set back. A lock can be taken off and a bus can recover meanwhile.`,
  when: `After a break of more than ${pause()}, on another day or another device, before anything is touched or switched on.`,
  caution: 'Until it is measured again, everything in the drive counts as live. Only qualified persons measure.',
  ...askLockout,
};

export const busAgain: Question<BusAnswer> = {
  title: 'Measure the DC bus again',
  instructions: [
    'Still locked out. Nobody moves the axis.',
    'Prove the meter on a known DC source. Measure each point below on a DC range, without its sign. Prove the meter again.',
  ],
  why: 'An axis that is moved by hand with its leads on charges the bus, and so can the voltage of an instrument that measures at it.',
  when: 'After the axis was moved by hand, and after readings at the output stage.',
  caution: 'Until the bus is measured again, it counts as charged.',
  fields: [busTick, ...busPoints.fields],
  groups: [busPoints],
  older: [busPoints.older],
  read: readBus,
  line: lineOfPoints([busTick], [busPoints]),
};

export const lockoutProblems = {
  'not-locked-out': 'Not locked out. Nothing is touched before the supply is locked out and tagged.',
  'not-waited': 'The waiting time has not passed. Wait what the label says, then measure.',
  'meter-not-proved': 'Prove the meter on a known source before and after. A dead meter shows zero on a live bus.',
  'pe-not-proved': 'Prove PE at the drive first. Against a PE that is not connected every point reads zero.',
  'supply-not-measured':
    'Type what each point of the supply terminals reads, AC and DC. A point that is not measured is not proved.',
  'supply-live': `Stop. The supply terminals are not shown to be below ${touch()}. Keep away, and find out what feeds them: another supply, or the capacitors of a filter.`,
  'output-not-measured':
    'Type what each point of U, V and W reads, AC and DC. A point that is not measured is not proved.',
  'output-live': `Stop. U, V and W are not shown to be below ${touch()}. Keep away, and find out what feeds them: a motor that turns, or the bus.`,
  'bus-not-measured':
    'Type what you measured at the bus: DC+ to DC−, and each to PE. A waiting time alone proves nothing.',
  'bus-not-discharged': `Stop. The bus is not shown to be below ${touch()}. Keep away and find out what feeds it.`,
};
