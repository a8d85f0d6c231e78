import type { Shown } from './verdict-words.ts';

const circle = 'M24 3a21 21 0 1 1 0 42a21 21 0 1 1 0-42z';

/**
 * Each verdict has an outline and a sign of its own, so that it is told without colour. Undecided is half of go's circle,
 * filled, joined to half of no-go's square, empty: nobody knows yet which it will be.
 */
const shapes: Record<Shown, { outline: string; outlineClass: string; sign: string; signClass: string }> = {
  go: { outline: circle, outlineClass: 'outline', sign: 'M13 25l8 8 14-17', signClass: 'sign' },
  'no-go': { outline: 'M5 5h38v38H5z', outlineClass: 'outline', sign: 'M14 14l20 20M34 14L14 34', signClass: 'sign' },
  undecided: {
    outline: 'M25 4h19v40H25z',
    outlineClass: 'open-half',
    sign: 'M25 2a22 22 0 0 0 0 44z',
    signClass: 'filled-half',
  },
  stop: { outline: 'M24 3 46 43H2z', outlineClass: 'outline', sign: 'M24 17v13M24 36v1', signClass: 'sign' },
  empty: { outline: circle, outlineClass: 'outline hollow', sign: 'M15 24h18', signClass: 'sign on-paper' },
};

export function VerdictShape({ verdict }: { verdict: Shown }) {
  const { outline, outlineClass, sign, signClass } = shapes[verdict];
  return (
    <svg viewBox="0 0 48 48" aria-hidden="true" focusable="false" class="verdict-shape">
      <path d={outline} class={outlineClass} />
      <path d={sign} class={signClass} />
    </svg>
  );
}
