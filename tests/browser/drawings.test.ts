import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { filesOf } from '../content/support/files.ts';
import { siteFolder } from '../tools/paths.ts';
import { builtPages } from './support/built-pages.ts';
import { keptDrawing, uncomputed } from './support/kept-drawing.ts';

// The figures of the articles as they are built, compared with those that were looked at and kept.

const articles = builtPages().filter((path) => path.startsWith('/articles/'));
const built = articles.flatMap((path) => {
  const html = readFileSync(join(siteFolder, path, 'index.html'), 'utf8');
  return [...html.matchAll(/<svg class="drawing"[\s\S]*?<\/svg>/g)].map(([svg]) => keptDrawing(svg));
});
const figures = new Map(built.map((svg) => [/<title id="([\w-]+)-title"/.exec(svg)?.[1] ?? '', svg]));
const textOf = (svg: string, element: 'title' | 'desc') => new RegExp(`<${element}[^>]*>([^<]*)`).exec(svg)?.[1] ?? '';
const folder = join(import.meta.dirname, 'drawings/figures');

test('every figure is built, and no other is kept', () => {
  expect(figures.size).toBe(filesOf('src/library/figures/*.astro').length);
  expect(readdirSync(folder).sort()).toEqual([...figures.keys()].map((id) => `${id}.svg`).sort());
});

test.each([...figures])('%s', async (id, svg) => {
  expect(svg).not.toMatch(uncomputed);
  const [title, desc] = [textOf(svg, 'title'), textOf(svg, 'desc')];
  expect(title, 'a title is no sentence').toMatch(/^[A-Z].*\S \S.*[^.]$/);
  expect(desc, 'a text equivalent is in sentences').toMatch(/^[A-Z0-9].* .*\.$/);
  expect(desc, 'it says more than the title').not.toContain(title);
  await expect(svg).toMatchFileSnapshot(join(folder, `${id}.svg`));
});
