import type { VisitAnswers } from '../steps/questions.ts';
import { reportTexts } from '../words/visit.ts';
import { joinedParts } from './next-drive.ts';

interface Props {
  answers: VisitAnswers;
  replacesDrive: boolean;
}

/** What a new drive would be joined to, and whether that is known to be sound. */
export function ReportNextDrive({ answers, replacesDrive }: Props) {
  const lines = joinedParts(answers);
  const missing = lines.some(({ tested }) => !tested);
  return (
    <section class="report-next-drive">
      <h3>What the next drive will be joined to</h3>
      <p>
        {missing
          ? reportTexts.proofMissing
          : replacesDrive
            ? reportTexts.testedBeforeNewDrive
            : reportTexts.testedForLater}
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
