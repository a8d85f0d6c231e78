import { capital } from '../../kernel/words/sentences.ts';
import type { Decision } from '../guide/decision.ts';
import { questions } from '../steps/questions.ts';
import { causeEffort, causesShown, causeTexts, decisionParts } from '../words/causes.ts';
import { decisionAdvice, neverSwap } from '../words/decision.ts';
import { proofTexts, suspicionTexts } from '../words/evidence.ts';
import { openTexts } from '../words/open-items.ts';
import { partNames } from '../words/parts.ts';

interface Props {
  decision: Decision;
}

/** The decision, in the same sentences as on the screen. */
export function ReportDecision({ decision }: Props) {
  const { replace, suspect, excluded, possible, good, open } = decision;
  const others = possible.slice(causesShown);
  const passed = excluded.filter(({ part }) => !good.includes(part));
  return (
    <section class="report-decision">
      <h3>The decision in full</h3>
      {replace.length > 0 && (
        <ul>
          {replace.map(({ part, proofs }) => (
            <li key={part}>
              <b>{capital(partNames[part])}</b>: {proofs.map((proof) => proofTexts[proof]).join(' ')}
            </li>
          ))}
        </ul>
      )}
      {suspect.length > 0 && (
        <>
          <h4>{decisionParts.suspect}</h4>
          <ul>
            {suspect.map(({ part, reasons }) => (
              <li key={part}>
                <b>{capital(partNames[part])}</b>: {reasons.map((reason) => suspicionTexts[reason]).join(' ')}
              </li>
            ))}
          </ul>
        </>
      )}
      {good.length > 0 && (
        <p>
          <b>Measured and good, stays:</b> {good.map((part) => partNames[part]).join(', ')}.
        </p>
      )}
      {passed.map(({ part, by }) => (
        <p key={part}>
          <b>Excluded, {partNames[part]}:</b> {by.map((id) => questions[id].title).join('; ')}.
        </p>
      ))}
      <p>
        <b>Before power goes on again:</b> {[...decisionAdvice(decision), neverSwap].join(' ')}
      </p>
      <h4>Still open</h4>
      {open.length === 0 ? (
        <p>Nothing.</p>
      ) : (
        <ul>
          {open.map((item) => (
            <li key={item}>{openTexts[item]}</li>
          ))}
        </ul>
      )}
      {possible.length > 0 && (
        <>
          <h4>{decisionParts.likely}</h4>
          <ul>
            {possible.slice(0, causesShown).map((cause) => (
              <li key={cause}>
                <b>{causeTexts[cause].name}</b>: {causeTexts[cause].tell} {causeEffort(causeTexts[cause])}
              </li>
            ))}
          </ul>
        </>
      )}
      {others.length > 0 && (
        <p>
          <b>{decisionParts.others}:</b> {others.map((cause) => causeTexts[cause].name).join('; ')}.
        </p>
      )}
    </section>
  );
}
