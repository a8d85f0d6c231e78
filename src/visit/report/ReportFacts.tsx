import { conditionFields } from '../app/details-fields.ts';
import type { VisitRecord } from '../record/visit-schema.ts';
import type { VisitAnswers } from '../steps/questions.ts';
import { symptomTexts } from '../steps/symptom/question.ts';

interface Fact {
  name: string;
  text: string;
}

/** Site, trip, machine and conditions. Facts that are not noted are left out. */
export function ReportFacts({ visit, answers }: { visit: VisitRecord; answers: VisitAnswers }) {
  return (
    <section>
      <h3>What happened</h3>
      <dl class="report-facts">
        {facts(visit, answers)
          .filter(({ text }) => text.trim() !== '')
          .map(({ name, text }) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{text}</dd>
            </div>
          ))}
      </dl>
    </section>
  );
}

function facts(visit: VisitRecord, answers: VisitAnswers): Fact[] {
  const when = answers.symptom?.answer.when;
  const served = visit.servedAxes.map(({ drive, axes }) => `${drive || 'A drive'}: ${axes.join(', ')}`);
  const conditions = conditionFields.flatMap(({ id, label }) =>
    visit.conditions[id].trim() === '' ? [] : [`${label}: ${visit.conditions[id]}`],
  );
  return [
    { name: 'Site', text: visit.site },
    { name: 'Message of the controller', text: visit.controllerMessage },
    {
      name: 'When it trips',
      text: when === undefined ? '' : `${symptomTexts[when].label}. ${symptomTexts[when].likely}`,
    },
    { name: 'Drive', text: visit.drive },
    { name: 'Motor', text: visit.motor },
    { name: 'Drives and their axes', text: served.join('; ') },
    { name: 'Conditions', text: conditions.join('; ') },
    { name: 'Notes', text: visit.notes },
  ];
}
