import { limitValue } from '../limits.ts';
import { type FindingOf, findingMaker, type Nothing } from './assessment.ts';

export interface ReminderPayloads {
  'never-on-drive': Nothing;
  /** `times`: how many times as long as the test. */
  'discharge-after-test': { minutes: number; times: number };
}

export type ReminderFinding = FindingOf<ReminderPayloads>;

const finding = findingMaker<ReminderPayloads>();

/** The reminders beside every insulation verdict. `minutes`: how long the test voltage was on. */
export function testReminders(minutes: number = limitValue('reading-time')): ReminderFinding[] {
  const times = limitValue('discharge-after-test');
  return [
    finding('never-on-drive', 'note'),
    finding('discharge-after-test', 'note', { limits: ['discharge-after-test'], minutes: times * minutes, times }),
  ];
}

/** What protects the person after a test and the drive from it. */
export const reminderCodes: readonly string[] = ['never-on-drive', 'discharge-after-test'];
