import { href } from '../../../ui/href.ts';
import type { Piece } from '../../exercises/fill.ts';
import { fillQuestion } from '../../exercises/fill.ts';
import type { DrawnSheet, SectionQuestions } from './section-sheets.ts';

interface Props {
  section: SectionQuestions;
  sheet: DrawnSheet;
  /** The order's draw and count, printed so that sheet and answers find each other. */
  draw: number;
  sheets: number;
  answers: boolean;
}

function PieceText({ pieces }: { pieces: Piece[] }) {
  return (
    <>
      {pieces.map(({ text, limit }) =>
        limit === undefined ? (
          text
        ) : (
          <a class="limit" href={href(`/tables/#${limit}`)}>
            {text}
          </a>
        ),
      )}
    </>
  );
}

/** One sheet to print: a class sheet with room to write, or its answers. */
export function SheetView({ section, sheet, draw, sheets, answers }: Props) {
  const titleOf = (slug: string) => section.articles.find((article) => article.slug === slug)?.title;
  return (
    <section class="drawn-sheet" aria-labelledby={`sheet-${sheet.number}`}>
      <h2 id={`sheet-${sheet.number}`}>
        {answers ? 'Answers' : 'Sheet'} {sheet.number} of {sheets}: {section.title}, draw {draw}
      </h2>
      {!answers && (
        <>
          <p class="sheet-name">Name</p>
          <p>The machines and figures are invented. Give the reason with each answer.</p>
        </>
      )}
      {sheet.questions.map(({ slug, number, question }, i) => {
        const filled = fillQuestion(question);
        return (
          <div key={`${slug} ${question.id}`}>
            {sheet.questions[i - 1]?.slug !== slug && <h3>{titleOf(slug)}</h3>}
            <div class="sheet-question">
              <p>
                <strong>{number}.</strong> <PieceText pieces={filled.question} />
              </p>
              {answers ? (
                <div class="sheet-answer">
                  {filled.answer.map((pieces, place) => (
                    <p key={place}>
                      <PieceText pieces={pieces} />
                    </p>
                  ))}
                </div>
              ) : (
                <div class="sheet-lines" aria-hidden="true" />
              )}
            </div>
          </div>
        );
      })}
    </section>
  );
}
