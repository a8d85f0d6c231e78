import { describe, expect, test } from 'vitest';
import { filesOf, jsonOf } from './support/files.ts';

// What calculators, visit, practice, call sheet and figures say follows the same list of habits as the articles.

interface Habit {
  habit: string;
  instead: string;
  /** Only prose shows this habit; in code and labels the words have another sense. */
  inProseOnly?: true;
}

const habits = ((jsonOf('tests/content/support/habits.json')[0]?.data ?? []) as Habit[]).filter(
  ({ inProseOnly }) => inProseOnly === undefined,
);
const spoken = /(\/words\/[^/]+|words|headline|question|part-names|axis-parts|page)\.ts$|\.(astro|tsx)$/;
const withoutComments = (text: string) => text.replaceAll(/\/\*[\s\S]*?\*\/|(?<=\s)\/\/.*$/gm, '');
const files = filesOf('src/**/*.{ts,tsx,astro}').filter(({ path }) => spoken.test(path));

test('there are such files', () => {
  expect(files.length).toBeGreaterThan(150);
});

describe.each(habits)('no tool writes $habit', ({ habit, instead }) => {
  test(`it says: ${instead}`, () => {
    const found = files.flatMap(({ path, text }) =>
      [...withoutComments(text).matchAll(new RegExp(`.{0,30}(?:${habit}).{0,30}`, 'g'))].map(
        ([hit]) => `${path}: ${hit}`,
      ),
    );
    expect(found).toEqual([]);
  });
});
