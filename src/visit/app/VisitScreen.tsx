import { type EvaluatedVisit, evaluate } from '../evaluate.ts';
import { asTripVisit } from '../record/change-visit.ts';
import type { VisitStore } from '../storage/visit-store.ts';
import { BaselinePanel } from './BaselinePanel.tsx';
import { useBackground } from './background.ts';
import { DecisionPanel } from './DecisionPanel.tsx';
import { DetailsForm } from './DetailsForm.tsx';
import { EarlierVisits } from './EarlierVisits.tsx';
import { MinutesAhead } from './MinutesAhead.tsx';
import { RestartPanel } from './RestartPanel.tsx';
import { listHash, reportHash } from './route.ts';
import { SaveStatus } from './SaveStatus.tsx';
import { ScreenOn } from './ScreenOn.tsx';
import { SendVisit } from './SendVisit.tsx';
import { StaleVerdicts } from './StaleVerdicts.tsx';
import { StepList } from './StepList.tsx';
import type { VisitSession } from './use-session.ts';
import { useWaits } from './use-waits.ts';
import { visitTitle } from './visit-summary.ts';
import { WaitBar } from './WaitBar.tsx';

interface Props {
  evaluated: EvaluatedVisit;
  session: VisitSession;
  store: VisitStore;
}

/** One visit: its details, the steps, the decision, and its record. */
export function VisitScreen({ evaluated, session, store }: Props) {
  const { visit, guide } = evaluated;
  const background = useBackground();
  const takeAsTrip = () => session.change((before, now) => evaluate(asTripVisit(before.visit, now), now, before));
  const waits = useWaits(visit.id);
  return (
    <>
      <p class="running-head">
        <a href={listHash}>All visits</a>
        {background && (
          <>
            {' · '}
            <a href={background.axis.href}>History of this axis</a>
          </>
        )}
      </p>
      <h1 tabIndex={-1}>{visitTitle(visit)}</h1>
      <SaveStatus session={session} store={store} />
      <StaleVerdicts differs={evaluated.differs} />
      <DetailsForm key={session.loaded} visit={visit} change={session.change} draft={session.draft} />
      {guide.baseline === undefined && <MinutesAhead answers={evaluated.answers} />}
      <WaitBar waits={waits} />
      <StepList evaluated={evaluated} session={session} waits={waits} />
      <ScreenOn />
      {guide.decision && <DecisionPanel decision={guide.decision} />}
      <RestartPanel evaluated={evaluated} session={session} />
      <BaselinePanel evaluated={evaluated} onTrip={takeAsTrip} />
      <EarlierVisits evaluated={evaluated} />
      <section aria-labelledby="record">
        <h2 id="record">Report and record</h2>
        <p>
          <a class="button" href={reportHash(visit.id)}>
            {guide.decision ? 'Report' : 'Report so far'}
          </a>
        </p>
        <SendVisit visit={visit} session={session} />
      </section>
    </>
  );
}
