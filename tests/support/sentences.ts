import { expect } from 'vitest';
import type { Assessment, Finding, Step } from '../../src/calc/index.ts';

type Sentences<Thing> = Record<string, ((thing: Thing) => string) | undefined>;

/** A sentence that a person can read: whole, with every number filled in. */
export function isClean(sentence: string | undefined) {
  expect(sentence).toMatch(/^[A-Z0-9“].*[.]$/s);
  expect(sentence).not.toMatch(/undefined|null|NaN|Infinity|∞|\[object| {2}|\s[.,;:)]|\(\s|\(\)|^\s|\s$/);
}

/** Says every finding and step of an assessment; gives the codes that were said. */
export function sayAll(
  { findings, next }: Pick<Assessment, 'findings' | 'next'>,
  findingTexts: object,
  stepTexts: object,
): string[] {
  for (const finding of findings) isClean((findingTexts as Sentences<Finding>)[finding.code]?.(finding));
  for (const step of next) isClean((stepTexts as Sentences<Step>)[step.code]?.(step));
  return [...findings.map(({ code }) => code), ...next.map(({ code }) => code)];
}
