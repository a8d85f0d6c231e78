import type { Shown } from '../../kernel/form/verdict-words.ts';

const circle = 'M24 3a21 21 0 1 1 0 42a21 21 0 1 1 0-42z';

/**
 * Each verdict has its own outline and sign, so that it is clear without colour. Undecided joins half of no-go's
 * square, open, to half of go's circle, filled: it may still become either.
 */
const outlines: Record<Shown, string> = {
  go: circle,
  'no-go': 'M5 5h38v38H5z',
  undecided: 'M25 4h19v40H25z',
  stop: 'M24 3 46 43H2z',
  empty: circle,
};

const signs: Record<Shown, string> = {
  go: 'M13 25l8 8 14-17',
  'no-go': 'M14 14l20 20M34 14L14 34',
  undecided: 'M25 2a22 22 0 0 0 0 44z',
  stop: 'M24 17v13M24 36v1',
  empty: 'M15 24h18',
};

export function VerdictShape({ verdict }: { verdict: Shown }) {
  return (
    <svg viewBox="0 0 48 48" aria-hidden="true" focusable="false" class="verdict-shape" data-shape={verdict}>
      <path d={outlines[verdict]} class="outline" />
      <path d={signs[verdict]} class="sign" />
    </svg>
  );
}
