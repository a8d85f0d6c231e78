import type { Part } from '../../kernel/vocabulary.ts';
import { listed } from '../../kernel/words/sentences.ts';
import type { Decision, DecisionKind, OpenItem } from '../guide/decision.ts';
import type { Proof } from '../guide/evidence.ts';

export const partNames: Record<Part, string> = {
  drive: 'complete drive',
  motor: 'motor',
  'motor-cable': 'motor cable',
  'feedback-cable': 'feedback cable',
  'feedback-device': 'feedback device',
  'protective-conductor': 'protective conductor (mend)',
  'braking-resistor': 'braking resistor',
};

export const neverSwap =
  'Never exchange parts between axes to find this fault. A bad motor or cable kills the good drive that you put on it, and then you have two.';

export const proofTexts: Record<Proof, string> = {
  'trips-without-feedback':
    'It trips with the feedback unplugged and the control off: nothing outside the drive is left to cause it.',
  'trips-without-motor': 'It trips with the motor leads off: motor and cable cannot be the cause any more.',
  'bridge-bad': 'The six readings at its output stage fail.',
  'drive-burnt': 'It shows burnt parts, and is not switched on again.',
  'all-passed-still-trips': 'Every check passes and the trip goes on. By exclusion, not by proof: this is rare.',
  'isolation-bad': 'Measured alone, its insulation fails.',
  'winding-bad-at-motor': 'The winding resistances fail at the motor connector, without the cable.',
  'winding-good-without-cable': 'The winding resistances fail through the cable and pass without it.',
  'pe-broken': 'PE does not read a dead short. The motor frame can become live.',
  'trip-follows-feedback-cable': 'It trips with the feedback cable connected and the device unplugged.',
  'trip-gone-without-device': 'The trip goes away when only the device is unplugged, and comes back with it.',
  'feedback-cable-damaged': 'It is visibly damaged.',
};

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
  'feedback-device-untested':
    'The feedback device was not tried: the damaged feedback cable is not plugged in for that. Once the cable is replaced, switch on with the device unplugged, then with it plugged in, control off.',
  'left-evidence':
    'An answer that is no longer on the way speaks against power: see “Not on the way now”. If it was a slip, correct it there. If it is true, settle it before anything is switched on.',
  'retry-not-done': 'A retry with power was not done. Have it done by someone who is permitted to.',
  'bridge-open': 'The output stage is undecided. Repeat the six readings as the verdict asks.',
  'insulation-open': 'The insulation is undecided. Repeat the test as the verdict asks.',
  'cable-open': 'The motor cable is not proven. Test it alone, both ends free, and with the bonded row.',
  'motor-open': 'The motor is not proven. Test it alone at its connector.',
  'winding-open': 'Shorted turns are not excluded. Compare with a sound motor, or have the winding tested with surges.',
  'hidden-in-winding':
    'A few shorted turns, or a leak from winding to winding, pass every measurement of a visit and trip the drive like this. A surge test by a repair shop tells, or the inductances compared with a sound motor of the same model. Have that done first: a new drive would trip on the same motor.',
  mechanics: 'The axis is stiff or its brake drags. Mend that first: it draws the same current as a fault.',
  'mechanics-not-checked':
    'The mechanics were not checked. See whether the axis moves freely and the brake opens fully.',
};

const headlines: Record<DecisionKind, (parts: string) => string> = {
  replace: (parts) => `Replace: ${parts}.`,
  inconclusive: () => 'Inconclusive: have the winding tested; if it passes, replace the complete drive.',
  'no-fault-found': () => 'No fault found. Nothing is replaced.',
  mechanical: () => 'Mend the mechanics first. No part is replaced on this evidence.',
  undecided: () => 'Undecided. Do not order or replace anything yet.',
};

export function decisionHeadline({ kind, replace }: Decision): string {
  return headlines[kind](listed(replace.map(({ part }) => partNames[part])));
}

/** The sentences after the headline: what follows from the decision, before power goes on again. */
export function decisionAdvice({ kind, replace, open, baseline }: Decision): string[] {
  const bad = (part: Part) => replace.some((one) => one.part === part);
  const advice: string[] = [];
  if (replace.length > 0) advice.push('Lock out again, wait, and measure the bus before any part is changed.');
  if (bad('drive') && kind === 'replace') {
    advice.push(
      'Replace the complete drive, not the power module alone: its control board is very likely damaged too.',
    );
  }
  if (bad('drive') && (bad('motor') || bad('motor-cable'))) {
    advice.push('Connect the new drive only after the bad motor and cable are replaced. They would destroy it.');
  }
  if (bad('motor') && bad('motor-cable')) advice.push('Replace motor and cable together: each would take the other.');
  if (bad('motor')) {
    advice.push(
      'Secure the axis before the motor comes off: its brake goes with it, and then nothing holds a hanging axis.',
    );
  }
  if (bad('motor') && !bad('motor-cable')) {
    advice.push(
      'Check the cores of the cable for continuity before the new motor is connected: the insulation test does not see a broken core.',
    );
  }
  if (bad('protective-conductor'))
    advice.push('Nothing is powered before the protective conductor is mended and measured.');
  if (kind === 'inconclusive')
    advice.push('Before the new drive runs, look once more at mechanics, cooling, tuning and the supply.');
  if (kind === 'no-fault-found') advice.push('If it trips again, start a new visit: compare its readings with these.');
  if (open.length > 0 && kind === 'replace') advice.push('What is still open is settled before power goes on again.');
  if (baseline.length > 0) advice.push('Keep the readings of the parts that stay as the baseline of this axis.');
  return advice;
}
