import { useEffect, useState } from 'preact/hooks';
import { fragment } from '../../../ui/fragment.ts';
import { ExportPart } from './ExportPart.tsx';
import { OrderForm } from './OrderForm.tsx';
import { SheetView } from './SheetView.tsx';
import { type DrawnSheet, drawnSheets, type SectionQuestions } from './section-sheets.ts';
import { fragmentOf, orderOf, type SheetOrder } from './sheet-order.ts';

/** Gives way to the browser. */
const pause = () => new Promise<void>((resume) => setTimeout(resume));

/** The sheets of a class, each with its own figures, to print; and their answers. */
export function DrawnSheets({ section }: { section: SectionQuestions }) {
  const [order, setOrder] = useState<SheetOrder>(() => orderOf(fragment()));
  const [sheets, setSheets] = useState<DrawnSheet[]>();
  const [answers, setAnswers] = useState(false);

  useEffect(() => {
    const read = () => setOrder(orderOf(fragment()));
    addEventListener('hashchange', read);
    return () => removeEventListener('hashchange', read);
  }, []);

  useEffect(() => {
    let current = true;
    setSheets(undefined);
    // A newer order stops the draw of the one before.
    const goOn = async () => {
      await pause();
      if (!current) throw new Error('superseded');
    };
    drawnSheets(section, order, goOn).then(
      (drawn) => current && setSheets(drawn),
      (problem: unknown) => {
        if (current) throw problem;
      },
    );
    return () => {
      current = false;
    };
  }, [order, section]);

  const change = (next: SheetOrder) => {
    history.replaceState(null, '', `#${fragmentOf(next)}`);
    setOrder(next);
  };
  const count = sheets?.[0]?.questions.length ?? 0;
  return (
    <>
      <OrderForm section={section} order={order} onOrder={change} />
      <p role="status">
        {sheets === undefined
          ? 'Drawing…'
          : count === 0
            ? 'No question of this article has figures to draw.'
            : `${sheets.length} sheets with ${count} questions each. The address of this page draws the same sheets again.`}
      </p>
      {sheets !== undefined && count > 0 && (
        <>
          <p>
            <button type="button" class="primary" onClick={() => print()}>
              Print {answers ? 'the answers' : 'the sheets'}
            </button>{' '}
            <button type="button" class="plain" aria-pressed={answers} onClick={() => setAnswers(!answers)}>
              Show answers
            </button>
          </p>
          <ExportPart section={section} draw={order.draw} sheets={sheets} />
          {sheets.map((sheet) => (
            <SheetView
              key={sheet.number}
              section={section}
              sheet={sheet}
              draw={order.draw}
              sheets={sheets.length}
              answers={answers}
            />
          ))}
        </>
      )}
    </>
  );
}
