import type { Cause } from '../../kernel/vocabulary.ts';
import { capital } from '../../kernel/words/sentences.ts';
import { VerdictShape } from '../../ui/verdict/VerdictShape.tsx';
import type { Decision } from '../guide/decision.ts';
import { questions } from '../steps/questions.ts';
import { causeEffort, causesShown, causeTexts, decisionParts } from '../words/causes.ts';
import { decisionAdvice, decisionHeadline, decisionShapes, neverSwap } from '../words/decision.ts';
import { proofTexts, suspicionTexts } from '../words/evidence.ts';
import { openTexts } from '../words/open-items.ts';
import { partNames } from '../words/parts.ts';
import { FoundList } from './FoundList.tsx';

interface Props {
  decision: Decision;
}

/** What to replace and why, what is suspect, excluded and still possible, what stays, and what is open. */
export function DecisionPanel({ decision }: Props) {
  const { replace, suspect, excluded, possible, good, open } = decision;
  const advice = decisionAdvice(decision);
  return (
    <section class="verdict decision" data-verdict={decisionShapes[decision.kind]} aria-labelledby="decision">
      <h2 class="verdict-word" id="decision" tabIndex={-1}>
        <VerdictShape verdict={decisionShapes[decision.kind]} />
        {decisionHeadline(decision)}
      </h2>
      {replace.map(({ part, proofs }) => (
        <FoundList
          key={part}
          heading={`${capital(partNames[part])}: why`}
          severity="fail"
          items={proofs.map((proof) => ({ key: proof, text: proofTexts[proof] }))}
        />
      ))}
      <FoundList
        heading={decisionParts.suspect}
        severity="undecided"
        items={suspect.flatMap(({ part, reasons }) =>
          reasons.map((reason) => ({
            key: part + reason,
            text: (
              <>
                <b>{capital(partNames[part])}</b>: {suspicionTexts[reason]}
              </>
            ),
          })),
        )}
      />
      <FoundList
        heading={decisionParts.good}
        severity="pass"
        items={good.map((part) => ({ key: part, text: capital(partNames[part]) }))}
      />
      <FoundList
        heading={decisionParts.excluded}
        severity="pass"
        items={excluded
          .filter(({ part }) => !good.includes(part))
          .map(({ part, by }) => ({
            key: part,
            text: `${capital(partNames[part])}: ${by.map((id) => questions[id].title).join('; ')}`,
          }))}
      />
      <FoundList
        heading="Still open, and what would decide it"
        severity="undecided"
        items={open.map((item) => ({ key: item, text: openTexts[item] }))}
      />
      <FoundList
        heading={decisionParts.likely}
        severity="undecided"
        items={possible.slice(0, causesShown).map(causeItem)}
      />
      <Others causes={possible.slice(causesShown)} />
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

function causeItem(cause: Cause) {
  const text = causeTexts[cause];
  return {
    key: cause,
    text: (
      <>
        <b>{text.name}</b>: {text.tell} {causeEffort(text)}
      </>
    ),
  };
}

/** Folded: the list is long, and these are less likely. */
function Others({ causes }: { causes: readonly Cause[] }) {
  if (causes.length === 0) return null;
  return (
    <details>
      <summary>{decisionParts.others}</summary>
      <ul class="findings">
        {causes.map(causeItem).map(({ key, text }) => (
          <li key={key} data-severity="undecided">
            {text}
          </li>
        ))}
      </ul>
    </details>
  );
}
