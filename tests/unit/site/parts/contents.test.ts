import { expect, it } from 'vitest';
import { contentsOf } from '../../../../src/site/parts/contents.ts';

const heading = (depth: number, slug: string) => ({ depth, slug, text: slug });

it('puts third-level headings under the second-level one before them', () => {
  const entries = contentsOf([heading(2, 'a'), heading(3, 'a1'), heading(3, 'a2'), heading(2, 'b'), heading(3, 'b1')]);
  expect(entries.map(({ slug, children }) => [slug, children.map((child) => child.slug)])).toEqual([
    ['a', ['a1', 'a2']],
    ['b', ['b1']],
  ]);
});

it('leaves out deeper headings, the title, and a third-level heading with no parent', () => {
  expect(contentsOf([heading(1, 'title'), heading(3, 'stray'), heading(2, 'a'), heading(4, 'deep')])).toEqual([
    { slug: 'a', text: 'a', children: [] },
  ]);
});
