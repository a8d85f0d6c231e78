import type { Before, Seen, Trial } from '../rule/facts.ts';
import type { Reason } from '../rule/suspects.ts';

/** The answer in the form, and the same as a reason on the sheet. */
interface Said {
  label: string;
  reason: string;
}

export const beforeTexts: Record<Before, Said> = {
  'motor-changed': { label: 'Motor or feedback device exchanged', reason: 'the motor was exchanged before' },
  'drive-changed': { label: 'Drive exchanged or repaired', reason: 'the drive was exchanged before' },
  'cable-changed': { label: 'Cable or connector mended or moved', reason: 'a cable or connector was worked on' },
  'parameters-changed': { label: 'Parameters, program or speed changed', reason: 'parameters were changed' },
  'load-changed': { label: 'Other product, tool or load', reason: 'the load is another one' },
  water: { label: 'Washed down, coolant, rain', reason: 'it got wet' },
  standstill: { label: 'Long standstill, cold or damp', reason: 'it stood still for long' },
  jam: { label: 'Crash or jam', reason: 'it crashed or jammed' },
  'power-cut': { label: 'Power cut or thunderstorm', reason: 'the supply failed before' },
  'new-neighbour': { label: 'A new machine or device nearby', reason: 'something new is nearby' },
};

export const seenTexts: Record<Seen, Said> = {
  'drive-burnt': { label: 'Drive: smoke, soot or a burnt smell', reason: 'the drive looks or smells burnt' },
  'drive-dirty': { label: 'Drive: fan stands, filter blocked, dust', reason: 'the drive is dirty or its fan stands' },
  'motor-burnt': { label: 'Motor: burnt smell, or very hot', reason: 'the motor smells burnt or is very hot' },
  'motor-wet': { label: 'Motor or its connector wet or oily', reason: 'motor or connector are wet' },
  'cable-damaged': { label: 'Motor cable chafed, crushed or burnt', reason: 'the motor cable is damaged' },
  'feedback-damaged': { label: 'Feedback cable or its plug damaged', reason: 'the feedback cable is damaged' },
};

export const trialTexts: Record<Trial, { label: string; trips: string; runs: string }> = {
  'leads-off': {
    label: 'Enabled with the motor leads off at the drive',
    trips: 'it is said to trip without the motor too',
    runs: 'it is said not to trip without the motor',
  },
  'feedback-off': {
    label: 'Switched on with the feedback unplugged',
    trips: 'it is said to trip without the feedback too',
    runs: 'it is said not to trip without the feedback',
  },
  'other-drive': {
    label: 'Another drive put in',
    trips: 'another drive is said to trip too',
    runs: 'another drive is said to run',
  },
  'other-motor': {
    label: 'Another motor connected',
    trips: 'another motor is said to trip too',
    runs: 'another motor is said to run',
  },
};

const frequency = { each: 'it comes each time', sometimes: 'it comes only sometimes', once: 'it came once' };

/** Answers that the sheet only plans with; in the notes of the visit in these words. */
export const plannedTexts = {
  again: frequency,
  propped: { yes: 'on a prop, pin or block', no: 'on no prop, pin or block' },
  sharedDrive: { yes: 'its drive serves other axes too', no: 'its drive serves no other axis' },
  high: { yes: 'motor or cable out of reach from the floor', no: 'motor and cable within reach' },
  switcher: { yes: 'somebody may lock out and switch on', no: 'nobody may lock out and switch on' },
} as const;

/** Why something is suspect, in a few words. */
export function reasonText(reason: Reason): string {
  switch (reason.kind) {
    case 'before':
      return beforeTexts[reason.what].reason;
    case 'seen':
      return seenTexts[reason.what].reason;
    case 'tried':
      return trialTexts[reason.what][reason.result];
    case 'again':
      return frequency[reason.what];
    case 'shared-drive':
      return 'the drive serves other axes';
  }
}
