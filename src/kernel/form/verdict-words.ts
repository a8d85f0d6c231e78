import type { Severity } from '../assessment/assessment.ts';
import type { FindingLine, Outcome } from './calculator-form.ts';

export type Shown = 'go' | 'no-go' | 'undecided' | 'stop' | 'empty';

export const verdictWords: Record<Shown, string> = {
  go: 'Go',
  'no-go': 'No-go',
  undecided: 'Undecided',
  stop: 'Stop',
  empty: 'No verdict',
};

export const severityWords: Record<Severity, string> = {
  stop: 'Stop',
  fail: 'Fails',
  undecided: 'Open',
  caution: 'Caution',
  pass: 'Passes',
  note: 'Note',
};

export function shownVerdict(outcome: Outcome): Shown {
  if (outcome.state === 'unreadable' && outcome.dangers.length > 0) return 'stop';
  return outcome.state === 'judged' ? outcome.verdict : 'empty';
}

/** The reasons to show. Beside an entry that can't be read, only the dangers. */
export function findingsShown(outcome: Outcome): FindingLine[] {
  if (outcome.state === 'judged') return outcome.findings;
  return outcome.state === 'unreadable' ? outcome.dangers : [];
}

/** What is said beside the verdict's word: its reason in one line, or why there is none. */
export function headlineOf(outcome: Outcome): string {
  if (outcome.state === 'judged') return outcome.headline;
  return outcome.state === 'unreadable' && outcome.dangers.length > 0 ? outcome.headline : whyEmpty(outcome);
}

/** Why there is no verdict, and what to do about it. */
export function whyEmpty(outcome: Outcome): string {
  switch (outcome.state) {
    case 'blank':
      return 'Type your readings. The verdict follows as you go.';
    case 'unchosen':
      return `Answer first: ${outcome.questions.join(', ')}`;
    case 'unreadable':
      return Object.keys(outcome.errors).length === 1
        ? 'Mend the field that is marked. The other entries are kept.'
        : 'Mend the fields that are marked. The other entries are kept.';
    case 'judged':
      return '';
  }
}

/** What a screen reader hears when the verdict changes: the word and the headline. */
export function announcement(outcome: Outcome): string {
  const reason = headlineOf(outcome);
  const end = reason.endsWith('.') ? '' : '.';
  return outcome.state === 'blank' ? '' : `Verdict: ${verdictWords[shownVerdict(outcome)]}. ${reason}${end}`;
}
