/** The moment of the trip. */
export type Symptom =
  | 'control-off'
  | 'on-enable'
  | 'on-acceleration'
  | 'on-braking'
  | 'position-or-cable'
  | 'when-hot'
  | 'now-and-then';

/** What an inspection of a part can show. `unseen`: nobody could look at it. */
export type Damage = 'nothing' | 'burnt' | 'chafed' | 'wet' | 'corroded' | 'bent' | 'loose' | 'unseen';

export type InspectedPart = 'drive' | 'motor' | 'motorCable' | 'feedbackCable';

/** Parts that can be proven bad. */
export type Part =
  | 'drive'
  | 'motor'
  | 'motor-cable'
  | 'feedback-cable'
  | 'feedback-device'
  | 'protective-conductor'
  | 'braking-resistor';

/**
 * Families of causes of an overcurrent trip. A decision that proves no part lists those that are still possible; each
 * simulated fault belongs to one.
 */
export type Cause =
  | 'output-stage'
  | 'drive-control'
  | 'current-sensor'
  | 'drive-cooling'
  | 'cable-insulation'
  | 'moving-cable'
  | 'contact'
  | 'output-filter'
  | 'winding-insulation'
  | 'winding-turns'
  | 'moisture'
  | 'protective-conductor'
  | 'idle-core'
  | 'feedback-supply'
  | 'feedback-signal'
  | 'brake'
  | 'load'
  | 'tuning'
  | 'commutation'
  | 'magnets'
  | 'braking-circuit'
  | 'other-axis'
  | 'supply'
  | 'interference';
