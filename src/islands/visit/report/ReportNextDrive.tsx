import type { VisitAnswers } from '../../../guide/answers.ts';
import { warrantyLines } from './warranty.ts';

interface Props {
  answers: VisitAnswers;
  replacesDrive: boolean;
}

/** The proof that a supplier asks for, or the plain statement that it is missing. */
export function ReportWarranty({ answers, replacesDrive }: Props) {
  const lines = warrantyLines(answers);
  const missing = lines.some(({ tested }) => !tested);
  return (
    <section class="report-warranty">
      <h2>Proof that motor and cable were tested</h2>
      <p>
        A supplier’s warranty on an exchanged drive often rests on this proof.{' '}
        {missing
          ? 'It is not complete.'
          : replacesDrive
            ? 'The readings below give it.'
            : 'The readings below give it, should the drive be exchanged later.'}
      </p>
      <ul>
        {lines.map(({ part, text }) => (
          <li key={part}>
            <b>{part}</b>: {text}
          </li>
        ))}
      </ul>
    </section>
  );
}
