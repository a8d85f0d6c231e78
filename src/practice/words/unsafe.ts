import { limitRange, limitValue } from '../../kernel/limits.ts';
import { formatRounded } from '../../kernel/reading/format-reading.ts';
import type { Unsafe } from '../case/unsafe-acts.ts';

const touch = () => formatRounded(limitValue('touch-voltage'), 'V');
const testVolts = () => formatRounded(limitRange('test-voltage-below-1000').to, 'V');

/** What was unsafe, and what it can cause. */
export const unsafeTexts: Record<Unsafe, () => string> = {
  'hands-with-power': () => 'Hands or tips on conductors while the supply was on. That kills.',
  'hands-without-lockout': () => 'Hands or tips on conductors without a lock. Somebody else can switch on.',
  'hands-on-charged-bus': () =>
    `Hands or tips on conductors while the bus was at ${touch()} or more. The capacitors keep their charge after switch-off.`,
  'bus-not-measured': () =>
    'Hands or tips on conductors before the bus was measured under this lockout. Waiting alone proves nothing.',
  'meter-not-proved': () =>
    'A voltage was measured with a meter that was not proved on a known source. A dead meter shows zero on a live bus.',
  'measured-live': () =>
    'Measured in the cabinet with power on. That is energised work, and no step of this visit asks for it.',
  'touched-without-support': () =>
    'Worked on the axis before it was supported. It can fall, and its brake alone held it.',
  'winding-not-discharged': () =>
    'Touched the conductors after an insulation test without discharging. Winding and cable keep the test voltage.',
  'resistance-on-live': () =>
    'A resistance or diode range on points with a voltage between them. The reading is false, and the meter can burst.',
  'tester-on-drive': () =>
    'The insulation tester reached the drive. Its voltage breaks down the transistors: the drive has to be replaced now, whatever the fault was.',
  'test-voltage-too-high': () => `Tested with more than ${testVolts()}. That strains the insulation of a 400 V motor.`,
  'damaged-drive-powered': () => 'Gave power to a drive that shows damage. It can burst.',
  'enabled-without-support': () => 'Enabled an axis that can fall without a support. The enable opens the brake.',
  'axis-fell': () => 'The axis fell: brake open, nothing below it, and no motor to hold it.',
  'powered-after-failure': () =>
    'Enabled with motor and cable on the drive after a reading that failed. That destroys the next part.',
  'powered-without-pe': () =>
    'Gave power with the motor leads on and the PE core off. The motor frame can become live.',
  'enabled-without-feedback': () => 'Enabled the axis with its feedback unplugged. It runs away.',
  'powered-with-bonds': () => 'Gave power with bonding wires still in place.',
  'live-open-end': () => 'Enabled with an open end: the conductor carries the drive’s voltage, bare.',
  'bus-on-low-voltage-circuit': () =>
    'Enabled with a phase core shorted to a brake or sensor core. That circuit of extra-low voltage carried the bus voltage.',
  'tried-again-untested': () =>
    'Tripped it again with nothing changed and nothing measured. Each trip strains the drive.',
};
