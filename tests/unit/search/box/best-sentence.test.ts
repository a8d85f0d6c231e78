import { expect, test } from 'vitest';
import { bestSentence } from '../../../../src/search/box/best-sentence.ts';
import type { PagefindPage } from '../../../../src/search/box/pagefind.ts';

const content =
  'drag chain, flex cable. Moving cable. What this page settles. Steps. Look at the clamps of the cable. ' +
  'Move it by hand while the meter is on. open core. new cable. Results. The reading jumps while it moves.';
const at = (text: string) => content.slice(0, content.indexOf(text)).trim().split(/\s+/).length;

const page: PagefindPage = {
  url: '/moving-cable/',
  content,
  meta: { title: 'Moving cable', words: 'drag chain, flex cable' },
  anchors: [
    { element: 'h2', id: 'results', text: 'Results', location: at('Results') },
    { element: 'h2', id: 'steps', text: 'Steps', location: at('Steps') },
    { element: 'figure', id: 'picture', text: 'Picture', location: at('open core') },
  ],
};

const read = (words: string[]) => {
  const { sentence, heading } = bestSentence(page, words);
  return { sentence: sentence.map(({ text }) => text).join(''), heading: heading?.url };
};

test('the whole sentence with the most words of the query, and the heading above it', () => {
  expect(read(['moving', 'hand'])).toEqual({
    sentence: 'Move it by hand while the meter is on.',
    heading: '/moving-cable/#steps',
  });
  expect(read(['reading', 'jumps'])).toEqual({
    sentence: 'The reading jumps while it moves.',
    heading: '/moving-cable/#results',
  });
});

test('no cell of a table, no words for the index, no title', () => {
  expect(read(['open', 'core']).sentence).not.toContain('open core');
  expect(read(['drag', 'chain']).sentence).not.toContain('drag chain');
});

test('the words of the query are marked', () => {
  const { sentence } = bestSentence(page, ['jumps']);
  expect(sentence.filter(({ marked }) => marked).map(({ text }) => text)).toEqual(['jumps']);
});
