import { expect, test } from 'vitest';
import { termFinder } from '../../../../src/library/glossary/find-terms.ts';

const term = (name: string, more = {}) => ({
  term: name,
  otherWords: [],
  definition: '',
  related: [],
  article: '',
  ...more,
});
const find = termFinder({
  bus: term('bus'),
  'dc-bus': term('DC bus', { alsoInText: ['DC link'] }),
  ol: term('over-range', { alsoInText: ['OL'] }),
  lockout: term('lockout', { linked: false }),
});
const words = (text: string, done: string[] = []) =>
  find(text, new Set(done)).map(({ id, from, to }) => [id, text.slice(from, to)]);

test.each([
  [
    'the longest words win',
    'Measure the DC bus, then the bus.',
    [
      ['dc-bus', 'DC bus'],
      ['bus', 'bus'],
    ],
  ],
  ['only the first use counts, in whatever form', 'The DC link, or DC bus.', [['dc-bus', 'DC link']]],
  ['a sentence may begin with a term', 'Over-range is a bound.', [['ol', 'Over-range']]],
  ['an abbreviation keeps its letters', 'It was cool, not Ol; OL it read.', [['ol', 'OL']]],
  ['no term within a longer word', 'A busbar, a mini-bus and a bus-wide fault.', []],
  ['a term behind a word that ends like it', 'An omnibus, a mini-bus, the bus.', [['bus', 'bus']]],
  ['a line may break within a term', 'The DC\nbus is charged.', [['dc-bus', 'DC\nbus']]],
  ['words that everybody knows are left alone', 'A lockout comes first.', []],
])('%s', (_rule, text, expected) => {
  expect(words(text)).toEqual(expected);
});

test('linked terms are not found again', () => {
  expect(words('The DC bus and the bus.', ['dc-bus'])).toEqual([['bus', 'bus']]);
});

test('a glossary without a linked term finds nothing', () => {
  expect(termFinder({ lockout: term('lockout', { linked: false }) })('The lockout.', new Set())).toEqual([]);
});
