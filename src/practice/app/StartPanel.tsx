import { useState } from 'preact/hooks';
import { startTexts } from '../words/start.ts';
import { keptCase } from './kept-case.ts';

/** Draw a case, type the code of one, or go on with the one that is kept. */
export function StartPanel() {
  const [typed, setTyped] = useState('');
  const [error, setError] = useState('');
  const kept = keptCase();

  const draw = async () => {
    const { newCase } = await import('./new-case.ts');
    location.hash = newCase();
  };
  const open = async (event: Event) => {
    event.preventDefault();
    const { readCode } = await import('./new-case.ts');
    const code = readCode(typed);
    if (code === undefined) setError(startTexts.badCode);
    else location.hash = code;
  };

  return (
    <>
      <h1 tabIndex={-1}>{startTexts.title}</h1>
      <p class="lead">{startTexts.lead}</p>
      <p>{startTexts.invented}</p>
      {kept && kept.conclusion === undefined && kept.actions.length > 0 && (
        <p class="look-again">
          {startTexts.underWay(kept.code, kept.actions.length)}{' '}
          <a class="button" href={`#${kept.code}`}>
            {startTexts.goOn}
          </a>
        </p>
      )}
      <ol>
        {startTexts.how.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ol>
      <p>
        <button type="button" class="primary" onClick={draw}>
          {startTexts.draw}
        </button>
      </p>
      <form onSubmit={open} noValidate>
        <div class={error === '' ? 'field' : 'field is-bad'}>
          <label for="case-code">{startTexts.codeLabel}</label>
          <p class="hint" id="case-code-hint">
            {startTexts.codeHint}
          </p>
          <input
            id="case-code"
            autocapitalize="characters"
            spellcheck={false}
            value={typed}
            aria-describedby="case-code-hint case-code-error"
            aria-invalid={error !== ''}
            onInput={(event) => {
              setTyped(event.currentTarget.value);
              setError('');
            }}
          />
          <p class="error" id="case-code-error" role="alert">
            {error}
          </p>
        </div>
        <button type="submit" class="plain">
          {startTexts.open}
        </button>
      </form>
    </>
  );
}
