import type { FindingLine, Outcome } from '../../kernel/form/calculator-form.ts';
import {
  announcement,
  findingsShown,
  severityWords,
  shownVerdict,
  verdictWords,
  whyEmpty,
} from '../../kernel/form/verdict-words.ts';
import { LimitsUsed } from './LimitsUsed.tsx';
import { VerdictShape } from './VerdictShape.tsx';

interface Props {
  name: string;
  /** Of the calculator: a page may hold several verdicts. */
  label: string;
  outcome: Outcome;
  /** Something was typed since, so the verdict on the older entries must not be shown for the new ones. */
  pending: boolean;
  /** What earlier readings of the same part say about these: said with the verdict, and never changing it. */
  earlier?: readonly { short: string; text: string }[] | undefined;
}

/**
 * The verdict with its reasons, next steps and limits. The bar stays at the bottom of the window until the panel covers
 * it, so that a change is seen on a phone. It is hidden from screen readers, which announce the status.
 */
export function VerdictPanel({ name, label, outcome, pending, earlier = [] }: Props) {
  const verdict = pending ? 'empty' : shownVerdict(outcome);
  const compared = outcome.state === 'judged' && !pending ? (earlier[0]?.short ?? '') : '';
  const word = pending ? 'Reading your entries' : [verdictWords[verdict], compared].filter(Boolean).join(', ');
  const id = `${name}-verdict`;
  return (
    <>
      <p class="visually-hidden" role="status">
        {announcement(outcome)}
        {compared !== '' && ` ${earlier[0]?.text}`}
      </p>
      <div class="verdict-bar" data-verdict={verdict} aria-hidden="true" onClick={() => showPanel(id)}>
        <VerdictShape verdict={verdict} />
        <span>{word}</span>
        <span class="verdict-bar-more">Why</span>
      </div>
      <section class="verdict" data-verdict={verdict} id={id} tabIndex={-1} aria-label={`${label}: verdict`}>
        <h3 class="verdict-word">
          <VerdictShape verdict={verdict} />
          {word}
        </h3>
        {/* The space of the last verdict is kept, so that the page does not jump with each key. */}
        <div
          class={pending ? 'verdict-reasons of-older-entries' : 'verdict-reasons'}
          aria-hidden={pending || undefined}
        >
          {compared !== '' && <Findings lines={earlier.map(({ text }) => ({ severity: 'caution', text }))} />}
          <Findings lines={findingsShown(outcome)} />
          {outcome.state === 'judged' ? <WhatNext outcome={outcome} /> : <p>{whyEmpty(outcome)}</p>}
        </div>
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
