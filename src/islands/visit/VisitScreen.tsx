import { useMemo } from 'preact/hooks';
import { nextStep } from '../../guide/next-step.ts';
import { stretchAt } from '../../record/stretch.ts';
import type { VisitRecord } from '../../record/visit-schema.ts';
import type { VisitStore } from '../../record/visit-store.ts';
import { DecisionPanel } from './DecisionPanel.tsx';
import { recordAnswers } from './record-answers.ts';
import { listHash, reportHash } from './route.ts';
import { SaveStatus } from './SaveStatus.tsx';
import { SendVisit } from './SendVisit.tsx';
import { StaleVerdicts } from './StaleVerdicts.tsx';
import { StepList } from './StepList.tsx';
import { useNow } from './use-now.ts';
import type { Session } from './use-session.ts';
import { VisitDetails } from './VisitDetails.tsx';
import { visitTitle } from './visit-title.ts';

interface Props {
  visit: VisitRecord;
  session: Session;
  store: VisitStore;
}

/** One visit: who and where, the steps, the decision, and what to do with the record. */
export function VisitScreen({ visit, session, store }: Props) {
  const now = useNow(visit);
  // The clock counts only by the stretch of work that it stands for.
  const guide = useMemo(() => nextStep(recordAnswers(visit, now)), [visit, stretchAt(visit, now)]);
  return (
    <>
      <p class="running-head">
        <a href={listHash}>All visits</a>
      </p>
      <h1 tabIndex={-1}>{visitTitle(visit)}</h1>
      <SaveStatus session={session} store={store} />
      <StaleVerdicts visit={visit} />
      <VisitDetails visit={visit} change={session.change} draft={session.draft} />
      <StepList visit={visit} guide={guide} now={now} change={session.change} draft={session.draft} />
      {guide.decision && <DecisionPanel decision={guide.decision} />}
      <section aria-labelledby="record">
        <h2 id="record">Report and record</h2>
        <p>
          <a class="button" href={reportHash(visit.id)}>
            {guide.decision ? 'Report' : 'Report so far'}
          </a>
        </p>
        <SendVisit visit={visit} />
      </section>
    </>
  );
}
