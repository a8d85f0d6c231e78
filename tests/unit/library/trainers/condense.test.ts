import { expect, test } from 'vitest';
import { condense } from '../../../../src/library/trainers/condense.ts';

const paper = (html: string) => condense(html, '/articles/x/y/');

test('steps and cautions stay below their headings, one level lower; running text is removed', () => {
  const html =
    '<h2 id="a">A</h2><p>Why.</p><h3 id="b">B</h3><ol><li>Stop.</li></ol><div class="caution">Hot</div><p>End.</p>';
  expect(paper(html)).toBe('<h3>A</h3><h4>B</h4><ol><li>Stop.</li></ol><div class="caution">Hot</div>');
});

test('a heading without steps is removed', () => {
  expect(paper('<h2>A</h2><p>Why.</p><h2>B</h2><h3>C</h3><p>No.</p><h3>D</h3><ol><li>Go.</li></ol>')).toBe(
    '<h3>B</h3><h4>D</h4><ol><li>Go.</li></ol>',
  );
});

test('only the mistakes stay of the plain lists', () => {
  const list = '<ul><li>One.</li></ul>';
  expect(
    paper(`<h2 id="a">A</h2>${list}<h2 id="mistakes-that-people-make">Mistakes that people make</h2>${list}`),
  ).toBe(`<h3>Mistakes that people make</h3>${list}`);
});

test('no id, no # sign and no link to the glossary; a link to a heading of the article leads to the article', () => {
  const html =
    '<h2 id="a">A<a class="heading-link" href="#a"></a></h2><ol><li id="s">The <a class="term" href="/glossary/#core">core</a>: <a href="#b">see B</a>.</li></ol>';
  expect(paper(html)).toBe('<h3>A</h3><ol><li>The core: <a href="/articles/x/y/#b">see B</a>.</li></ol>');
});
