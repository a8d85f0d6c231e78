import { shownTime } from '../../kernel/time/iso-time.ts';
import { sameForm } from '../record/visit-draft.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import type { Form } from '../steps/fields.ts';
import { type AskedStepId, questions } from '../steps/questions.ts';

interface Props {
  id: AskedStepId;
  visit: VisitRecord;
  /** With the form of the step: what was said, and what was entered here, which takes precedence. */
  onConfirm: (form: Form) => void;
}

/** What was said on the phone about this step. It fills nothing in by itself: the person at the machine confirms it. */
export function ReportedAnswer({ id, visit: { reported, steps }, onConfirm }: Props) {
  const said = reported?.steps[id];
  const answered = Object.entries(steps[id]?.form ?? {}).filter(([, value]) => value.trim() !== '');
  const entered = Object.fromEntries(answered);
  if (reported === undefined || said === undefined || sameForm({ ...said, ...entered }, entered)) return null;
  return (
    <div class="look-again">
      <p>
        <b>Reported on the phone</b>, {shownTime(reported.at)}: {questions[id].line(said, {})}. It does not count yet.
        Ask the person who saw it, then confirm or answer below.
      </p>
      <button type="button" class="plain" onClick={() => onConfirm({ ...said, ...entered })}>
        Confirmed on site: take it over
      </button>
    </div>
  );
}
