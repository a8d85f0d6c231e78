import type { EvaluatedVisit } from '../evaluate.ts';
import type { Photograph } from '../record/photograph.ts';
import { DeadProofTables } from './DeadProofTables.tsx';
import { deadProofs } from './dead-proofs.ts';
import { type MeasuredReport, meterText } from './measured.ts';
import { ReadingsTable } from './ReadingsTable.tsx';
import { ReportDecision } from './ReportDecision.tsx';
import { ReportFacts } from './ReportFacts.tsx';
import { ReportPhotographs } from './ReportPhotographs.tsx';
import { ReportRestart } from './ReportRestart.tsx';
import { ReportSteps } from './ReportSteps.tsx';

interface Props {
  evaluated: EvaluatedVisit;
  measured: readonly MeasuredReport[];
  photographs: readonly Photograph[];
}

/** Everything behind the decision: for the next visit, and for anyone who wants to check it. */
export function Annex({ evaluated, measured, photographs }: Props) {
  const proofs = deadProofs(evaluated);
  return (
    <>
      {evaluated.guide.decision && <ReportDecision decision={evaluated.guide.decision} />}
      <ReportFacts visit={evaluated.visit} answers={evaluated.answers} />
      <section>
        <h3>What was measured</h3>
        {measured.length === 0 && <p>Nothing yet.</p>}
        {measured.map((report) => (
          <ReadingsTable key={report.id} report={report} />
        ))}
      </section>
      {proofs.length > 0 && <DeadProofTables proofs={proofs} instrument={meterText(evaluated.visit)} />}
      <ReportSteps evaluated={evaluated} />
      {evaluated.guide.decision && <ReportRestart visit={evaluated.visit} decision={evaluated.guide.decision} />}
      <ReportPhotographs photographs={photographs} />
    </>
  );
}
