import type { Shown } from './verdict-words.ts';

/** Each verdict has an outline and a sign of its own, so that it is told without colour. */
const outlines: Record<Shown, string> = {
  go: 'M24 3a21 21 0 1 1 0 42a21 21 0 1 1 0-42z',
  'no-go': 'M5 5h38v38H5z',
  undecided: 'M24 2 46 24 24 46 2 24z',
  stop: 'M24 3 46 43H2z',
  empty: 'M24 3a21 21 0 1 1 0 42a21 21 0 1 1 0-42z',
};

const signs: Record<Shown, string> = {
  go: 'M13 25l8 8 14-17',
  'no-go': 'M14 14l20 20M34 14L14 34',
  undecided: 'M18 19a6 6 0 1 1 8 6q-2 1-2 4M24 34v1',
  stop: 'M24 17v13M24 36v1',
  empty: 'M15 24h18',
};

export function VerdictShape({ verdict }: { verdict: Shown }) {
  return (
    <svg viewBox="0 0 48 48" aria-hidden="true" focusable="false" class="verdict-shape">
      <path d={outlines[verdict]} class={verdict === 'empty' ? 'outline hollow' : 'outline'} />
      <path d={signs[verdict]} class={verdict === 'empty' ? 'sign on-paper' : 'sign'} />
    </svg>
  );
}
