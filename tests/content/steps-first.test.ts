import { afterAll, describe, expect, test } from 'vitest';
import { attributesOf, beforeFolds, isStepsFirst, proseOf, splitArticle, wordCount } from './support/article-text.ts';
import { filesOf, jsonOf } from './support/files.ts';

// The pages for the person at the cabinet: steps, results, then what explains them, folded.

const pages = filesOf('content/articles/**/*.mdx').filter(({ text }) => isStepsFirst(text));
const habits = (jsonOf('tests/content/support/habits.json')[0]?.data ?? []) as { habit: string; instead: string }[];
const wordsOf = (text: string) => wordCount(proseOf(beforeFolds(splitArticle(text).body)));

/** The numbered steps below `## Steps`; a step has its figure, and further paragraphs, indented below it. */
function stepsOf(body: string): string[] {
  const section = /^## Steps\n([\s\S]*?)(?=^## )/m.exec(body)?.[1] ?? '';
  return section.split(/^(?=\d+\. )/m).filter((part) => /^\d+\. /.test(part));
}

test('there are such pages', () => {
  expect(pages.length).toBeGreaterThan(0);
  expect(habits.length).toBeGreaterThan(20);
});

describe.each(pages)('$path', ({ text }) => {
  const { body } = splitArticle(text);

  test('begins with five to twelve steps, and has its results in a table', () => {
    const headings = [...beforeFolds(body).matchAll(/^## (.+)$/gm)].map((match) => match[1]);
    expect(headings.slice(0, 2)).toEqual(['Steps', 'Results']);
    expect(stepsOf(body).length).toBeGreaterThanOrEqual(5);
    expect(stepsOf(body).length).toBeLessThanOrEqual(12);
    expect(body).toMatch(/^## Results\n[\s\S]*?^\| --- \| --- \| --- \|$/m);
  });

  test('has 250 to 700 words before what it folds', () => {
    expect(wordsOf(text)).toBeGreaterThanOrEqual(250);
    expect(wordsOf(text)).toBeLessThanOrEqual(700);
  });

  test('folds why it works, and an invented example that says so', () => {
    expect(attributesOf(body, 'Fold', 'id')).toEqual(expect.arrayContaining(['why-it-works', 'worked-example']));
    expect(body).toMatch(/<Fold id="worked-example" [^>]*>\n[\s\S]*?^\*Marrow Bay Glassworks.*invented\.\*$/m);
    expect(body.match(/<\/Fold>/g)).toHaveLength(attributesOf(body, 'Fold', 'id').length);
  });

  test('shows the hook-up of a step that puts a meter or tester on terminals', () => {
    const hooksUp = stepsOf(body).some((step) => /\b(red|black)\b.* on |\bto PE\b|\bline lead\b/i.test(step));
    if (hooksUp) expect(stepsOf(body).join('')).toContain('<Figure ');
  });

  test.each(habits)('never writes $habit ($instead)', ({ habit }) => {
    const found = proseOf(body).match(new RegExp(`.{0,30}${habit}.{0,30}`, 'gi')) ?? [];
    expect(found).toEqual([]);
  });
});

afterAll(() => {
  const total = pages.reduce((sum, { text }) => sum + wordsOf(text), 0);
  console.log(`${pages.length} pages begin with their steps: ${total} words before what they fold.`);
});
