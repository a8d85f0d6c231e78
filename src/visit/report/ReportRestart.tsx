import { isEmpty } from '../evaluate-form.ts';
import type { Decision } from '../guide/decision.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import { fieldsOf, wantedRows } from '../restart/rows.ts';
import { leadsBackToService, restartState } from '../restart/state.ts';
import { restartHeadline, restartNext, restartTexts } from '../restart/words.ts';
import { textOf } from '../steps/fields.ts';
import { answerInLine } from '../steps/question.ts';

/** What was done from the decision to the machine that runs; nothing if nobody has begun. */
export function ReportRestart({ visit: { restart = {} }, decision }: { visit: VisitRecord; decision: Decision }) {
  if (isEmpty(restart)) return null;
  const state = restartState(restart, decision);
  const fields = fieldsOf(wantedRows(decision)).filter(({ id }) => id !== 'remark');
  const remark = textOf(restart, 'remark').trim();
  return (
    <section>
      <h3>{restartTexts.heading}</h3>
      <p>
        <b>{restartHeadline(state)}.</b> {restartNext(state).join(' ')}
        {!leadsBackToService(decision) && ` ${restartTexts.otherDecision}`}
      </p>
      <table>
        <tbody>
          {fields.map((field) => (
            <tr key={field.id}>
              <th scope="row">{field.name}</th>
              <td>{answerInLine(field, restart).join('') || restartTexts.notAnswered}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {remark !== '' && <p>{remark}</p>}
    </section>
  );
}
