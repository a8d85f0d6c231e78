import type {
  BusSilence,
  MotionSilence,
  OrdinarySilence,
  OscillationSilence,
  RotationSilence,
  SlopeSilence,
  SumSilence,
  ZeroSilence,
} from './rule/input.ts';

const tripNotSeen =
  'nothing shows that the trip is in the file: the currents do not end in it. If it is, state its moment; otherwise take a recording that goes on after the trip.';
const levelUnknown =
  'it is not stated in amperes at which current the drive trips. Take the overcurrent level from the drive manual.';
const scaleUnknown =
  'the currents are not known in amperes. Take the scale from the drive manual, or record with a clamp.';
const noInductance =
  'the inductance of the motor is not stated. Take it from the data sheet, or measure it between two terminals, locked out, with the leads off.';
const noBus = 'the bus voltage is neither in the file nor stated. Record it, or state it.';
const clipped = 'the currents are cut off at the end of a range. Record with a range that holds the trip level.';
const gap = 'samples are missing at the trip. Export the recording again, or record fewer columns.';

// Why a rule makes no statement, and what would let it. Each follows "No statement on …: ".

export const slopeSilences: Record<SlopeSilence, string> = {
  'no-amperes': scaleUnknown,
  'no-inductance': noInductance,
  'no-bus': noBus,
  gap,
  coarse: 'within one sample the motor itself could let the current rise as far.',
  filtered:
    'a slow rise says nothing as long as it is not known that each sample is stored as measured. Record with the filter off, or find it in the manual.',
  'level-unknown': `${levelUnknown} Without it the current that tripped may lie between two samples.`,
  'below-level':
    'no recorded current reached the trip level: the one that tripped lies between two samples. A faster recording, or the currents that the drive stores at the trip, would tell.',
  clipped,
  between:
    'the rise is near what the motor allows. A faster recording would tell, and so would the least inductance of the motor at its peak current.',
};

export const sumSilences: Record<SumSilence, string> = {
  'two-columns': 'only two currents were recorded. All three would tell if the drive, or the scope, measures each.',
  'by-construction':
    'one of the three is computed from the others, as drives with two sensors do, so that the sum is zero whatever happens. Only a clamp around all three cores together would tell.',
  gap,
  'level-unknown': levelUnknown,
  'below-level':
    'no recorded current reached the trip level, and a current between two samples is in no sum. A faster recording would tell.',
  between:
    'the sum is near the limit. The three currents at standstill, without an enable, show what the sensors are off.',
};

export const ordinarySilences: Record<OrdinarySilence, string> = {
  'no-amperes': scaleUnknown,
  'level-unknown': levelUnknown,
  high: 'the currents were high, so they are a reason for the trip themselves.',
  filtered:
    'it is not known that each sample is stored as measured. Record with the filter off, or find it in the manual.',
  'no-inductance': noInductance,
  'no-bus': noBus,
  coarse: 'between two samples the current could have reached the trip level through the motor as well.',
  clipped,
  gap,
  'trip-not-seen': tripNotSeen,
};

export const rotationSilences: Record<RotationSilence, string> = {
  'no-speed': 'no speed was recorded. With a column of the speed it would tell.',
  'no-pairs': 'the pole pairs are not stated.',
  'too-little':
    'the motor did not turn long enough with enough current, or the samples are too far apart. A recording of some turns, with ten samples a turn of the currents or more, would tell.',
  'pairs-do-not-fit': 'frequency and speed do not fit the stated pole pairs anywhere in the file.',
  agrees:
    'they agree. They do that whatever is wrong with the encoder, if the drive takes angle and speed from it. Only a speed from another source would tell.',
  between: 'they differ by less than what load and noise may do. A longer recording at one speed would tell.',
};

export const zeroSilences: Record<ZeroSilence, string> = {
  'no-speed':
    'no speed in min⁻¹ was recorded, and at rest a sound phase may be at zero. With a column of the speed it would tell.',
  'at-rest':
    'one phase was at zero up to the trip, and the motor hardly turned. At that angle a sound phase may be at zero, and a motor with an open core does not start. The winding balance through the cable tells.',
  coarse:
    'the samples are too far apart for this speed. A recording with five samples a turn of the currents, or more, would tell.',
  'no-pairs': 'the pole pairs are not stated, and without them it is not known how far the motor turned.',
  'trip-not-seen': tripNotSeen,
  'too-short':
    'in the last moments the motor turned too little with current. At a higher speed a recording would tell; the winding balance through the cable tells in any case.',
};

export const oscillationSilences: Record<OscillationSilence, string> = {
  'none-found': 'none that is regular was found.',
  'few-cycles': 'there are too few cycles up to the trip. A longer recording would tell.',
  irregular: 'it is not regular.',
  small: 'it is small, and does not grow.',
  'at-the-frequency':
    'it has the frequency of the currents or a multiple. An unequal phase or sensor makes that. A recording at another speed tells: an oscillation of a loop keeps its frequency.',
  moves: 'the current swings no faster than moves to and fro make it.',
  'frequency-unknown':
    'without speed and pole pairs it is not known whether it has the frequency of the currents themselves. Record the speed, and state the pole pairs.',
  'level-unknown': levelUnknown,
  ordinary: 'the currents were ordinary. Many a machine swings all the time without a trip.',
  'trip-not-seen': tripNotSeen,
};

export const motionSilences: Record<MotionSilence, string> = {
  'no-speed': 'no speed was recorded. With columns of speed and torque command it would tell.',
  'level-unknown': levelUnknown,
  ordinary: 'the currents were ordinary. A load that stops an axis takes a high one.',
  'direction-unknown': 'nothing tells in which direction the motor drove. A column with the torque command would.',
  'no-loss': 'the speed went as the motor drove.',
  'too-fast': 'the current rose too fast for a load.',
  'trip-not-seen': tripNotSeen,
};

export const busSilences: Record<BusSilence, string> = {
  'no-column': 'it was not recorded. With a column of it, it would tell.',
  'no-speed':
    'it rose, and without a speed nothing tells whether the motor slowed down. With a column of the speed it would tell.',
  between: 'it moved, but not beyond what acceleration and braking do.',
  'level-unknown': `it fell, and it is open what came first, the fall or a high current: ${levelUnknown}`,
  'current-first': 'it fell after the current had risen. A high current pulls it down.',
  'trip-not-seen': tripNotSeen,
};
