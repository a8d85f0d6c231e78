import { useRef, useState } from 'preact/hooks';
import { limitValue } from '../../../kernel/limits.ts';
import { useEntries } from '../../../ui/form/use-entries.ts';
import type { Photograph } from '../../record/photograph.ts';
import { photographName, photographTexts } from '../../words/photographs.ts';
import { JpegImage } from './JpegImage.tsx';
import type { VisitPhotographs } from './use-photographs.ts';

interface Props {
  photograph: Photograph;
  /** Among those of its step, from 1. */
  number: number;
  of: VisitPhotographs;
  onRemove: () => void;
}

/** One photograph of a step, with its caption, and a way to remove it that asks first. */
export function PhotographItem({ photograph, number, of, onRemove }: Props) {
  const [asked, setAsked] = useState(false);
  const asking = useRef<HTMLButtonElement>(null);
  const name = photographName(photograph, number);
  const id = `photograph-${photograph.id}`;
  const caption = useEntries({
    start: { text: photograph.caption },
    onTyped: ({ text }) => of.typeCaption(photograph, text),
    onSettled: ({ text }) => of.settleCaption(photograph, text),
  });
  const keep = () => {
    setAsked(false);
    // The button that had the focus has gone.
    setTimeout(() => asking.current?.focus());
  };
  return (
    <li>
      <JpegImage photograph={photograph} alt={name} />
      {of.unsaved.includes(photograph.id) && <p class="photograph-unsaved">{photographTexts.onlyHere}</p>}
      <div class="field words">
        <label for={id}>{photographTexts.caption(number)}</label>
        <input
          id={id}
          type="text"
          enterKeyHint="done"
          maxLength={limitValue('record-text')}
          value={caption.typed.text}
          onInput={({ currentTarget: { value } }) => caption.type(() => ({ text: value }))}
          onBlur={caption.leave}
        />
      </div>
      {asked ? (
        <p class="banner-actions" role="alert">
          <span>{photographTexts.askRemove}</span>
          <button type="button" class="plain" onClick={onRemove}>
            Remove it
          </button>
          <button type="button" class="plain" onClick={keep}>
            Keep it
          </button>
        </p>
      ) : (
        <p class="banner-actions">
          <button type="button" class="plain" ref={asking} onClick={() => setAsked(true)}>
            Remove<span class="visually-hidden"> photograph {number}</span>
          </button>
        </p>
      )}
    </li>
  );
}
