import { type Finding, finding } from './assessment.ts';
import { limitValue } from './limits.ts';

export type ReminderCode = 'never-on-drive' | 'discharge-after-test';

/** What is said beside every insulation verdict. `minutes` is how long the test voltage was on. */
export function testReminders(minutes: number = limitValue('reading-time')): Finding<ReminderCode>[] {
  const times = limitValue('discharge-after-test');
  const numbers = { times, minutes: times * minutes, test: minutes };
  return [
    finding('never-on-drive', 'note'),
    finding('discharge-after-test', 'note', { limits: ['discharge-after-test'], numbers }),
  ];
}
