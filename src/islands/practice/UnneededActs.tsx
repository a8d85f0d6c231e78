import type { Feedback } from '../../practice/feedback.ts';
import { stepTexts } from '../../texts/guide-steps.ts';
import { actsText, feedbackTexts, voidTexts } from '../../texts/practice-feedback.ts';
import { ArticleLink } from './ArticleLink.tsx';
import { stepArticles, voidArticles } from './links.ts';

/** What cost time and told nothing, and what was left out. */
export function UnneededActs({ feedback, articles }: { feedback: Feedback; articles: readonly string[] }) {
  const { unneeded, notAsked, leftOut } = feedback;
  return (
    <section aria-labelledby="unneeded">
      <h2 id="unneeded">{feedbackTexts.unneeded}</h2>
      {unneeded.length + notAsked.length === 0 && <p>{feedbackTexts.nothingUnneeded}</p>}
      <ul class="findings">
        {unneeded.map(({ code, at }) => (
          <li key={code} data-severity="caution" data-code={code}>
            {voidTexts[code]} ({actsText(at)}) <ArticleLink wanted={voidArticles[code]} articles={articles} />
          </li>
        ))}
        {notAsked.map(({ code, at }) => (
          <li key={code} data-severity="note">
            {feedbackTexts.notAsked(stepTexts[code].title)} ({actsText(at)})
          </li>
        ))}
      </ul>
      {leftOut.length > 0 && (
        <>
          <h3>{feedbackTexts.leftOut}</h3>
          <ul>
            {leftOut.map((step) => (
              <li key={step}>
                {stepTexts[step].title}. {stepTexts[step].why}{' '}
                <ArticleLink wanted={stepArticles[step]} articles={articles} />
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
