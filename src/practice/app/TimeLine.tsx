import { questions } from '../../visit/steps/questions.ts';
import { actsWith, type Mark, type TimedAct } from '../case/time-line.ts';
import { actionText, resultText } from '../words/acts.ts';
import { feedbackTexts, voidTexts } from '../words/feedback.ts';
import { unsafeTexts } from '../words/unsafe.ts';
import { ArticleLink } from './ArticleLink.tsx';
import { unsafeArticles, voidArticles } from './further-reading.ts';

interface Props {
  line: readonly TimedAct[];
  articles: readonly string[];
}

/** Every act in order, with its result and what it was worth. */
export function TimeLine({ line, articles }: Props) {
  return (
    <section aria-labelledby="time-line">
      <h2 id="time-line">{feedbackTexts.line}</h2>
      <p>{feedbackTexts.lineSummary(line.length, actsWith(line, 'unsafe'), actsWith(line, 'told-nothing'))}</p>
      <ol class="time-line">
        {line.map(({ entry, marks }, position) => (
          <li key={String(position)} data-worth={marks[0]?.kind}>
            <p>
              {actionText(entry.action)}. <strong>{resultText(entry.result)}</strong>
            </p>
            {marks.map((mark) => (
              <p key={keyOf(mark)} class="act-mark" data-mark={mark.kind} data-code={codeOf(mark)}>
                <b>{feedbackTexts.marks[mark.kind]}</b> <Worth mark={mark} articles={articles} />
              </p>
            ))}
          </li>
        ))}
      </ol>
    </section>
  );
}

const codeOf = (mark: Mark) => ('code' in mark ? mark.code : undefined);

const keyOf = (mark: Mark) => mark.kind + ('code' in mark ? mark.code : mark.step);

/** Why an act has its mark, and what to read about it. A repeated mark only names the first act that had it. */
function Worth({ mark, articles }: { mark: Mark; articles: readonly string[] }) {
  if (mark.kind === 'told-nothing') {
    if (mark.first !== undefined) return <>{feedbackTexts.asInAct(mark.first)}</>;
    return (
      <>
        {voidTexts[mark.code]} <ArticleLink wanted={voidArticles[mark.code]} articles={articles} />
      </>
    );
  }
  if (mark.kind === 'unsafe') {
    return (
      <>
        {mark.first === undefined ? unsafeTexts[mark.code]() : feedbackTexts.asInAct(mark.first)}{' '}
        <ArticleLink wanted={unsafeArticles[mark.code]} articles={articles} />
      </>
    );
  }
  const title = mark.step === 'bus' ? feedbackTexts.bus : questions[mark.step].title;
  if (mark.kind === 'not-needed') return <>{feedbackTexts.notNeeded(title)}</>;
  return <>{mark.settles ? feedbackTexts.settles(title) : feedbackTexts.told(title)}</>;
}
