import { afterAll, describe, expect, test } from 'vitest';
import { filesOf } from './support/files.ts';
import { readingLevel, sentencesOf } from './support/reading-level.ts';

// Printed for authors; the generous bounds only catch texts that nobody would read in front of a machine.

const articles = filesOf('content/articles/**/*.mdx').map(({ path, text }) => ({ path, level: readingLevel(text) }));

test('sentences are counted as a reader would', () => {
  const article =
    '---\ntitle: A\n---\n## No sentence\n\nStop here. Measure **U** at <Limit id="x" />, then V.\n\n1. Wait.\n2. Look again!\n\n| a | b |';
  expect(sentencesOf(article)).toEqual(['Stop here.', 'Measure U at … , then V.', 'Look again!']);
});

describe.each(articles)('$path', ({ level }) => {
  test('can be read aloud: no sentence of more than forty words, few of more than twenty-five', () => {
    expect(level.longest.words, level.longest.sentence).toBeLessThanOrEqual(40);
    expect(level.longShare).toBeLessThan(8);
    expect(level.average).toBeLessThan(15);
  });

  test('uses plain words', () => {
    expect(level.ease).toBeGreaterThan(60);
  });
});

afterAll(() => {
  const rows = articles.map(({ path, level }) => {
    const figures = [
      level.sentences,
      level.average.toFixed(1),
      level.longest.words,
      `${level.longShare.toFixed(0)} %`,
      level.ease.toFixed(0),
    ];
    return [
      path.replace(/^content\/articles\/|\.mdx$/g, '').padEnd(44),
      ...figures.map((figure) => String(figure).padStart(8)),
    ].join('');
  });
  const head = ['sentences', 'average', 'longest', 'long', 'ease'].map((word) => word.padStart(8).slice(0, 9));
  console.log(['Reading level'.padEnd(44) + head.join(''), ...rows].join('\n'));
});
