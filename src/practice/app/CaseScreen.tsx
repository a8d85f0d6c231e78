import type { ComponentType } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { symptomTexts } from '../../visit/steps/symptom/question.ts';
import type { CaseKey } from '../case/case-code.ts';
import { practiceStory } from '../words/case.ts';
import { ActList } from './ActList.tsx';
import { ActPanel } from './ActPanel.tsx';
import { axisName } from './axis-name.ts';
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

/** One case: the machine, what can be done with it, what was done, and the decision; then the feedback. */
export function CaseScreen({ caseKey, code, articles }: Props) {
  const underWay = useCase(caseKey, code);
  const { session, conclusion, act } = underWay;
  const [Feedback, setFeedback] = useState<ComponentType<FeedbackViewProps>>();
  useEffect(() => {
    if (conclusion === undefined) return;
    // The guide and its sentences come only when they are asked for.
    void import('./FeedbackView.tsx').then((module) => setFeedback(() => module.FeedbackView));
  }, [conclusion]);

  const heading = useRef<HTMLHeadingElement>(null);
  const begun = useRef(session);
  useEffect(() => {
    if (begun.current === session) return;
    // The same case from the beginning.
    scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, [session]);

  const { axis, state } = session.world;
  const name = axisName(session);
  if (conclusion !== undefined) {
    if (Feedback === undefined) return <p>Working out the feedback …</p>;
    return <Feedback session={session} conclusion={conclusion} articles={articles} onAgain={underWay.again} />;
  }
  return (
    <>
      <p class="running-head">
        <a href={location.pathname}>Practice</a>
      </p>
      <h1 tabIndex={-1} ref={heading}>
        Case <span class="case-code">{code}</span>
      </h1>
      {practiceStory(name, axis.parameters.gravityLoaded, symptomTexts[axis.moment].label).map((text) => (
        <p key={text}>{text}</p>
      ))}
      <div class="practice-work">
        <ActPanel world={session.world} state={state} onAct={act} />
        <Bench session={session} onAct={act} />
      </div>
      <ActList entries={session.entries} />
      <ConclusionForm onConclude={underWay.conclude} />
      <LastAct entry={underWay.last} number={session.entries.length} />
    </>
  );
}
