import type { OpenItem } from '../guide/open-items.ts';

export const openTexts: Record<OpenItem, string> = {
  'feedback-cable-or-device':
    'Feedback cable or device: the trip went away without them, but which of the two is not known. Retry with the cable plugged in at the drive and unplugged at the device.',
  'feedback-device-open':
    'The feedback device is suspect, not proven: the trip went away without it and was not tried again with it. Connect PE first, plug everything in and switch on once more, control off.',
  'feedback-contact':
    'The trip did not come back with everything plugged in again: a contact was loose, or the cause has passed. Look at the pins of the feedback connectors, and watch the axis. If it trips again, start a new visit.',
  'damage-open':
    'Drive or feedback cable looks damaged. Dry or mend it, look again, and say what you see then. Until then nothing is tried with power.',
  'motor-damaged':
    'The motor or its connector is seen damaged, whatever it measures. Nothing is switched on with it as it is. Dry it, or have it opened and repaired, look again and measure again. What can’t be mended is replaced for what was seen.',
  'cable-damaged':
    'The motor cable is seen damaged, whatever it measures. Nothing is switched on with it as it is. Dry it, or mend or replace it, look again and measure again.',
  'not-looked-at':
    'A part was not looked at, so nobody knows whether it is burnt, wet or chafed. It is not called good, and nothing is switched on with it. Look at it, and say in that step what you see.',
  'change-open':
    'Something was changed before the first trip, and nobody compared it. Compare leads, plates, parameters, commutation offset and tuning with the state before: no measurement shows them.',
  'change-wrong':
    'Something has been wrong since the change and is not put right. Have it put right by someone who may, then try. Until then the axis is not enabled.',
  'feedback-device-untested':
    'The feedback device was not tried: the damaged feedback cable is not plugged in for that. Once the cable is replaced, switch on with the device unplugged, then with it plugged in, control off.',
  'left-evidence':
    'An answer that is no longer on the way speaks against power: see “Not on the way now”. If it was a slip, correct it there. If it is true, settle it before anything is switched on.',
  'retry-not-done': 'A retry with power was not done. Have it done by someone who is permitted to.',
  'another-message':
    'A retry ended with another message, so it says nothing of this trip. Write that message down, look it up in the drive’s manual, mend what it names, and try again.',
  'not-all-taken-off':
    'It trips without its feedback or without its motor, and it was not tried with everything off: leads of all axes, brakes, braking resistor, DC link. That trial tells whether it is the drive: about 20 minutes, by someone who is permitted to switch on.',
  'something-taken-off':
    'With everything off it does not trip: what came off causes it. Measure each dead: braking resistor, brakes and their cores, leads and feedback of the other axes, DC link. Put them back one by one, locked out each time, and try.',
  'bridge-open': 'The output stage is undecided. Repeat the six readings as the verdict asks.',
  'input-open':
    'Fuses or breaker opened, and the input of the drive is not shown to be sound. Measure fuses, rectifier, DC bus and precharge dead. What can’t be reached, its maker or a repair shop tests. Nothing is switched on, reset or replaced to see.',
  'fuses-open':
    'A fuse is open and the drive does not show why. Look before the drive: supply leads, line filter and surge arresters by themselves, the precharge contact, and the type of the fuses.',
  'braking-open':
    'The braking circuit is not known. Locked out, measure the resistor against its plate and to its housing, and the switched brake terminal to DC−: about 10 minutes.',
  'bend-test-open':
    'The cable was not watched while it bends, or only once. Good readings at rest clear nothing here. Two persons need about 25 minutes, with a meter below 25 V that holds minimum and maximum.',
  'idle-cores-open':
    'The cores of brake and sensor were not measured. Nothing is connected again before each reads free of U, V, W and PE: two minutes with a multimeter.',
  'insulation-open': 'The insulation is undecided. Repeat the test as the verdict asks.',
  'cable-open': 'The motor cable is not proven. Test it alone, both ends free, and with the other cores bonded to PE.',
  'motor-open': 'The motor is not proven. Test it alone at its connector.',
  'winding-open': 'Shorted turns are not excluded. Compare with a sound motor, or have a surge test made.',
  'measure-hot':
    'It trips hot, and the motor was measured cold or its temperature was not entered. Measure winding and insulation within minutes of the trip, and type the temperature.',
  mechanics: 'The axis is stiff or its brake drags. Mend that first: it draws the same current as a fault.',
  'axis-held':
    'The holding brake holds the axis, so the mechanics could not be felt. Look at the current while it moves slowly both ways, and listen for the brake: does it open fully, and before the motion?',
  'mechanics-not-checked':
    'The mechanics were not checked. See whether the axis moves freely and the brake opens fully.',
  watch:
    'It did not trip in the last trial, and that does not show that it is gone. Watch it: write down time, motion, temperature and message of each trip, and have the drive record its currents and the bus. Then start a new visit.',
};
