import { useMemo, useState } from 'preact/hooks';
import type { Problem } from '../../kernel/link/problem.ts';
import { isoTime, shownTime } from '../../kernel/time/iso-time.ts';
import { completed } from '../change-step.ts';
import { type EvaluatedVisit, evaluate } from '../evaluate.ts';
import { readShare } from '../record/share.ts';
import { asNewStretch } from '../record/stretch.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { questions } from '../steps/questions.ts';
import type { VisitStore } from '../storage/visit-store.ts';
import { decisionHeadline } from '../words/decision.ts';
import { listHash, visitHash } from './route.ts';
import { SharedReadings } from './SharedReadings.tsx';
import { StoreImported } from './StoreImported.tsx';
import { visitTitle } from './visit-summary.ts';

/** Shows what a link holds before anything is stored. */
export function SharedVisit({ share, store }: { share: string; store: VisitStore }) {
  const read = useMemo(() => readShare(share), [share]);
  if (!read.ok) return <Refused problem={read.problem} />;
  if (read.value.kind !== 'visit') return <SharedReadings entries={read.value} share={share} store={store} />;
  return <Offer visit={read.value.visit} store={store} />;
}

function Refused({ problem }: { problem: Problem }) {
  return (
    <>
      <h1 tabIndex={-1}>This link can’t be opened</h1>
      <p role="alert">{problem.message}</p>
      <p>Nothing was stored or changed.</p>
      <p>
        <a class="button" href={listHash}>
          To the visits on this device
        </a>
      </p>
    </>
  );
}

function Offer({ visit, store }: { visit: VisitRecord; store: VisitStore }) {
  const [taken, setTaken] = useState(false);
  const shown = useMemo(() => evaluate(asNewStretch(visit), isoTime(new Date())), [visit]);
  const { guide, steps } = shown;
  const answered = guide.path.filter(({ id }) => visit.steps[id] !== undefined);
  return (
    <>
      <h1 tabIndex={-1}>A visit from a link</h1>
      <p>Nothing is stored yet. This is what the link holds:</p>
      <h2>{visitTitle(visit)}</h2>
      <p>
        Begun {shownTime(visit.createdAt)}
        {visit.person && ` by ${visit.person}`}.{' '}
        {guide.decision ? decisionHeadline(guide.decision) : guide.due && `Due: ${questions[guide.due].title}.`}
      </p>
      {answered.length > 0 && (
        <ol class="shared-steps">
          {answered.map(({ id }) => (
            <li key={id}>
              <b>{questions[id].title}</b>: {steps[id].line}
            </li>
          ))}
        </ol>
      )}
      <p>Do you know who sent it? The readings are what somebody typed: check them before you act on them.</p>
      {!taken && (
        <p class="banner-actions">
          <button type="button" class="primary" onClick={() => setTaken(true)}>
            Store it on this device
          </button>
          <a class="button" href={listHash}>
            Leave it
          </a>
        </p>
      )}
      {taken && (
        <StoreImported
          visit={completedNow(visit, shown)}
          store={store}
          onStored={(stored) => location.replace(visitHash(stored.id))}
        />
      )}
    </>
  );
}

/** The visit as it is stored, with its verdicts and decision, which are computed here. */
function completedNow(visit: VisitRecord, previous: EvaluatedVisit): VisitRecord {
  const now = isoTime(new Date());
  return completed(evaluate(visit, now, previous), now);
}
