import type { Finding, Step } from '../assessment/assessment.ts';
import { lastIn } from '../reading/last-in.ts';

/**
 * One sentence (or a few) for each code, made from the payload of its finding: a code without a sentence does not
 * compile, nor does a sentence that uses a figure which its finding may lack.
 */
export type FindingSentences<F extends Finding> = { [Code in F['code']]: (finding: F & { code: Code }) => string };
export type StepSentences<S extends Step> = { [Code in S['code']]: (step: S & { code: Code }) => string };

/** The sentence of one finding or step. */
export function sentenceOf<One extends { code: string }>(
  texts: { [Code in One['code']]: (one: One & { code: Code }) => string },
  one: One,
): string {
  const code: One['code'] = one.code;
  return texts[code](one);
}

/** A percentage for a sentence, with enough digits that 10.1 % does not appear as the allowed 10 %. */
export function percent(value: number): string {
  return `${value < 100 ? Number(value.toPrecision(value < 10 ? 2 : 3)) : Math.round(value)} %`;
}

/** "U", "U and V", "U, V and W". */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${lastIn(words)}`;
}

/** With a capital first letter. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
