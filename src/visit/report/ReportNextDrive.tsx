import type { VisitAnswers } from '../steps/questions.ts';
import { joinedParts } from './next-drive.ts';

interface Props {
  answers: VisitAnswers;
  replacesDrive: boolean;
}

/** What a new drive would be joined to, and whether it is known to be sound; or the plain statement that it is not. */
export function ReportNextDrive({ answers, replacesDrive }: Props) {
  const lines = joinedParts(answers);
  const missing = lines.some(({ tested }) => !tested);
  return (
    <section class="report-next-drive">
      <h2>What the next drive will be joined to</h2>
      <p>
        {missing
          ? 'Proof is missing. No drive is joined before it is there.'
          : replacesDrive
            ? 'Both were tested before the new drive comes. The readings are below.'
            : 'Both were tested, should the drive be exchanged later. The readings are below.'}
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
