import type { ComponentChildren } from 'preact';
import { useContext, useState } from 'preact/hooks';
import { shownTime } from '../../kernel/time/iso-time.ts';
import { VerdictShape } from '../../ui/verdict/VerdictShape.tsx';
import { EarlierVisits } from '../app/EarlierVisits.tsx';
import { PhotographsContext } from '../app/photographs/use-photographs.ts';
import { visitHash } from '../app/route.ts';
import { StaleVerdicts } from '../app/StaleVerdicts.tsx';
import { visitTitle } from '../app/visit-summary.ts';
import type { EvaluatedVisit } from '../evaluate.ts';
import { questions } from '../steps/questions.ts';
import { baselineTexts } from '../words/baseline.ts';
import { decisionHeadline, decisionShapes } from '../words/decision.ts';
import { type Sheet, sheetNames, sheets, sheetTexts } from '../words/sheets.ts';
import { reportTexts } from '../words/visit.ts';
import { Annex } from './Annex.tsx';
import { measuredReports } from './measured.ts';
import { OwnerSheet } from './OwnerSheet.tsx';
import { PartsSheet } from './PartsSheet.tsx';
import { SheetChoice } from './SheetChoice.tsx';

/** The visit on paper: a sheet for the owner, one for the parts desk, and the rest; each begins with the decision. */
export function VisitReport({ evaluated }: { evaluated: EvaluatedVisit }) {
  const { visit, guide, differs } = evaluated;
  const [chosen, setChosen] = useState<readonly Sheet[]>(sheets);
  const photographs = useContext(PhotographsContext)?.photographs ?? [];
  const ids = guide.path.map(({ id }) => id);
  const measured = measuredReports(evaluated, ids);
  const content: Record<Sheet, ComponentChildren> = {
    owner: <OwnerSheet evaluated={evaluated} measured={measured} />,
    parts: <PartsSheet evaluated={evaluated} measured={measured} ids={ids} />,
    annex: <Annex evaluated={evaluated} measured={measured} photographs={photographs} />,
  };
  return (
    <article class="report">
      <h1 tabIndex={-1}>
        {guide.baseline ? 'Baseline' : 'Overcurrent trip'}: {visitTitle(visit)}
      </h1>
      <div class="report-actions">
        <SheetChoice chosen={chosen} onChoose={setChosen} />
        <p class="banner-actions">
          <button type="button" class="primary" disabled={chosen.length === 0} onClick={() => print()}>
            {sheetTexts.print}
          </button>
          <a class="button" href={visitHash(visit.id)}>
            Back to the visit
          </a>
        </p>
      </div>
      <StaleVerdicts differs={differs} />
      <div class="report-sheets">
        {sheets
          .filter((sheet) => chosen.includes(sheet))
          .map((sheet) => (
            <section key={sheet} class="sheet" data-sheet={sheet} aria-labelledby={`sheet-${sheet}`}>
              <header class="sheet-head">
                <p>{visitTitle(visit)}</p>
                <p class="report-when">
                  Begun {shownTime(visit.createdAt)}, last entry {shownTime(visit.changedAt)}. Record {visit.id}
                </p>
                <h2 id={`sheet-${sheet}`}>{sheetNames[sheet]}</h2>
              </header>
              <Headline evaluated={evaluated} />
              {sheet !== 'parts' && <EarlierVisits evaluated={evaluated} />}
              {content[sheet]}
            </section>
          ))}
      </div>
    </article>
  );
}

/** What was decided, or that nothing is yet. */
function Headline({ evaluated: { guide } }: { evaluated: EvaluatedVisit }) {
  const { decision, due, baseline } = guide;
  if (baseline !== undefined && baseline !== 'open') {
    return (
      <div class="sheet-decision">
        <VerdictShape verdict={baseline === 'complete' ? 'go' : 'undecided'} />
        <div>
          <p class="sheet-headline">{baselineTexts.headline[baseline]}</p>
          <p>{baseline === 'complete' ? baselineTexts.complete : baselineTexts.notSound}</p>
        </div>
      </div>
    );
  }
  return decision === undefined ? (
    <div class="sheet-decision">
      <VerdictShape verdict="empty" />
      <div>
        <p class="sheet-headline">No decision yet</p>
        <p>{reportTexts.notFinished(due === undefined ? '' : questions[due].title)}</p>
      </div>
    </div>
  ) : (
    <div class="sheet-decision">
      <VerdictShape verdict={decisionShapes[decision.kind]} />
      <p class="sheet-headline">{decisionHeadline(decision)}</p>
    </div>
  );
}
