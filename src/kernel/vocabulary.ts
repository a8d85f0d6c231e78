/** The moment of the trip. */
export type Symptom =
  | 'control-off'
  | 'on-enable'
  | 'on-acceleration'
  | 'position-or-cable'
  | 'when-hot'
  | 'now-and-then';

/** What an inspection of a part can show. */
export type Damage = 'nothing' | 'burnt' | 'wet' | 'chafed';

export type InspectedPart = 'drive' | 'motor' | 'motorCable' | 'feedbackCable';

/** Parts that can be proven bad. */
export type Part = 'drive' | 'motor' | 'motor-cable' | 'feedback-cable' | 'feedback-device' | 'protective-conductor';
