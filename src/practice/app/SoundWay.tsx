import { capital } from '../../kernel/words/sentences.ts';
import { questions } from '../../visit/steps/questions.ts';
import { proofTexts, suspicionTexts } from '../../visit/words/evidence.ts';
import { openTexts } from '../../visit/words/open-items.ts';
import { partNames } from '../../visit/words/parts.ts';
import type { Feedback, WayStep } from '../case/feedback.ts';
import { feedbackTexts, settledTexts } from '../words/feedback.ts';
import { ArticleLink } from './ArticleLink.tsx';
import { stepArticles } from './further-reading.ts';

interface Props {
  feedback: Pick<Feedback, 'way' | 'line' | 'decision'>;
  articles: readonly string[];
}

/** The steps that the guide asks for on this case, the readings that settle it, and the steps that the person left out. */
export function SoundWay({ feedback: { way, line, decision }, articles }: Props) {
  return (
    <section aria-labelledby="sound-way">
      <h2 id="sound-way">{feedbackTexts.way}</h2>
      <p>{feedbackTexts.wayLength(way.length, line.length)}</p>
      <ol class="sound-way">
        {way.map((one) => (
          <WayItem key={one.step} of={one} articles={articles} />
        ))}
      </ol>
      <p>{feedbackTexts.end}</p>
      {decision.kind === 'no-fault-found' && <p>{feedbackTexts.allPass}</p>}
      <ul class="findings">
        {decision.replace.flatMap(({ part, proofs }) =>
          proofs.map((proof) => (
            <li key={part + proof} data-severity="fail">
              {capital(partNames[part])}: {proofTexts[proof]}
            </li>
          )),
        )}
        {decision.suspect.flatMap(({ part, reasons }) =>
          reasons.map((reason) => (
            <li key={part + reason} data-severity="undecided">
              {capital(partNames[part])}: {suspicionTexts[reason]}
            </li>
          )),
        )}
        {decision.open.map((item) => (
          <li key={item} data-severity="undecided">
            {openTexts[item]}
          </li>
        ))}
      </ul>
    </section>
  );
}

function WayItem({ of: { step, leftOut, settled }, articles }: { of: WayStep; articles: readonly string[] }) {
  const { title, why } = questions[step];
  return (
    <li>
      {title}
      {(settled === undefined ? [] : settledTexts(settled)).map((text) => (
        <p key={text}>{text}</p>
      ))}
      {leftOut && (
        <p>
          <b>{feedbackTexts.leftOut}</b> {why}
        </p>
      )}
      {(leftOut || settled !== undefined) && (
        <p>
          <ArticleLink wanted={stepArticles[step]} articles={articles} />
        </p>
      )}
    </li>
  );
}
