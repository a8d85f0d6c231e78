import type { CalculatorName, FindingLine, Outcome } from './calculator-form.ts';
import { LimitsUsed } from './LimitsUsed.tsx';
import { VerdictShape } from './VerdictShape.tsx';
import { announcement, findingsShown, severityWords, shownVerdict, verdictWords, whyEmpty } from './verdict-words.ts';

interface Props {
  name: CalculatorName;
  /** Of the calculator: a page may hold several verdicts. */
  label: string;
  outcome: Outcome;
}

/**
 * The verdict with its reasons, next steps and limits. The bar stays at the foot of the window until the panel slides
 * over it, so that a change is seen on a phone. It is for eyes and fingers only: others hear the status.
 */
export function VerdictPanel({ name, label, outcome }: Props) {
  const verdict = shownVerdict(outcome);
  const id = `${name}-verdict`;
  return (
    <>
      <p class="visually-hidden" role="status">
        {announcement(outcome)}
      </p>
      <div class="verdict-bar" data-verdict={verdict} aria-hidden="true" onClick={() => showPanel(id)}>
        <VerdictShape verdict={verdict} />
        <span>{verdictWords[verdict]}</span>
        <span class="verdict-bar-more">Why</span>
      </div>
      <section class="verdict" data-verdict={verdict} id={id} tabIndex={-1} aria-label={`${label}: verdict`}>
        <h3 class="verdict-word">
          <VerdictShape verdict={verdict} />
          {verdictWords[verdict]}
        </h3>
        <Findings lines={findingsShown(outcome)} />
        {outcome.state === 'judged' ? <WhatNext outcome={outcome} /> : <p>{whyEmpty(outcome)}</p>}
      </section>
    </>
  );
}

function Findings({ lines }: { lines: readonly FindingLine[] }) {
  if (lines.length === 0) return null;
  return (
    <ul class="findings">
      {lines.map(({ severity, text }) => (
        <li key={text} data-severity={severity}>
          <b>{severityWords[severity]}:</b> {text}
        </li>
      ))}
    </ul>
  );
}

function WhatNext({ outcome }: { outcome: Extract<Outcome, { state: 'judged' }> }) {
  return (
    <>
      {outcome.steps.length > 0 && <h4>Next</h4>}
      {outcome.steps.length > 0 && (
        <ol class="next-steps">
          {outcome.steps.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ol>
      )}
      <LimitsUsed ids={outcome.limits} />
    </>
  );
}

function showPanel(id: string): void {
  const panel = document.getElementById(id);
  panel?.scrollIntoView();
  panel?.focus({ preventScroll: true });
}
