import type { Shown } from '../../kernel/form/verdict-words.ts';
import { capital } from '../../kernel/words/sentences.ts';
import { VerdictShape } from '../../ui/verdict/VerdictShape.tsx';
import type { Decision } from '../guide/decision.ts';
import { decisionAdvice, decisionHeadline, neverSwap, openTexts, partNames, proofTexts } from '../words/decision.ts';

const shapes: Record<Decision['kind'], Shown> = {
  replace: 'no-go',
  inconclusive: 'undecided',
  'no-fault-found': 'go',
  mechanical: 'no-go',
  undecided: 'undecided',
};

/** What to replace and why, what stays, and what is open. */
export function DecisionPanel({ decision }: { decision: Decision }) {
  const { replace, good, open } = decision;
  const advice = decisionAdvice(decision);
  return (
    <section class="verdict decision" data-verdict={shapes[decision.kind]} aria-labelledby="decision">
      <h2 class="verdict-word" id="decision" tabIndex={-1}>
        <VerdictShape verdict={shapes[decision.kind]} />
        {decisionHeadline(decision)}
      </h2>
      {replace.map(({ part, proofs }) => (
        <div key={part}>
          <h3>{capital(partNames[part])}: why</h3>
          <ul class="findings">
            {proofs.map((proof) => (
              <li key={proof} data-severity="fail">
                {proofTexts[proof]}
              </li>
            ))}
          </ul>
        </div>
      ))}
      {good.length > 0 && (
        <>
          <h3>Measured and good: stays</h3>
          <ul class="findings">
            {good.map((part) => (
              <li key={part} data-severity="pass">
                {capital(partNames[part])}
              </li>
            ))}
          </ul>
        </>
      )}
      {open.length > 0 && (
        <>
          <h3>Still open, and what would decide it</h3>
          <ul class="findings">
            {open.map((item) => (
              <li key={item} data-severity="undecided">
                {openTexts[item]}
              </li>
            ))}
          </ul>
        </>
      )}
      <h3>Before power goes on again</h3>
      <ul>
        {advice.map((text) => (
          <li key={text}>{text}</li>
        ))}
        <li>{neverSwap}</li>
      </ul>
    </section>
  );
}
