import { mdxToJs } from 'satteri';
import { expect, test } from 'vitest';
import { linkTerms } from '../../../../src/library/glossary/link-terms.ts';

const terms = {
  'dc-bus': { term: 'DC bus', otherWords: [], definition: '', related: [], article: '' },
  core: { term: 'core', alsoInText: ['cores'], otherWords: [], definition: '', related: [], article: '' },
};
const plugin = linkTerms(terms, '/fieldbook/');

/** Addresses of the links to the glossary, in the order of the article. */
function linked(article: string): string[] {
  const { code } = mdxToJs(article, { mdastPlugins: [plugin] }) as { code: string };
  return [...code.matchAll(/"(\/fieldbook\/glossary\/#[\w-]+)"/g)].map((match) => match[1] ?? '');
}

test('the first use is linked, below the path that the site is served from', () => {
  expect(linked('The DC bus.\n\nThe DC bus, and two cores of one core.')).toEqual([
    '/fieldbook/glossary/#dc-bus',
    '/fieldbook/glossary/#core',
  ]);
});

test.each([
  ['a heading', '## The DC bus'],
  ['a link', '[the DC bus](/x/)'],
  ['a link with an address of its own', '<a href="/x/">the DC bus</a>'],
  ['code', '`DC bus`'],
  ['a reading', 'It read <Reading>DC bus</Reading>.'],
  ['a table', '| DC bus |\n| --- |\n| DC bus |'],
  ['an attribute', '<Figure caption="The DC bus">\n\n</Figure>'],
])('never in %s, but at its next use', (_where, article) => {
  expect(linked(article)).toEqual([]);
  expect(linked(`${article}\n\nThen the DC bus.`)).toEqual(['/fieldbook/glossary/#dc-bus']);
});

test('within emphasis, a list and a caution it is linked', () => {
  expect(linked('- **Wait.** The *DC bus* is live.')).toHaveLength(1);
  expect(linked('<Caution>\nThe DC bus is live.\n</Caution>')).toHaveLength(1);
});

test('one plugin links the first use in every article, not in the first article alone', () => {
  const addresses = ['First the DC bus.', 'The DC bus again.'].map(linked);
  expect(addresses).toEqual([['/fieldbook/glossary/#dc-bus'], ['/fieldbook/glossary/#dc-bus']]);
});
