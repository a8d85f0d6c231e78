import { useEffect, useState } from 'preact/hooks';
import type { SectionQuestions } from './section-sheets.ts';
import { mostSheets, otherDraw, type SheetOrder, wholeNumber } from './sheet-order.ts';

interface Props {
  section: SectionQuestions;
  order: SheetOrder;
  onOrder: (order: SheetOrder) => void;
}

/** How many sheets, of which questions, and which figures. */
export function OrderForm({ section, order, onOrder }: Props) {
  const [typed, setTyped] = useState(String(order.sheets));
  useEffect(() => setTyped(String(order.sheets)), [order.sheets]);
  const bad = wholeNumber(typed, 1, mostSheets) === undefined;
  const countSheets = (text: string) => {
    setTyped(text);
    const sheets = wholeNumber(text, 1, mostSheets);
    if (sheets !== undefined) onOrder({ ...order, sheets });
  };
  const choose = (slug: string) => {
    const { article: _, ...rest } = order;
    onOrder(slug === '' ? rest : { ...rest, article: slug });
  };
  return (
    <div class="sheet-order">
      <div class={bad ? 'field is-bad' : 'field'}>
        <label for="sheets-count">How many sheets</label>
        <input
          id="sheets-count"
          inputMode="numeric"
          value={typed}
          aria-invalid={bad}
          aria-describedby="sheets-count-error"
          onInput={(event) => countSheets(event.currentTarget.value)}
        />
        <p class="error" id="sheets-count-error">
          {bad && `A whole number from 1 to ${mostSheets}.`}
        </p>
      </div>
      <div class="field words">
        <label for="sheets-article">Questions of</label>
        <select id="sheets-article" value={order.article ?? ''} onChange={(event) => choose(event.currentTarget.value)}>
          <option value="">all articles of this section</option>
          {section.articles.map(({ slug, title }) => (
            <option key={slug} value={slug}>
              {title}
            </option>
          ))}
        </select>
      </div>
      <p>
        <label class="sheet-all">
          <input
            type="checkbox"
            checked={order.all}
            onChange={(event) => onOrder({ ...order, all: event.currentTarget.checked })}
          />{' '}
          Also questions without figures, alike on every sheet
        </label>
      </p>
      <p>
        Draw {order.draw}.{' '}
        <button
          type="button"
          class="plain"
          onClick={() => onOrder({ ...order, draw: otherDraw(order.draw, Math.random()) })}
        >
          Draw other figures
        </button>
      </p>
    </div>
  );
}
