import { useRef } from 'preact/hooks';
import type { Shown } from '../../kernel/form/verdict-words.ts';
import { useOpening } from '../../ui/form/folded-parts.ts';
import { formProps } from '../../ui/form/form-behaviour.ts';
import { useFields } from '../../ui/form/use-fields.ts';
import { href } from '../../ui/href.ts';
import { VerdictShape } from '../../ui/verdict/VerdictShape.tsx';
import { type EvaluatedVisit, evaluate } from '../evaluate.ts';
import { isEmpty } from '../evaluate-form.ts';
import type { Decision } from '../guide/decision.ts';
import { changeDetails } from '../record/change-visit.ts';
import { fieldsOf, wantedRows } from '../restart/rows.ts';
import { leadsBackToService, type RestartState, restartState } from '../restart/state.ts';
import { restartHeadline, restartNext, restartTexts } from '../restart/words.ts';
import { QuestionField } from './QuestionField.tsx';
import type { VisitSession } from './use-session.ts';

interface Props {
  evaluated: EvaluatedVisit;
  session: VisitSession;
}

const shapes: Record<RestartState['kind'], Shown> = {
  'trips-again': 'stop',
  fault: 'no-go',
  'too-early': 'stop',
  open: 'undecided',
  closed: 'go',
};

/** From the decision to the machine that runs: what was measured, connected, set and tried. Part of the record. */
export function RestartPanel({ evaluated: { visit, guide }, session }: Props) {
  const { decision } = guide;
  const begun = !isEmpty(visit.restart ?? {});
  if (decision === undefined || !(begun || leadsBackToService(decision))) return null;
  return (
    <details class="more restart" ref={useOpening(begun)}>
      <summary>{restartTexts.heading}</summary>
      <Rows key={`${session.loaded} ${wantedRows(decision)}`} decision={decision} visit={visit} session={session} />
    </details>
  );
}

function Rows({
  decision,
  visit,
  session,
}: {
  decision: Decision;
  visit: EvaluatedVisit['visit'];
  session: VisitSession;
}) {
  const fields = fieldsOf(wantedRows(decision));
  const form = useFields({
    fields,
    start: visit.restart ?? {},
    onTyped: (restart) => session.draft({ details: { restart } }),
    onSettled: (restart) =>
      session.change((before, now) => evaluate(changeDetails(before.visit, { restart }, now), now, before)),
  });
  const state = restartState(form.typed, decision);
  return (
    <>
      <p>
        {restartTexts.lead} The order, and why:{' '}
        <a href={href('/articles/deciding/before-power-goes-on-again/')}>Before power goes on again</a>.
      </p>
      <div class="caution" data-kind="danger" role="note">
        <p class="caution-word">Danger</p>
        <p>{restartTexts.danger}</p>
        {!leadsBackToService(decision) && <p>{restartTexts.otherDecision}</p>}
      </div>
      <form class="step-form" {...formProps}>
        {fields.map((field) => (
          <QuestionField key={field.id} name="restart" field={field} form={form} />
        ))}
      </form>
      {!isEmpty(form.typed) && <Standing state={state} />}
    </>
  );
}

/** Beside the form while its end is out of sight: a row that was pressed too early is high above it. */
function Standing({ state }: { state: RestartState }) {
  const place = useRef<HTMLElement>(null);
  const headline = restartHeadline(state);
  return (
    <>
      <div
        class="verdict-bar"
        data-verdict={shapes[state.kind]}
        aria-hidden="true"
        onClick={() => place.current?.scrollIntoView({ block: 'nearest' })}
      >
        <VerdictShape verdict={shapes[state.kind]} />
        <span class="verdict-bar-words">
          <b>{headline}</b>
        </span>
        <span class="verdict-bar-more">Why</span>
      </div>
      <section class="verdict" data-verdict={shapes[state.kind]} role="status" ref={place}>
        <h3 class="verdict-word">
          <VerdictShape verdict={shapes[state.kind]} />
          {headline}
        </h3>
        {restartNext(state).map((text) => (
          <p key={text}>{text}</p>
        ))}
      </section>
    </>
  );
}
