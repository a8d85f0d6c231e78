import { capital } from '../../kernel/words/sentences.ts';
import type { EvaluatedVisit } from '../evaluate.ts';
import type { Decision } from '../guide/decision.ts';
import { decisionAdvice, neverSwap } from '../words/decision.ts';
import { proofTexts } from '../words/evidence.ts';
import { openTexts } from '../words/open-items.ts';
import { partNames } from '../words/parts.ts';
import { sheetTexts } from '../words/sheets.ts';
import { reportTexts } from '../words/visit.ts';
import type { MeasuredReport } from './measured.ts';

interface Props {
  evaluated: EvaluatedVisit;
  measured: readonly MeasuredReport[];
}

/** What was decided and why, what was measured, and what comes before power, on one sheet. */
export function OwnerSheet({ evaluated: { visit, guide }, measured }: Props) {
  return (
    <>
      {guide.decision && <Decided decision={guide.decision} />}
      {(visit.site.trim() !== '' || visit.controllerMessage.trim() !== '') && (
        <p>
          {visit.site.trim() !== '' && (
            <>
              <b>Site:</b> {visit.site}.{' '}
            </>
          )}
          {visit.controllerMessage.trim() !== '' && (
            <>
              <b>Message of the controller:</b> {visit.controllerMessage}
            </>
          )}
        </p>
      )}
      <h3>What was measured</h3>
      {measured.length === 0 ? (
        <p>Nothing yet.</p>
      ) : (
        <ul class="report-summary">
          {measured.map(({ id, title, verdict, headline }) => (
            <li key={id}>
              <span>
                {title}
                {headline && `: ${headline}`}
              </span>{' '}
              <b>{verdict}</b>
            </li>
          ))}
        </ul>
      )}
      {guide.decision && <Power decision={guide.decision} />}
      <p class="report-cautions">{reportTexts.cautions}</p>
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
    </>
  );
}

function Decided({ decision: { replace, suspect, good } }: { decision: Decision }) {
  return (
    <ul class="report-found">
      {replace.map(({ part, proofs }) => (
        <li key={part}>
          <b>{capital(partNames[part])}</b>: {proofs.map((proof) => proofTexts[proof]).join(' ')}
        </li>
      ))}
      {suspect.length > 0 && (
        <li>
          <b>{sheetTexts.suspectParts}</b>: {suspect.map(({ part }) => partNames[part]).join(', ')}.
        </li>
      )}
      {good.length > 0 && (
        <li>
          <b>{sheetTexts.goodParts}</b>: {good.map((part) => partNames[part]).join(', ')}.
        </li>
      )}
    </ul>
  );
}

function Power({ decision }: { decision: Decision }) {
  return (
    <>
      <h3>Before power goes on again</h3>
      <ul>
        {[...decisionAdvice(decision), neverSwap].map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      {decision.open.length > 0 && (
        <>
          <h3>Still open</h3>
          <ul>
            {decision.open.map((item) => (
              <li key={item}>{openTexts[item]}</li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}
