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
  'nothing shows that the trip is in the file: the currents do not end in it. If it is, state its moment.';

// Why a rule makes no statement. Each follows "No statement on …: ".

export const slopeSilences: Record<SlopeSilence, string> = {
  'no-amperes': 'the currents are not known in amperes.',
  'no-inductance': 'the inductance of the motor is not stated.',
  'no-bus': 'the bus voltage is neither in the file nor stated.',
  gap: 'samples are missing at the trip.',
  coarse: 'within one sample the motor itself could let the current rise as far. A faster recording would tell.',
  filtered: 'a slow rise says nothing as long as it is not known that each sample is stored as measured.',
  'level-unknown':
    'it is not stated at which current the drive trips, so that the current that tripped may lie between two samples.',
  'below-level': 'no recorded current reached the trip level: the one that tripped lies between two samples.',
  clipped: 'the currents are cut off at the end of a range.',
  between: 'the rise is near what the motor allows.',
};

export const sumSilences: Record<SumSilence, string> = {
  'two-columns': 'only two currents were recorded.',
  'by-construction':
    'one of the three is computed from the others, as drives with two sensors do, so that the sum is zero whatever happens.',
  gap: 'samples are missing at the trip.',
  'level-unknown': 'it is not stated at which current the drive trips.',
  'below-level': 'no recorded current reached the trip level, and a current between two samples is in no sum.',
  between: 'the sum is near the limit.',
};

export const ordinarySilences: Record<OrdinarySilence, string> = {
  'no-amperes': 'the currents are not known in amperes.',
  'level-unknown': 'it is not stated at which current the drive trips.',
  high: 'the currents were high, so they are a reason for the trip themselves.',
  filtered: 'it is not known that each sample is stored as measured.',
  'no-inductance': 'the inductance of the motor is not stated.',
  'no-bus': 'the bus voltage is neither in the file nor stated.',
  coarse: 'between two samples the current could have reached the trip level through the motor as well.',
  clipped: 'the currents are cut off at the end of a range.',
  gap: 'samples are missing at the trip.',
  'third-unseen':
    'the third current was not measured by a sensor of its own, so that a path to earth in that phase would not show.',
  'sum-off': 'at the trip the three currents do not add up.',
  'trip-not-seen': tripNotSeen,
};

export const rotationSilences: Record<RotationSilence, string> = {
  'no-speed': 'no speed was recorded.',
  'no-pairs': 'the pole pairs are not stated.',
  'too-little': 'the motor did not turn long enough with enough current, or the samples are too far apart.',
  'pairs-do-not-fit': 'frequency and speed do not fit the stated pole pairs anywhere in the file.',
  agrees: 'they agree. They do that whatever is wrong with the encoder, if the drive takes angle and speed from it.',
  between: 'they differ by less than what load and noise may do.',
};

export const zeroSilences: Record<ZeroSilence, string> = {
  'no-speed': 'no speed in min⁻¹ was recorded, and at rest a sound phase may be at zero.',
  'at-rest':
    'one phase was at zero up to the trip, and the motor hardly turned. At that angle a sound phase may be at zero, and a motor with an open core does not start.',
  'too-short': 'the motor turned too little with current.',
};

export const oscillationSilences: Record<OscillationSilence, string> = {
  'none-found': 'none that is regular was found.',
  'few-cycles': 'there are too few cycles up to the trip.',
  irregular: 'it is not regular.',
  small: 'it is small, and does not grow.',
  'at-the-frequency': 'it has the frequency of the currents or a multiple. An unequal phase or sensor makes that.',
  moves: 'the current swings no faster than moves to and fro make it.',
  'frequency-unknown':
    'without speed and pole pairs it is not known whether it has the frequency of the currents themselves.',
  'level-unknown': 'it is not stated in amperes at which current the drive trips.',
  ordinary: 'the currents were ordinary. Many a machine swings all the time without a trip.',
  'trip-not-seen': tripNotSeen,
};

export const motionSilences: Record<MotionSilence, string> = {
  'no-speed': 'no speed was recorded.',
  'level-unknown': 'it is not stated in amperes at which current the drive trips.',
  ordinary: 'the currents were ordinary. A load that stops an axis takes a high one.',
  'direction-unknown': 'nothing tells in which direction the motor drove. A column with the torque command would.',
  'no-loss': 'the speed went as the motor drove.',
  'too-fast': 'the current rose too fast for a load.',
};

export const busSilences: Record<BusSilence, string> = {
  'no-column': 'it was not recorded.',
  'no-speed': 'it rose, and without a speed nothing tells whether the motor slowed down.',
  between: 'it moved, but not beyond what acceleration and braking do.',
  'level-unknown':
    'it fell, and without the current at which the drive trips it is open what came first, the fall or a high current.',
  'current-first': 'it fell after the current had risen. A high current pulls it down.',
  'trip-not-seen': tripNotSeen,
};
