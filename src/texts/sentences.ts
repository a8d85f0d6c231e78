import type { Finding, Step } from '../calc/index.ts';
import { lastIn } from '../calc/last-in.ts';

/** One sentence (or a few) a code. The type makes a code without a sentence a compile error. */
export type FindingSentences<Code extends string> = Record<Code, (finding: Finding<Code>) => string>;
export type StepSentences<Code extends string> = Record<Code, (step: Step<Code>) => string>;

/** How a percentage stands in a sentence: digits enough that 10.1 % is not told as the 10 % that would be allowed. */
export function percent(value: number | undefined): string {
  if (value === undefined) return '';
  return `${value < 100 ? Number(value.toPrecision(value < 10 ? 2 : 3)) : Math.round(value)} %`;
}

/** "U", "U and V", "U, V and W". */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${lastIn(words)}`;
}

/** With a capital letter at its beginning. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
