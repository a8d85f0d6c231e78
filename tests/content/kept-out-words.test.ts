import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import keptOut from './kept-out-words.json' with { type: 'json' };
import { filesOf } from './support/files.ts';

/** A word that reminds of one product, booklet or form. */
interface KeptOut {
  pattern: string;
  /** Flags of the regular expression; case is ignored by default. */
  flags?: string;
  reason: string;
  /** Samples that the pattern finds, and similar ones that it allows. */
  found: string[];
  passed: string[];
}

const words: KeptOut[] = keptOut;
const regularOf = ({ pattern, flags = 'i' }: KeptOut) => new RegExp(pattern, flags);

/** Published addresses never change, even if they contain a word that is kept out now. */
const exempt = ['tests/content/kept-out-words.json', 'tests/content/addresses.txt'];
const read = filesOf('{content,src,tests}/**/*.{ts,tsx,js,mjs,mdx,md,json,astro,css,csv,txt,cir}')
  .concat(filesOf('{README,DEVELOPERS}.md'))
  .filter(({ path }) => !exempt.includes(path) && !path.startsWith('tests/out/'));

const placesOf = (word: KeptOut, files = read) =>
  files.flatMap(({ path, text }) =>
    text.split('\n').flatMap((line, index) => (regularOf(word).test(line) ? [`${path}:${index + 1}`] : [])),
  );

describe.each(words)('$pattern: $reason', (word) => {
  test('finds its samples and allows similar words', () => {
    expect(word.found.filter((sample) => !regularOf(word).test(sample))).toEqual([]);
    expect(word.passed.filter((sample) => regularOf(word).test(sample))).toEqual([]);
    expect(placesOf(word, [{ path: 'a', text: `before\n${word.found[0]}` }])).toEqual(['a:2']);
  });

  test('is in no text, code or test', () => {
    expect(placesOf(word)).toEqual([]);
  });
});

test('articles, code, tests and both guides are read', () => {
  const paths = read.map(({ path }) => path);
  expect(paths).toEqual(
    expect.arrayContaining([
      'README.md',
      'DEVELOPERS.md',
      'content/limits/absorption.json',
      'content/articles/measuring/insulation-testing.mdx',
      'src/calculators/absorption/words.ts',
      'src/calculators/absorption/PageText.astro',
      'tests/search/queries.json',
      'tests/reference/absorption.test.ts',
    ]),
  );
  expect(readFileSync('README.md', 'utf8')).toBe(read.find(({ path }) => path === 'README.md')?.text);
});
