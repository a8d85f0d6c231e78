import { expect, test } from 'vitest';
import { filesOf, jsonOf } from './support/files.ts';

// Words of our own for what the trade has a word for: in no sentence and no comment of the site. What people type into
// the search may be such a word.

interface Habit {
  habit: string;
  instead: string;
  everywhere?: boolean;
}

const habits = (jsonOf('tests/content/support/habits.json')[0]?.data ?? []) as Habit[];
const everywhere = habits.filter((one) => one.everywhere);
const typed = /otherWords|alsoInText/;
const files = [
  ...filesOf('src/**/*.{ts,tsx,astro,md}'),
  ...filesOf('content/**/*.{json,mdx,ts}'),
  ...filesOf('{README,DEVELOPERS}.md'),
];

test('there are such words, and files to look into', () => {
  expect(everywhere.length).toBeGreaterThan(10);
  expect(files.length).toBeGreaterThan(500);
});

test.each(everywhere)('$habit is nowhere ($instead)', ({ habit }) => {
  const pattern = new RegExp(habit, 'i');
  const found = files.flatMap(({ path, text }) =>
    text
      .split('\n')
      .flatMap((line, at) => (pattern.test(line) && !typed.test(line) ? [`${path}:${at + 1}: ${line}`] : [])),
  );
  expect(found).toEqual([]);
});
