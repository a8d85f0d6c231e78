import { expect, test } from 'vitest';
import { placesFound } from '../search/ask.ts';
import queries from '../search/queries.json' with { type: 'json' };
import { siteBase } from '../tools/paths.ts';
import { open } from './support/open.ts';

// Queries as technicians type them, with the addresses that answer. The kinds "afterwards" and "later" were
// written when the search had been tuned on the others.

test(`of ${queries.length} queries, most are answered by the first answer, nearly all by the first five`, async () => {
  const places = await placesFound(await open('/'), siteBase);
  const words = (wanted: (place: number) => boolean) =>
    queries.filter((_, query) => wanted(places[query] ?? -1)).map(({ words }) => words);
  const late = words((place) => place !== 0);
  const missed = words((place) => place < 0 || place >= 5);
  const share = (list: readonly string[]) => 1 - list.length / queries.length;
  expect(queries.length).toBeGreaterThanOrEqual(280);
  expect(share(late), `not answered first: ${late.join(', ')}`).toBeGreaterThanOrEqual(0.92);
  expect(share(missed), `not among the first five: ${missed.join(', ')}`).toBeGreaterThanOrEqual(0.99);
});

test('the kinds of query that were asked for are all there, none twice', () => {
  expect(new Set(queries.map(({ words }) => words)).size).toBe(queries.length);
  const kinds = new Set(queries.map(({ kind }) => kind));
  const english = ['slang', 'misspelt', 'symptom', 'unit', 'glossary', 'calculator', 'table', 'tired'];
  const others = ['German', 'Spanish', 'French', 'Polish', 'Turkish', 'Chinese'];
  for (const kind of [...english, ...others]) expect(kinds).toContain(kind);
});
