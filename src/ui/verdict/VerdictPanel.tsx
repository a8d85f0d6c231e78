import type { ComponentChildren } from 'preact';
import type { Outcome } from '../../kernel/form/calculator-form.ts';
import type { StepLine } from '../../kernel/form/opening.ts';
import {
  announcement,
  findingsShown,
  headlineOf,
  shownVerdict,
  verdictWords,
} from '../../kernel/form/verdict-words.ts';
import { Findings } from './Findings.tsx';
import { LimitsUsed } from './LimitsUsed.tsx';
import { VerdictShape } from './VerdictShape.tsx';

interface Props {
  name: string;
  /** Of the calculator: a page may hold several verdicts. */
  label: string;
  outcome: Outcome;
  /** Something was typed since, so the verdict on the older entries must not be shown for the new ones. */
  pending: boolean;
  /** Tries once more to load the rule; given only if it could not be loaded. */
  retry?: (() => void) | undefined;
  /** What earlier readings of the same part say about these: said with the verdict, and never changing it. */
  earlier?: readonly { short: string; text: string }[] | undefined;
  /** The link of a step that goes on with another calculator; without it, steps are words alone. */
  link?: (opens: NonNullable<StepLine['opens']>) => ComponentChildren;
  /** What else can be done with a verdict, after its steps. */
  onward?: ComponentChildren;
  /** What is drawn of the verdict. */
  children?: ComponentChildren;
}

/** What lies in the way of a decision, or qualifies it; the rest is folded. */
const pressing = ['stop', 'fail', 'undecided', 'caution'];

/**
 * The verdict in one line, what decides it, and what to do next; what passes and the limits are folded below. The bar
 * stays at the bottom of the window until the panel covers it, so that a change is seen on a phone. It is hidden from
 * screen readers, which announce the status.
 */
export function VerdictPanel({ name, label, outcome, pending, retry, earlier = [], link, onward, children }: Props) {
  const verdict = pending ? 'empty' : shownVerdict(outcome);
  const word = retry ? 'No verdict yet' : pending ? 'Reading your entries' : verdictWords[verdict];
  const compared = outcome.state === 'judged' && !pending ? earlier : [];
  const headline = pending ? '' : [headlineOf(outcome), compared[0]?.short].filter(Boolean).join(', ');
  const findings = findingsShown(outcome);
  const older = pending || undefined;
  const id = `${name}-verdict`;
  return (
    <>
      <p class="visually-hidden" role="status">
        {[announcement(outcome), ...compared.map(({ text }) => text)].join(' ')}
      </p>
      <div class="verdict-bar" data-verdict={verdict} aria-hidden="true" onClick={() => showPanel(id)}>
        <VerdictShape verdict={verdict} />
        <span class="verdict-bar-words">
          <b>{word}</b>
          {headline && ` ${headline}`}
        </span>
        <span class="verdict-bar-more">Why</span>
      </div>
      <section class="verdict" data-verdict={verdict} id={id} tabIndex={-1} aria-label={`${label}: verdict`}>
        <h3 class="verdict-head">
          <span class="verdict-word">
            <VerdictShape verdict={verdict} />
            {word}
          </span>
          {headline && <span class="visually-hidden">: </span>}
          {headline && <span class="verdict-headline">{headline}</span>}
        </h3>
        <div role="alert">{retry && <RuleNotLoaded retry={retry} />}</div>
        {/* The space of the last verdict is kept, so that the page does not jump with each key. */}
        <div class={older ? 'verdict-reasons of-older-entries' : 'verdict-reasons'} aria-hidden={older}>
          <Findings lines={findings.filter(({ severity }) => pressing.includes(severity))} />
          <Findings lines={compared.map(({ text }) => ({ severity: 'caution', text }))} />
          {outcome.state === 'judged' && <NextSteps steps={outcome.steps} link={link} />}
          <Findings lines={findings.filter((line) => line.inSight && !pressing.includes(line.severity))} />
          {outcome.state === 'judged' && onward}
        </div>
        {children}
        {outcome.state === 'judged' && (
          <details class={older ? 'verdict-details of-older-entries' : 'verdict-details'}>
            <summary>Details: what passes, remarks, limits used</summary>
            <Findings lines={findings.filter((line) => !line.inSight && !pressing.includes(line.severity))} />
            <LimitsUsed lines={outcome.limitLines} />
          </details>
        )}
      </section>
    </>
  );
}

function RuleNotLoaded({ retry }: { retry: () => void }) {
  return (
    <>
      <p>
        The rule of this calculator could not be loaded: there is no network. Nothing is judged. Your entries are kept.
      </p>
      <button type="button" class="plain" onClick={retry}>
        Try again
      </button>
    </>
  );
}

function NextSteps({ steps, link }: { steps: readonly StepLine[]; link: Props['link'] }) {
  if (steps.length === 0) return null;
  return (
    <>
      <h4>Next</h4>
      <ol class="next-steps">
        {steps.map(({ text, opens }) => (
          <li key={text}>
            {text}
            {opens && link?.(opens)}
          </li>
        ))}
      </ol>
    </>
  );
}

function showPanel(id: string): void {
  const panel = document.getElementById(id);
  panel?.scrollIntoView();
  panel?.focus({ preventScroll: true });
}
