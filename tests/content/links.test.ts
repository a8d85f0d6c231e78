import { describe, expect, test } from 'vitest';
import { knownAddresses } from './support/addresses.ts';
import { splitArticle } from './support/article-text.ts';
import { filesOf } from './support/files.ts';

const known = knownAddresses();
const written = filesOf('{content/articles,src}/**/*.{mdx,astro,ts,tsx}');

/** Literal paths in `href()`; composed ones are checked on the built site. */
const targetsOf = (text: string) => [...text.matchAll(/\bhref\('(\/[^']*)'\)/g)].map((match) => match[1] ?? '');

function isKnown(target: string): boolean {
  const [path = '', id] = target.split('#');
  // A file beside the pages, such as a licence.
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

  test('links through href(), so that they work under any base path', () => {
    expect(body.match(/\]\(\/[^)]*\)|href="\/[^"]*"/g) ?? []).toEqual([]);
  });

  test('links only to existing headings of its own', () => {
    const own = [...body.matchAll(/(?:\]\(|href=")#([^)"]+)/g)].map((match) => match[1] ?? '');
    const page = path.replace(/^content|\.mdx$/g, '');
    expect(own.filter((id) => !isKnown(`${page}/#${id}`))).toEqual([]);
  });
});

test('the check itself finds broken links', () => {
  expect(isKnown('/articles/safety/no-such-page/')).toBe(false);
  expect(isKnown('/tables/#no-such-limit')).toBe(false);
  expect(isKnown('/articles/measuring/insulation-testing/#the-blind-spot-of-stage-two')).toBe(true);
});
