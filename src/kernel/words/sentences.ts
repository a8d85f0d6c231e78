import type { Finding, Step } from '../assessment/assessment.ts';
import { lastIn } from '../reading/last-in.ts';

/**
 * One sentence (or a few) a code, made from what a finding of this code has: a code without a sentence does not compile,
 * nor does a sentence that uses a figure which its finding may lack.
 */
export type FindingSentences<F extends Finding> = { [Code in F['code']]: (finding: F & { code: Code }) => string };
export type StepSentences<S extends Step> = { [Code in S['code']]: (step: S & { code: Code }) => string };

/** What is said of one finding or step. */
export function sentenceOf<One extends { code: string }>(
  texts: { [Code in One['code']]: (one: One & { code: Code }) => string },
  one: One,
): string {
  const code: One['code'] = one.code;
  return texts[code](one);
}

/** How a percentage stands in a sentence: digits enough that 10.1 % is not told as the 10 % that would be allowed. */
export function percent(value: number): string {
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
