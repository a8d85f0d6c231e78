/** The steps of a visit in their usual order. Without words, so that reading a record does not load them. */
export const stepIds = [
  'find-drive',
  'symptom',
  'recording',
  'lockout-1',
  'lockout-2',
  'lockout-3',
  'prove-again',
  'bus-again',
  'inspect',
  'after-change',
  'unplug-feedback',
  'retry-feedback-off',
  'unplug-device-end',
  'retry-device-end',
  'plug-feedback',
  'retry-feedback-on',
  'disconnect-leads',
  'support-axis',
  'support-again',
  'mechanics',
  'bridge',
  'input-circuit',
  'braking',
  'winding',
  'winding-motor',
  'retry-leads-off',
  'strip-drive',
  'retry-stripped',
  'bend-test',
  'idle-cores',
  'insulation',
  'isolation',
  'connect-pe',
  'reconnect',
  'retry-all',
] as const;

export type StepId = (typeof stepIds)[number];

/**
 * 'yes' in a lockout of version 1, whose one reading was the highest of all points. No form asks for it, and the first
 * change removes it, so that a new proof is measured point by point.
 */
export const oneReadingField = 'oneReading';
