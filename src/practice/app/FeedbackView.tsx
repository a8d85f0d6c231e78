import { useEffect, useMemo, useRef } from 'preact/hooks';
import type { Shown } from '../../kernel/form/verdict-words.ts';
import { capital } from '../../kernel/words/sentences.ts';
import { href } from '../../ui/href.ts';
import { VerdictShape } from '../../ui/verdict/VerdictShape.tsx';
import type { CaseRun } from '../case/case-run.ts';
import type { Conclusion } from '../case/conclusion.ts';
import { feedback } from '../case/feedback.ts';
import { actsWith } from '../case/time-line.ts';
import { caseResult } from '../words/case-result.ts';
import { feedbackTexts, judgementTexts, partsText } from '../words/feedback.ts';
import { keepFirstResult } from './kept-results.ts';
import { SoundWay } from './SoundWay.tsx';
import { TimeLine } from './TimeLine.tsx';

export interface FeedbackViewProps {
  run: CaseRun;
  conclusion: Conclusion;
  articles: readonly string[];
  onAgain: () => void;
}

/** What was right and what was not, act by act, beside the way of a careful person. */
export function FeedbackView({ run, conclusion, articles, onAgain }: FeedbackViewProps) {
  const result = useMemo(() => feedback(run, conclusion), [run, conclusion]);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => keepFirstResult(run.code, caseResult(result)), [run, result]);
  useEffect(() => {
    scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, []);
  const { word, why } = judgementTexts[result.judgement];
  const unsafe = actsWith(result.line, 'unsafe') > 0;
  const shape = shapeOf(result.judgement, unsafe);
  const named = conclusion.kind === 'replace' ? `replace ${partsText(conclusion.parts)}` : conclusion.kind;
  return (
    <div class="practice-feedback">
      <h1 tabIndex={-1} ref={heading}>
        Case <span class="case-code">{run.code}</span>
      </h1>
      <section class="verdict" data-verdict={shape} aria-labelledby="judgement">
        <h2 class="verdict-word" id="judgement">
          <VerdictShape verdict={shape} />
          {unsafe ? feedbackTexts.butUnsafe(word) : word}
        </h2>
        <p>{why}</p>
        <dl class="practice-truth">
          <dt>{feedbackTexts.decided}</dt>
          <dd>{feedbackTexts.conclusion(named)}</dd>
          <dt>{feedbackTexts.truth}</dt>
          <dd>
            {capital(result.truth.label)}. {feedbackTexts.toReplace(result.truth.bad)}
          </dd>
          {result.over.length > 0 && <Row name={feedbackTexts.over} value={partsText(result.over)} />}
          {result.missed.length > 0 && <Row name={feedbackTexts.missed} value={partsText(result.missed)} />}
          {result.hurtDrive && <Row name={feedbackTexts.hurt} value={feedbackTexts.hurtDrive} />}
        </dl>
      </section>
      <div class="two-ways">
        <TimeLine line={result.line} articles={articles} />
        <SoundWay feedback={result} articles={articles} />
      </div>
      <p class="form-actions">
        {new URLSearchParams(location.search).has('final') && (
          <a class="button" href={href('/lessons/final/')}>
            {feedbackTexts.finalCases}
          </a>
        )}
        <a class="button" href={location.pathname}>
          {feedbackTexts.another}
        </a>
        <button type="button" class="plain" onClick={onAgain}>
          {feedbackTexts.again}
        </button>
        <button type="button" class="plain" onClick={() => print()}>
          {feedbackTexts.print}
        </button>
      </p>
    </div>
  );
}

function Row({ name, value }: { name: string; value: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>{capital(value)}</dd>
    </>
  );
}

/** An unsafe act outweighs a right decision. */
function shapeOf(judgement: string, unsafe: boolean): Shown {
  if (unsafe) return 'stop';
  if (judgement === 'right') return 'go';
  return ['unproven', 'guessed', 'could-be-decided'].includes(judgement) ? 'undecided' : 'no-go';
}
