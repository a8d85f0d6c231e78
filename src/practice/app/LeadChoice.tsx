import { terminalName } from '../words/acts.ts';
import { benchTexts } from '../words/bench.ts';
import type { Lead } from './meter-settings.ts';

interface Props {
  next: Lead;
  placed: Record<Lead, string | undefined>;
  onChoose: (lead: Lead) => void;
}

/** Which lead the next tap places, and where both are. */
export function LeadChoice({ next, placed, onChoose }: Props) {
  return (
    <fieldset>
      <legend>{benchTexts.whichLead}</legend>
      <p class="hint">{benchTexts.howToPlace}</p>
      <div class="choices short">
        {(['red', 'black'] as const).map((lead) => {
          const node = placed[lead];
          return (
            <label key={lead}>
              <input type="radio" name="next-lead" checked={next === lead} onChange={() => onChoose(lead)} />
              <span>
                {benchTexts.lead[lead]}
                <span class="option-hint">{node === undefined ? benchTexts.nowhere : terminalName(node)}</span>
              </span>
            </label>
          );
        })}
      </div>
    </fieldset>
  );
}
