import { decodeCase, drawCase, encodeCase } from '../case/case-code.ts';

/** The code of a case drawn by chance. */
export function newCase(): string {
  return encodeCase(drawCase(Math.random));
}

/** The code as it is written, from however it was typed; undefined where it is none. */
export function readCode(typed: string): string | undefined {
  const key = decodeCase(typed);
  return key && encodeCase(key);
}
