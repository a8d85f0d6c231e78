import { capital } from '../../kernel/words/sentences.ts';
import { questions } from '../../visit/steps/questions.ts';
import type { Feedback } from '../case/feedback.ts';
import type { Mark } from '../case/time-line.ts';
import { feedbackTexts, judgementTexts, partsText, voidTexts } from './feedback.ts';
import { unsafeTexts } from './unsafe.ts';

/** How a case ended, in sentences that need nothing else to be shown later. */
export interface CaseResult {
  /** The decision in a word: "Right, not proven". */
  word: string;
  /** Right, and carried by the measurements. */
  right: boolean;
  unsafe: string[];
  /** Why the decision does not hold, and what was left out. */
  unproven: string[];
  /** Measurements that the case did not need, or that showed nothing. */
  unnecessary: string[];
}

export function caseResult({ judgement, over, missed, way, line }: Feedback): CaseResult {
  const { word, why } = judgementTexts[judgement];
  const right = judgement === 'right';
  const named = (name: string, parts: typeof over) => (parts.length > 0 ? [`${name}: ${partsText(parts)}.`] : []);
  const leftOut = way.flatMap((step) => (step.leftOut ? [`Left out: ${questions[step.step].title}.`] : []));
  const marks = line.flatMap((act) => act.marks);
  const distinct = (sentence: (mark: Mark) => string[]) => [...new Set(marks.flatMap(sentence))];
  return {
    word,
    right,
    unsafe: distinct((mark) => (mark.kind === 'unsafe' ? [unsafeTexts[mark.code]()] : [])),
    unproven: [
      ...(right ? [] : [why]),
      ...named(feedbackTexts.over, over).map(capital),
      ...named(feedbackTexts.missed, missed).map(capital),
      ...leftOut,
    ],
    unnecessary: distinct((mark) => {
      if (mark.kind === 'told-nothing') return [voidTexts[mark.code]];
      return mark.kind === 'not-needed' ? [feedbackTexts.notNeeded(questions[mark.step].title)] : [];
    }),
  };
}
