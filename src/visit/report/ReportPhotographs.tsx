import { shownTime } from '../../kernel/time/iso-time.ts';
import { JpegImage } from '../app/photographs/JpegImage.tsx';
import type { Photograph } from '../record/photograph.ts';
import { stepIds } from '../steps/ids.ts';
import { questions } from '../steps/questions.ts';
import { photographName } from '../words/photographs.ts';

/** The photographs in the order of the steps, each with its step, its time and its caption. */
export function ReportPhotographs({ photographs }: { photographs: readonly Photograph[] }) {
  if (photographs.length === 0) return null;
  const ordered = stepIds.flatMap((step) => photographs.filter((one) => one.step === step));
  return (
    <section>
      <h3>Photographs</h3>
      <ul class="report-photographs">
        {ordered.map((photograph, index) => (
          <li key={photograph.id}>
            <JpegImage photograph={photograph} alt={photographName(photograph, index + 1)} />
            <p>
              <b>{index + 1}.</b> {photograph.caption}{' '}
              <span class="report-when">
                {questions[photograph.step].title}, {shownTime(photograph.at)}
              </span>
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
