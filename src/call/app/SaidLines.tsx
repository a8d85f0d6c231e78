import { type Form, textOf } from '../../visit/steps/fields.ts';
import { symptom } from '../../visit/steps/symptom/question.ts';
import { saidLines } from '../notes.ts';
import { symptomReported } from '../visit-from-call.ts';

const titles = { message: 'Message', site: 'Site', drive: 'Drive', motor: 'Motor' };

/** What the caller said, in short, so that the paper can be read without the form. */
export function SaidLines({ form }: { form: Form }) {
  const texts = Object.entries(titles).map(([id, title]) => [title, textOf(form, id).trim()]);
  const lines = [['The trip', symptom.line(symptomReported(form), {})], ...texts, ...saidLines(form)];
  const said = lines.filter(([, text]) => text !== '');
  return said.length === 0 ? null : (
    <dl class="call-said">
      {said.map(([title, text]) => (
        <div key={title}>
          <dt>{title}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  );
}
