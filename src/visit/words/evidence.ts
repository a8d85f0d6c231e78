import type { Proof } from '../guide/proofs.ts';
import type { Suspicion } from '../guide/suspicions.ts';

export const proofTexts: Record<Proof, string> = {
  'trips-with-all-off':
    'With everything off the drive, the same message came in every try, at the same stage: only the drive is left.',
  'bridge-bad': 'The six readings at its output stage fail, and the odd one was read a second time.',
  'input-shorted':
    'Its rectifier, DC bus or precharge fails, with supply leads and everything else off, and a second reading says the same.',
  'drive-burnt': 'It shows burnt parts, and the readings at its output stage fail. It is not switched on again.',
  'isolation-bad': 'Measured alone, its insulation fails, and a second reading says the same.',
  'winding-bad-at-motor':
    'The winding resistances fail at the motor connector, without the cable, and a second reading says the same.',
  'winding-good-without-cable':
    'The winding resistances fail through the cable and pass at the motor, and the joint between them is sound.',
  'opens-when-bent': 'A core opens or leaks when the cable bends, twice, with the plugs held still.',
  'pe-broken': 'PE does not read what it should, in two measurements. The motor frame can become live.',
  'trip-follows-feedback-cable': 'The trip stays away without it and comes every time with it, the device unplugged.',
  'trip-gone-without-device': 'The trip stays away when only the device is unplugged, and comes every time with it.',
  'feedback-cable-damaged': 'It is visibly damaged, and the trip stays away without it.',
  'braking-resistor-bad':
    'Its resistance does not fit its plate, or it is connected to its housing; it was read twice.',
};

/** What speaks against a part, and then what would prove it. */
export const suspicionTexts: Record<Suspicion, string> = {
  'drive-burnt':
    'It shows burnt parts, so it is not switched on again. The six readings, or a repair shop that opens it, prove it.',
  'bridge-not-confirmed':
    'The six readings fail once. Lift the tips and read the odd terminal again as the verdict asks, or compare with a sound drive of the same model.',
  'input-not-confirmed':
    'Its input or DC bus fails a reading. Take everything else off, lift the tips and read again, or compare with a sound drive of the same model.',
  'trips-without-feedback':
    'It trips with the feedback of this axis unplugged. Other axes, the braking resistor, brakes and neighbours on the bus are still on it. Take everything off as the manual allows, and try as often as needed.',
  'trips-without-motor':
    'It trips with the motor leads off. Brakes, the braking resistor and neighbours on the bus are still on it. Take everything off as the manual allows, and try as often as needed.',
  'trips-stripped':
    'It trips with things taken off, but something was left on it, it was tried too seldom, it did not come each time, or it came at another stage. Take the rest off and try as often as needed, at the stage at which it trips.',
  'braking-switch-low':
    'The switched brake terminal reads a short to DC−: the transistor of the braking resistor, or the diode across it. Read it again with the resistor off, and compare with a sound drive of the same model.',
  'isolation-suspect':
    'Its insulation is below the after-trip limit, so it is not connected to a new drive. That alone does not prove it bad: clean and dry it, take the leads off and measure again, and compare with its earlier readings or its sister.',
  'winding-not-confirmed':
    'Its winding resistances fail once. Clean the contacts and read the odd pair again, with four leads.',
  'cable-or-joint':
    'The winding fails through the cable and passes at the motor: a core of the cable, or a pin of the joint. Mate the connector and measure across the joint, or measure the cable’s cores from end to end.',
  'bent-once': 'A core opened or leaked once when the cable was bent. Hold the plugs still and do it a second time.',
  'idle-core-low':
    'A core of brake or sensor is connected to U, V, W or PE: in the cable or in the motor. Unplug the motor and measure again at the cable, then at the motor. Nothing is switched on before that is mended.',
  'gone-without-feedback':
    'The trip is gone with the feedback unplugged. Try as often as needed with the cable alone, then with the device.',
  'follows-feedback-cable':
    'It trips with the feedback cable connected and the device unplugged. Try each way as often as needed: one try of a trip that does not come each time proves nothing.',
  'gone-without-device':
    'The trip is gone with only the device unplugged. Try each way as often as needed, and then with it plugged in again.',
  'feedback-cable-damaged':
    'It is visibly damaged. If the trip stays away with it unplugged, in as many tries as needed, that proves it. Mend or replace it before the axis is tried, whatever trips it.',
  'pe-read-once':
    'PE read once what it should not. Find out what else earths the motor frame, take the leads off and read it again with 0.2 A or more. Nothing is switched on before it is sound.',
  'braking-resistor-read-once':
    'It does not fit its plate, or it is connected to its housing. Lift the tips and read it a second time.',
};
