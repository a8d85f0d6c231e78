import { shownTime } from '../../kernel/time/iso-time.ts';
import type { EvaluatedVisit } from '../evaluate.ts';
import { questions } from '../steps/questions.ts';
import { holdsOneStretch } from '../steps/rules.ts';

/** Every step in order with its time, since lockouts and retries are part of the proof. */
export function ReportSteps({ evaluated }: { evaluated: EvaluatedVisit }) {
  const { visit, guide, steps } = evaluated;
  const taken = guide.path.filter(({ id }) => visit.steps[id] !== undefined);
  return (
    <section>
      <h3>What was done</h3>
      <ol class="report-steps">
        {taken.map(({ id, status }) => {
          const step = visit.steps[id];
          return (
            <li key={id}>
              {step && (holdsOneStretch(id) ? shownTime(step.at) : step.at.slice(11, 16))}{' '}
              {questions[id].title.replace(/\?$/, '')}: {steps[id].line}
              {status !== 'done' && ' (not finished)'}
              {steps[id].provedBefore.map(({ at, line }) => (
                <span key={at}>
                  {' '}
                  Before that, {shownTime(at)}: {line}.
                </span>
              ))}
              {step?.form.remark && ` “${step.form.remark}”`}
            </li>
          );
        })}
      </ol>
    </section>
  );
}
