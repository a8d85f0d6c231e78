import type { Part } from '../../kernel/vocabulary.ts';

/** What the person decides at the end. `undecided`: only a specialist's test, drying or watching can decide. */
export type Conclusion = { kind: 'replace'; parts: Part[] } | { kind: 'nothing' } | { kind: 'undecided' };

export const parts: readonly Part[] = [
  'drive',
  'motor',
  'motor-cable',
  'feedback-cable',
  'feedback-device',
  'protective-conductor',
  'braking-resistor',
];

/**
 * `right`: true, and proven by what was measured. `unproven`: true, without the measurement that proves it. `guessed`:
 * true, but the usual measurements could not show it. `could-be-decided`: left open although the usual measurements
 * decide it. `left-wet`: nothing is bad, and the water that tripped it is still there. The others name what is wrong.
 */
export type Judgement =
  | 'right'
  | 'unproven'
  | 'guessed'
  | 'could-be-decided'
  | 'left-wet'
  | 'sound-part-named'
  | 'bad-part-missed'
  | 'wrong-parts';
