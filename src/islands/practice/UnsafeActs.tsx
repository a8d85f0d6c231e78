import type { Feedback } from '../../practice/feedback.ts';
import { actsText, feedbackTexts } from '../../texts/practice-feedback.ts';
import { unsafeTexts } from '../../texts/practice-unsafe.ts';
import { ArticleLink } from './ArticleLink.tsx';
import { unsafeArticles } from './links.ts';

/** What was unsafe, in which acts, and what to read about it. */
export function UnsafeActs({ unsafe, articles }: { unsafe: Feedback['unsafe']; articles: readonly string[] }) {
  return (
    <section aria-labelledby="unsafe">
      <h2 id="unsafe">{feedbackTexts.unsafe}</h2>
      {unsafe.length === 0 && <p>{feedbackTexts.nothingUnsafe}</p>}
      <ul class="findings">
        {unsafe.map(({ code, at }) => (
          <li key={code} data-severity="stop" data-code={code}>
            {unsafeTexts[code]()} ({actsText(at)}) <ArticleLink wanted={unsafeArticles[code]} articles={articles} />
          </li>
        ))}
      </ul>
    </section>
  );
}
