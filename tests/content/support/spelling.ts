import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import dictionary from 'dictionary-en-gb';
import nspell from 'nspell';
import { root } from '../../tools/paths.ts';

export const wordListPath = 'tests/content/words.txt';

/** Words of the trade and of this project that no dictionary has, one a line; a line that begins with # is a remark. */
export const ownWords: string[] = readFileSync(join(root, wordListPath), 'utf8')
  .split('\n')
  .filter((line) => line !== '' && !line.startsWith('#'));

const speller = nspell(dictionary);
const own = new Set(ownWords.map((word) => word.toLowerCase()));

/** Words of a text that neither the dictionary nor the list has, each once. Words with digits and single letters pass. */
export function misspelt(text: string): string[] {
  const words =
    text
      .replaceAll('&nbsp;', ' ')
      .replaceAll('’', "'")
      .match(/(?<![\p{L}\p{N}_.-])\p{L}[\p{L}']*\p{L}(?![\p{L}\p{N}_])/gu) ?? [];
  return [...new Set(words.map((word) => word.replace(/'s?$/, '')))].filter((word) => !isKnown(word));
}

function isKnown(word: string): boolean {
  // Units and symbols of formulas are no words.
  if (/[ΩΔρ]/.test(word)) return true;
  return own.has(word.toLowerCase()) || speller.correct(word);
}
