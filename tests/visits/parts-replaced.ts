import {
  begun,
  bridge,
  deviceOffTried,
  feedbackOffTried,
  insulation,
  isolation,
  leadsOff,
  leadsOffTried,
  lockedAgain,
  type Row,
  windingAtMotor,
} from './row.ts';

/** Two parts or three are proven bad, and are replaced together. */
export const partsReplaced: Record<string, Row> = {
  'drive-motor-and-cable': {
    typed: [
      ...begun('Bridge', 'on-enable', { seenMotor: 'burnt' }),
      ...leadsOffTried('trips'),
      bridge({ plusU: '0.6 Ω' }),
      insulation(['20k', '21k', '20k'], { PE: '0.2 Ω' }),
      isolation(
        ['20k', '21k', '20k'],
        {
          cable: ['90k', '2.2 GΩ', '2.1 GΩ'],
          bonded: ['88k', '1.8 GΩ', '1.9 GΩ'],
          motor: ['26k', '26k', '27k'],
        },
        { suspectedAnyway: 'yes', joinedPE: '0.2 Ω' },
      ),
    ],
    decision: 'replace',
    replace: {
      drive: ['trips-without-motor', 'bridge-bad'],
      motor: ['isolation-bad'],
      'motor-cable': ['isolation-bad'],
    },
    why: 'Motor alone 26 kΩ, core U alone 90 kΩ, DC+ to U 0.6 Ω.',
  },
  'drive-and-cable': {
    typed: [
      ...begun('Carriage', 'on-enable', { seenMotorCable: 'chafed' }),
      ...leadsOffTried('trips'),
      bridge({ plusW: '2.1 Ω' }),
      insulation(['0.21 MΩ', '0.20 MΩ', '0.21 MΩ']),
      isolation(
        ['0.21 MΩ', '0.20 MΩ', '0.21 MΩ'],
        { cable: ['2.3 GΩ', '2.4 GΩ', '0.21 MΩ'], bonded: ['1.9 GΩ', '2.0 GΩ', '0.2 MΩ'], motor: '>1.8G' },
        { suspectedAnyway: 'yes' },
      ),
      windingAtMotor('1.20 Ω', '1.21 Ω', '1.21 Ω'),
    ],
    decision: 'replace',
    replace: { drive: ['trips-without-motor', 'bridge-bad'], 'motor-cable': ['isolation-bad'] },
    stay: ['motor'],
    why: 'Core W alone reads 0.21 MΩ; the motor passes alone and by its winding.',
  },
  'motor-with-its-cable': {
    typed: [
      ...begun('Lift', 'on-enable'),
      ...leadsOffTried('no-trip'),
      bridge(),
      insulation('<10k', { PE: '0.2 Ω' }),
      isolation(
        '<10k',
        { cable: ['>700M', '60k', '>700M'], bonded: ['>700M', '58k', '>700M'], motor: '4 kΩ' },
        { joinedPE: '0.2 Ω', cablePE: '>700M' },
      ),
    ],
    decision: 'replace',
    replace: { motor: ['isolation-bad'], 'motor-cable': ['isolation-bad'] },
    stay: ['drive'],
    why: 'Motor 4 kΩ, core V 60 kΩ; the drive reads good and does not trip without them.',
  },
  'feedback-and-motor-cable': {
    typed: [
      ...begun('Carriage', 'control-off', { seenMotorCable: 'chafed', seenFeedbackCable: 'chafed' }),
      ...feedbackOffTried('no-trip'),
      ...deviceOffTried('trips'),
      lockedAgain('lockout-3'),
      leadsOff,
      bridge(),
      insulation('0.05 MΩ'),
      isolation(
        '0.05 MΩ',
        { cable: ['2.0 GΩ', '0.052 MΩ', '2.1 GΩ'], bonded: ['1.7 GΩ', '0.05 MΩ', '1.8 GΩ'], motor: '>700M' },
        { suspectedAnyway: 'yes' },
      ),
      windingAtMotor('1.21 Ω', '1.20 Ω', '1.21 Ω'),
    ],
    decision: 'replace',
    replace: {
      'feedback-cable': ['feedback-cable-damaged', 'trip-follows-feedback-cable'],
      'motor-cable': ['isolation-bad'],
    },
    stay: ['drive', 'motor'],
    why: 'The motor cable looks chafed, so it is tested although the feedback explains the trip.',
  },
  'burnt-drive-bad-motor': {
    typed: [
      ...begun(
        'Bridge',
        'on-enable',
        { reseated: 'none', seenDrive: 'burnt' },
        { observation: 'known', axesOnDrive: '2' },
      ),
      leadsOff,
      bridge({ plusU: '0.3 Ω', plusV: '0.4 Ω', minusU: '0.5 Ω' }),
      insulation('8k'),
      isolation('8k', { motor: ['8.1k', '8.0k', '8.1k'] }),
    ],
    decision: 'replace',
    replace: { drive: ['drive-burnt', 'bridge-bad'], motor: ['isolation-bad'] },
    stay: ['motor-cable'],
    why: 'No power on a burnt drive; the motor alone reads 8 kΩ.',
  },
};
