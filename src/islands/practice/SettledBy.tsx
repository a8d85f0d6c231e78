import type { Feedback } from '../../practice/feedback.ts';
import { openTexts, partNames, proofTexts } from '../../texts/decision.ts';
import { stepTexts } from '../../texts/guide-steps.ts';
import { feedbackTexts, settledText } from '../../texts/practice-feedback.ts';
import { capital } from '../../texts/sentences.ts';
import { ArticleLink } from './ArticleLink.tsx';
import { stepArticles } from './links.ts';

/** Readings and trials that settle the case, or what has to stay open and the test that would tell. */
export function SettledBy({ feedback, articles }: { feedback: Feedback; articles: readonly string[] }) {
  const { decision, settled } = feedback;
  return (
    <section aria-labelledby="settled">
      <h2 id="settled">{feedbackTexts.settled}</h2>
      {decision.kind === 'no-fault-found' && <p>{feedbackTexts.allPass}</p>}
      <ul class="findings">
        {decision.replace.flatMap(({ part, proofs }) =>
          proofs.map((proof) => (
            <li key={part + proof} data-severity="fail">
              {capital(partNames[part])}: {proofTexts[proof]}
            </li>
          )),
        )}
        {decision.open.map((item) => (
          <li key={item} data-severity="undecided">
            {openTexts[item]}
          </li>
        ))}
      </ul>
      {settled.map(({ step, findings }) => (
        <div key={step}>
          <h3>{stepTexts[step].title}</h3>
          <ul>
            {findings.map((finding) => (
              <li key={finding.code + finding.readings.join()}>{settledText(step, finding)}</li>
            ))}
          </ul>
          <p>
            <ArticleLink wanted={stepArticles[step]} articles={articles} />
          </p>
        </div>
      ))}
    </section>
  );
}
