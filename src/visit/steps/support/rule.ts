import { notDone } from '../done.ts';
import type { Rule } from '../rule.ts';

export const supportRule: Rule<'support-axis' | 'support-again'> = { holdsOneStretch: true, problem: notDone };
