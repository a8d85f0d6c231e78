import { useState } from 'preact/hooks';
import type { Part } from '../../kernel/vocabulary.ts';
import { partNames } from '../../visit/words/parts.ts';
import { type Conclusion, parts } from '../case/conclusion.ts';
import { conclusionTexts } from '../words/case.ts';

const kinds = ['replace', 'nothing', 'undecided'] as const;

/** The decision, which ends the case. */
export function ConclusionForm({ onConclude }: { onConclude: (conclusion: Conclusion) => void }) {
  const [kind, setKind] = useState<Conclusion['kind']>();
  const [named, setNamed] = useState<readonly Part[]>([]);
  const [error, setError] = useState('');

  const end = (event: Event) => {
    event.preventDefault();
    if (kind === undefined) return setError(conclusionTexts.noneChosen);
    if (kind === 'replace' && named.length === 0) return setError(conclusionTexts.noPart);
    onConclude(kind === 'replace' ? { kind, parts: parts.filter((part) => named.includes(part)) } : { kind });
  };
  return (
    <form onSubmit={end} noValidate class="practice-decision">
      <h2 id="decide" tabIndex={-1}>
        Decide
      </h2>
      <fieldset>
        <legend>{conclusionTexts.question}</legend>
        <div class="choices">
          {kinds.map((one) => (
            <label key={one}>
              <input type="radio" name="conclusion" checked={kind === one} onChange={() => setKind(one)} />
              <span>{conclusionTexts[one]}</span>
            </label>
          ))}
        </div>
      </fieldset>
      {kind === 'replace' && (
        <fieldset>
          <legend>{conclusionTexts.partsQuestion}</legend>
          <div class="choices">
            {parts.map((part) => (
              <label key={part}>
                <input
                  type="checkbox"
                  checked={named.includes(part)}
                  onChange={(event) =>
                    setNamed(event.currentTarget.checked ? [...named, part] : named.filter((one) => one !== part))
                  }
                />
                <span>{partNames[part]}</span>
              </label>
            ))}
          </div>
        </fieldset>
      )}
      <p class="error" role="alert">
        {error}
      </p>
      <button type="submit" class="primary">
        {conclusionTexts.end}
      </button>
    </form>
  );
}
