import type { StepId } from '../../guide/answers.ts';
import { stepTexts } from '../../texts/guide-steps.ts';
import { feedbackTexts } from '../../texts/practice-feedback.ts';

/** The steps that the guide asks of a careful person on this case. */
export function SoundPath({ path, acts }: { path: readonly StepId[]; acts: number }) {
  return (
    <section aria-labelledby="sound-path">
      <h2 id="sound-path">{feedbackTexts.path}</h2>
      <p>{feedbackTexts.pathLength(path.length, acts)}</p>
      <ol>
        {path.map((step) => (
          <li key={step}>{stepTexts[step].title}</li>
        ))}
      </ol>
    </section>
  );
}
