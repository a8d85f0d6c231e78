import type { ComponentType } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { symptomTexts } from '../../visit/steps/symptom/question.ts';
import type { CaseKey } from '../case/case-code.ts';
import { isInField } from '../case/draw-machine.ts';
import { axisName, practiceStory } from '../words/case.ts';
import { ActList } from './ActList.tsx';
import { ActPanel } from './ActPanel.tsx';
import { Bench } from './Bench.tsx';
import { ConclusionForm } from './ConclusionForm.tsx';
import type { FeedbackViewProps } from './FeedbackView.tsx';
import { LastAct } from './LastAct.tsx';
import { useCase } from './use-case.ts';

interface Props {
  caseKey: CaseKey;
  code: string;
  articles: readonly string[];
}

/** One case: the machine, the possible acts, the acts so far and the decision; after it the feedback. */
export function CaseScreen({ caseKey, code, articles }: Props) {
  const underWay = useCase(caseKey, code);
  const { run, conclusion, act } = underWay;
  const [Feedback, setFeedback] = useState<ComponentType<FeedbackViewProps>>();
  useEffect(() => {
    if (conclusion === undefined) return;
    // The guide and its sentences are loaded only when they are needed.
    void import('./FeedbackView.tsx').then((module) => setFeedback(() => module.FeedbackView));
  }, [conclusion]);

  const heading = useRef<HTMLHeadingElement>(null);
  const begun = useRef(run);
  useEffect(() => {
    if (begun.current === run) return;
    // The person restarted the case.
    scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, [run]);

  const { axis, state } = run.machine;
  const name = axisName(code, axis.parameters.gravityLoaded);
  if (conclusion !== undefined) {
    if (Feedback === undefined) return <p>Working out the feedback …</p>;
    return <Feedback run={run} conclusion={conclusion} articles={articles} onAgain={underWay.again} />;
  }
  return (
    <>
      <p class="running-head">
        <a href={location.pathname}>Practice</a>
      </p>
      <h1 tabIndex={-1} ref={heading}>
        Case <span class="case-code">{code}</span>
      </h1>
      {practiceStory(
        name,
        axis.parameters.gravityLoaded,
        symptomTexts[axis.moment].label,
        isInField(caseKey.fault),
      ).map((text) => (
        <p key={text}>{text}</p>
      ))}
      <div class="practice-work">
        <ActPanel machine={run.machine} state={state} onAct={act} />
        <Bench run={run} onAct={act} />
      </div>
      <ActList entries={run.entries} />
      <ConclusionForm onConclude={underWay.conclude} />
      <LastAct entry={underWay.last} number={run.entries.length} />
    </>
  );
}
