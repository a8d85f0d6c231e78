import { useState } from 'preact/hooks';
import type { Level } from '../case/case-code.ts';
import { startTexts } from '../words/case.ts';
import { keptCase } from './kept-case.ts';

/** Draws a case, opens one by its code, or continues the stored one. */
export function StartPanel() {
  const [typed, setTyped] = useState('');
  const [error, setError] = useState('');
  const kept = keptCase();

  const draw = async (level: Level) => {
    const { newCaseCode } = await import('../case/case-code.ts');
    location.hash = newCaseCode(level);
  };
  const open = async (event: Event) => {
    event.preventDefault();
    const { normalCode } = await import('../case/case-code.ts');
    const code = normalCode(typed);
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
        <button type="button" class="primary" onClick={() => draw('all')}>
          {startTexts.draw}
        </button>
      </p>
      <p>{startTexts.levels}</p>
      <p>
        <button type="button" class="plain" onClick={() => draw('clear')}>
          {startTexts.drawClear}
        </button>{' '}
        <button type="button" class="plain" onClick={() => draw('field')}>
          {startTexts.drawField}
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
