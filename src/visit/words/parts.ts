import type { Part } from '../../kernel/vocabulary.ts';

export const partNames: Record<Part, string> = {
  drive: 'complete drive',
  motor: 'motor',
  'motor-cable': 'motor cable',
  'feedback-cable': 'feedback cable',
  'feedback-device': 'feedback device',
  'protective-conductor': 'protective conductor (mend)',
  'braking-resistor': 'braking resistor',
};
