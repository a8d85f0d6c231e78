/** Introduction to the visits: in the static page, and again when its script has started. */
export const visitsLead =
  'A visit leads from the trip to the parts decision, step by step. It says what to do next, judges what you measure, and keeps the record.';

/** Notes beside fields that are filled in, or were not. `measured`: such as "measured 2026-03-02, 05:58". */
export const prefillTexts = {
  busExpired: (at: string): string => `Last measured ${at}. That no longer holds: measure it now.`,
  fromLockout: (measured: string): string =>
    `Filled in from your last lockout step, ${measured}. Measure again if you have left the cabinet since.`,
  lockoutSource: (measured: string): string => `Your last lockout step, ${measured},`,
  fromInsulation: 'Filled in from the insulation step.',
  insulationSource: 'The insulation step',
  fromRegister: 'From what is known about this axis. Check it once on the jacket.',
  differs: (source: string, value: string): string => `${source} says ${value}.`,
  fromAccuracy: (instrument: string): string => `From the accuracy that you noted for the ${instrument.toLowerCase()}.`,
  fromLimits: (instrument: string): string => `From what you noted for the ${instrument.toLowerCase()}.`,
  onlyTestVoltage: 'The one test voltage that you noted for the insulation tester. Change it if another one was set.',
} as const;

/** Sentences of the report. */
export const reportTexts = {
  notFinished: (due: string): string =>
    `The visit is not finished. Due: ${due}. Do not order or replace anything on this page alone.`,
  cautions:
    'Before anybody touches a terminal: lock out, wait the time on the drive’s label, and measure the DC bus. Support a hanging axis. This page does not replace the site’s procedures, local codes or the drive manual. Work on electrical equipment is for people who are qualified and permitted to do it.',
  proofMissing: 'Proof is missing. No drive is joined before it is there.',
  testedBeforeNewDrive: 'Both were tested before the new drive comes. The readings are in the annex.',
  testedForLater: 'Both were tested, should the drive be exchanged later. The readings are in the annex.',
  aloneAndBad: 'tested alone, and bad. It is not connected to a drive again.',
  aloneAndSuspect: 'tested alone, and below the after-trip limit. It is not connected to a drive as it is.',
  aloneAndPassed: 'tested alone, and passed.',
  togetherAndPassed: 'tested together with the other, and passed.',
  missing: (why: string): string => `PROOF IS MISSING: ${why}`,
  doubted: 'the joined test passes, but the symptom or what was seen points here, and it was not tested alone.',
  joinedFails: 'the joined test fails, and whether it is this part was not decided.',
  noTest: 'no test of it led to a decision.',
} as const;

/** How often a step with power is tried. */
export const triesTexts = {
  needed: (came: number, of: number, needed: number): string =>
    `How often: it came ${came} of ${of} times, so try ${needed} times, each time in the same way. Fewer tries prove nothing.`,
  unknown:
    'How often: it is not noted how often it came, in how many starts. Until then a try proves nothing. Ask, and note it with the moment of the trip.',
  once: 'How often: it happened once, and it is not noted in how many starts or moves. Until then a try proves nothing. Ask, and note both numbers with the moment of the trip.',
} as const;

/** After a visit was handed over. */
export const sendTexts = {
  saved: (name: string): string =>
    `Saved as ${name}, where this browser keeps downloads. It opens here and on another device by “Import a visit”.`,
  handedOver: 'Handed over. The file opens on another device by “Import a visit”.',
  refused: 'The share sheet did not take the file. ',
} as const;

/** About the instruments of a visit. */
export const instrumentTexts = {
  asked:
    'Asked once. In each step the calculators then count the accuracy and the highest figure by themselves: a verdict that they leave in doubt is undecided.',
  kept: 'Kept on this device for the next visit. What you change here is changed there too.',
  ofThisVisit: 'Noted in this visit only, not kept on this device.',
  forget: 'Forget them on this device',
} as const;

/** Whether the screen stays on. */
export const screenTexts = {
  label: 'Keep the screen on while this visit is open',
  unsupported: 'This browser can’t do that. Set the device’s own time until the screen goes dark to its longest.',
  refused: 'The device does not allow it now, perhaps because its battery is low.',
} as const;

/** How long the way ahead takes. */
export const minutesText = (minutes: number, steps: number): string =>
  `About ${minutes} min to the decision if everything passes: ${steps} ${steps === 1 ? 'step' : 'steps'}, waits included. A reading that fails changes the way.`;

/** How a screen with several steps continues. */
export const sheetTexts = {
  below: (title: string): string => `Done. Next, below: ${title}${title.endsWith('?') ? '' : '.'}`,
} as const;
