import { VerdictShape } from '../../ui/verdict/VerdictShape.tsx';
import type { EvaluatedVisit } from '../evaluate.ts';
import { baselineTexts } from '../words/baseline.ts';

interface Props {
  evaluated: EvaluatedVisit;
  onTrip: () => void;
}

/** How a baseline visit stands; nothing for a visit after a trip. */
export function BaselinePanel({ evaluated, onTrip }: Props) {
  const { baseline } = evaluated.guide;
  if (baseline === undefined) return null;
  if (baseline === 'open') return <p class="baseline-lead">{baselineTexts.lead()}</p>;
  const shape = baseline === 'complete' ? 'go' : 'undecided';
  return (
    <section class="verdict decision" data-verdict={shape} aria-labelledby="decision">
      <h2 class="verdict-word" id="decision" tabIndex={-1}>
        <VerdictShape verdict={shape} />
        {baselineTexts.headline[baseline]}
      </h2>
      <p>{baseline === 'complete' ? baselineTexts.complete : baselineTexts.notSound}</p>
      {baseline === 'not-sound' && (
        <button type="button" class="primary" onClick={onTrip}>
          {baselineTexts.goOn}
        </button>
      )}
    </section>
  );
}
