import { expect } from 'vitest';
import type { Finding, Step } from '../../src/kernel/assessment/assessment.ts';
import { type FindingSentences, type StepSentences, sentenceOf } from '../../src/kernel/words/sentences.ts';

/** A complete sentence with every number filled in. */
export function isClean(sentence: string | undefined) {
  expect(sentence).toMatch(/^[A-Z0-9“].*[.]$/s);
  expect(sentence).not.toMatch(/undefined|null|NaN|Infinity|∞|\[object| {2}|\s[.,;:)]|\(\s|\(\)|^\s|\s$/);
}

/** Checks the sentence of every finding and step of an assessment; returns their codes. */
export function sayAll<F extends Finding, S extends Step>(
  { findings, next }: { findings: readonly F[]; next: readonly S[] },
  findingTexts: FindingSentences<F>,
  stepTexts: StepSentences<S>,
): string[] {
  for (const finding of findings) isClean(sentenceOf(findingTexts, finding));
  for (const step of next) isClean(sentenceOf(stepTexts, step));
  return [...findings.map(({ code }) => code), ...next.map(({ code }) => code)];
}
