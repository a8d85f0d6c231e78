import { capital } from '../../kernel/words/sentences.ts';
import type { Decision } from '../guide/decision.ts';
import { decisionAdvice, decisionHeadline, neverSwap, openTexts, partNames, proofTexts } from '../words/decision.ts';

/** The decision, in the same sentences as on the screen. */
export function ReportDecision({ decision }: { decision: Decision }) {
  const { replace, good, open } = decision;
  return (
    <section class="report-decision">
      <h2>{decisionHeadline(decision)}</h2>
      {replace.length > 0 && (
        <ul>
          {replace.map(({ part, proofs }) => (
            <li key={part}>
              <b>{capital(partNames[part])}</b>: {proofs.map((proof) => proofTexts[proof]).join(' ')}
            </li>
          ))}
        </ul>
      )}
      {good.length > 0 && (
        <p>
          <b>Measured and good, stays:</b> {good.map((part) => partNames[part]).join(', ')}.
        </p>
      )}
      <p>
        <b>Before power goes on again:</b> {[...decisionAdvice(decision), neverSwap].join(' ')}
      </p>
      <h3>Still open</h3>
      {open.length === 0 ? (
        <p>Nothing.</p>
      ) : (
        <ul>
          {open.map((item) => (
            <li key={item}>{openTexts[item]}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
