import { describe, expect, test } from 'vitest';
import { knownAddresses } from './support/addresses.ts';
import { splitArticle } from './support/article-text.ts';
import { filesOf } from './support/files.ts';

const known = knownAddresses();
const written = filesOf('{content/articles,src}/**/*.{mdx,astro,ts,tsx}');

/** Paths given to `href()` in plain quotes; one that is put together in code is checked on the built site. */
const targetsOf = (text: string) => [...text.matchAll(/\bhref\('(\/[^']*)'\)/g)].map((match) => match[1] ?? '');

function isKnown(target: string): boolean {
  const [path = '', id] = target.split('#');
  // A file that lies beside the pages, such as a licence.
  if (/\.\w+$/.test(path)) return true;
  const ids = known.get(path);
  return ids !== undefined && (id === undefined || id.includes('=') || ids === null || ids.includes(id));
}

test('links in the sources lead to pages and headings that exist', () => {
  const broken = written.flatMap(({ path, text }) =>
    targetsOf(text).flatMap((target) => (isKnown(target) ? [] : [`${path}: ${target}`])),
  );
  expect(broken).toEqual([]);
});

describe.each(filesOf('content/articles/**/*.mdx'))('$path', ({ path, text }) => {
  const { body } = splitArticle(text);

  test('links below whatever folder the site is served from: through href()', () => {
    expect(body.match(/\]\(\/[^)]*\)|href="\/[^"]*"/g) ?? []).toEqual([]);
  });

  test('links to its own headings that exist', () => {
    const own = [...body.matchAll(/(?:\]\(|href=")#([^)"]+)/g)].map((match) => match[1] ?? '');
    const page = path.replace(/^content|\.mdx$/g, '');
    expect(own.filter((id) => !isKnown(`${page}/#${id}`))).toEqual([]);
  });
});

test('a check that finds nothing would find this', () => {
  expect(isKnown('/articles/safety/no-such-page/')).toBe(false);
  expect(isKnown('/tables/#no-such-limit')).toBe(false);
  expect(isKnown('/articles/measuring/insulation-testing/#the-blind-spot-of-stage-two')).toBe(true);
});
