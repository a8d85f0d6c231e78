import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import dictionary from 'dictionary-en-gb';
import nspell from 'nspell';
import { root } from '../../tools/paths.ts';

export const wordListPath = 'tests/content/words.txt';

/**
 * Words of the trade and of this project that are in no dictionary, one per line; lines beginning with # are comments.
 */
export const ownWords: string[] = readFileSync(join(root, wordListPath), 'utf8')
  .split('\n')
  .filter((line) => line !== '' && !line.startsWith('#'));

const speller = nspell(dictionary);
const own = new Set(ownWords.map((word) => word.toLowerCase()));

/**
 * Words of a text that are neither in the dictionary nor in the list, each once. Words with digits and single letters
 * are accepted.
 */
export function misspelt(text: string): string[] {
  const words =
    text
      .replaceAll('&nbsp;', ' ')
      .replaceAll('’', "'")
      .match(/(?<![\p{L}\p{N}_.-])\p{L}[\p{L}']*\p{L}(?![\p{L}\p{N}_])/gu) ?? [];
  return [...new Set(words.map((word) => word.replace(/'s?$/, '')))].filter((word) => !isKnown(word));
}

function isKnown(word: string): boolean {
  // Units and symbols of formulas are not words.
  if (/[ΩΔρ]/.test(word)) return true;
  return own.has(word.toLowerCase()) || speller.correct(word);
}
