import { useMemo } from 'preact/hooks';
import { wayAhead } from '../guide/ahead.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import { minutesText } from '../words/visit.ts';

/** How long the way to the decision takes. */
export function MinutesAhead({ answers }: { answers: VisitAnswers }) {
  const ahead = useMemo(() => wayAhead(answers), [answers]);
  return ahead === undefined ? null : <p class="minutes-ahead">{minutesText(ahead.minutes, ahead.steps.length)}</p>;
}
