import type { PathStep } from '../../../guide/next-step.ts';
import { shownTime } from '../../../record/iso-time.ts';
import { isMeasurement, provedInEachStretch } from '../../../record/step-forms.ts';
import type { VisitRecord } from '../../../record/visit-schema.ts';
import { stepTexts } from '../../../texts/guide-steps.ts';
import { stepLine } from '../step-line.ts';

/** Every step in its order, with its time: lockouts and retries are part of the proof. */
export function ReportSteps({ visit, path }: { visit: VisitRecord; path: readonly PathStep[] }) {
  const taken = path.filter(({ id }) => visit.steps[id] !== undefined);
  return (
    <section>
      <h2>What was done</h2>
      <ol class="report-steps">
        {taken.map(({ id, status }) => {
          const step = visit.steps[id];
          return (
            <li key={id}>
              {step && (provedInEachStretch(id) ? shownTime(step.at) : step.at.slice(11, 16))}{' '}
              {stepTexts[id].title.replace(/\?$/, '')}: {step && stepLine(id, step)}
              {status !== 'done' && ' (not finished)'}
              {(step?.provedBefore ?? []).map(({ at, form }) => (
                <span key={at}>
                  {' '}
                  Before that, {shownTime(at)}: {stepLine(id, { form, readAt: {} })}.
                </span>
              ))}
              {!isMeasurement(id) && step?.form.remark && ` “${step.form.remark}”`}
            </li>
          );
        })}
      </ol>
    </section>
  );
}
