import { useState } from 'preact/hooks';
import type { FormState } from '../../ui/form/use-form.ts';
import { type Pasted, parsePasted } from './paste.ts';

interface Props {
  /** What the ids of the fields begin with. */
  name: string;
  form: FormState;
}

/** Takes a column of readings from a log or a spreadsheet, shows the lines that it can't read, and can be undone. */
export function PasteReadings({ name, form }: Props) {
  const [text, setText] = useState('');
  const [result, setResult] = useState<Pasted>();
  const take = () => {
    const pasted = parsePasted(text);
    setResult(pasted);
    const count = Object.keys(pasted.taken).length;
    if (count > 0) form.fill({ ...form.typed, ...pasted.taken }, `Taken over: ${count} of the pasted lines.`);
  };
  const id = `${name}-paste`;
  return (
    <details class="more">
      <summary>Paste readings</summary>
      <div class="field">
        <label for={id}>One reading a line</label>
        <p class="hint" id={`${id}-hint`}>
          Time with its unit, then the reading: 30 s 450M, or 1:00 620M.
        </p>
        <textarea
          id={id}
          rows={6}
          spellcheck={false}
          aria-describedby={`${id}-hint`}
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </div>
      <button type="button" class="plain" onClick={take}>
        Take over
      </button>
      <div role="status">
        {result && result.leftOut.length > 0 && (
          <>
            <p class="error">Left out: {result.leftOut.length}</p>
            <ul>
              {result.leftOut.map(({ line, reason }, index) => (
                <li key={`${index} ${line}`}>
                  “{line}”: {reason}
                </li>
              ))}
            </ul>
          </>
        )}
      </div>
    </details>
  );
}
