import { shownTime } from '../../kernel/time/iso-time.ts';
import { BaselinePanel } from '../app/BaselinePanel.tsx';
import { EarlierVisits } from '../app/EarlierVisits.tsx';
import { visitHash } from '../app/route.ts';
import { StaleVerdicts } from '../app/StaleVerdicts.tsx';
import { visitTitle } from '../app/visit-summary.ts';
import type { EvaluatedVisit } from '../evaluate.ts';
import { questions } from '../steps/questions.ts';
import { reportTexts } from '../words/visit.ts';
import { measuredReports } from './measured.ts';
import { ReportDecision } from './ReportDecision.tsx';
import { ReportFacts } from './ReportFacts.tsx';
import { ReportMeasurement } from './ReportMeasurement.tsx';
import { ReportNextDrive } from './ReportNextDrive.tsx';
import { ReportSteps } from './ReportSteps.tsx';

/** The visit on one or two sheets, for the parts desk, the supplier and the next visit. */
export function VisitReport({ evaluated }: { evaluated: EvaluatedVisit }) {
  const { visit, answers, guide, differs } = evaluated;
  const { decision, due, path } = guide;
  const ids = path.map(({ id }) => id);
  const measured = measuredReports(evaluated, ids);
  const counted = Object.fromEntries(ids.map((id) => [id, answers[id]]).filter(([, answer]) => answer !== undefined));
  return (
    <article class="report">
      <p class="report-actions">
        <a class="button" href={visitHash(visit.id)}>
          Back to the visit
        </a>
        <button type="button" class="primary" onClick={() => print()}>
          Print
        </button>
      </p>
      <h1 tabIndex={-1}>
        {guide.baseline ? 'Baseline' : 'Overcurrent trip'}: {visitTitle(visit)}
      </h1>
      <p class="report-when">
        Begun {shownTime(visit.createdAt)}, last entry {shownTime(visit.changedAt)}. Record {visit.id}
      </p>
      <StaleVerdicts differs={differs} />
      {decision ? (
        <ReportDecision decision={decision} />
      ) : guide.baseline ? (
        <BaselinePanel evaluated={evaluated} />
      ) : (
        <section>
          <h2>No decision yet</h2>
          <p>{reportTexts.notFinished(due === undefined ? '' : questions[due].title)}</p>
        </section>
      )}
      <EarlierVisits evaluated={evaluated} />
      <ReportNextDrive
        answers={counted}
        replacesDrive={decision?.replace.some(({ part }) => part === 'drive') ?? false}
      />
      <ReportFacts visit={visit} answers={answers} />
      <section>
        <h2>What was measured</h2>
        {measured.length === 0 && <p>Nothing yet.</p>}
        {measured.map((report) => (
          <ReportMeasurement key={report.id} report={report} />
        ))}
      </section>
      <ReportSteps evaluated={evaluated} />
      <section class="report-cautions">
        <h2>Cautions</h2>
        <p>{reportTexts.cautions}</p>
      </section>
      <dl class="report-signature">
        <div>
          <dt>Name</dt>
          <dd>{visit.person}</dd>
        </div>
        <div>
          <dt>Signature</dt>
          <dd />
        </div>
        <div>
          <dt>Date</dt>
          <dd />
        </div>
      </dl>
    </article>
  );
}
