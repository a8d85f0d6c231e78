import { expect, test } from 'vitest';
import { exerciseSetSchema } from '../../src/library/exercises/exercise-schema.ts';
import { fillQuestion, plainText } from '../../src/library/exercises/fill.ts';
import { filesOf, jsonOf } from '../content/support/files.ts';
import { open } from './support/open.ts';

const sections = [...new Set(filesOf('content/articles/**/*.mdx').map(({ path }) => path.split('/')[2] ?? ''))];

/** Questions of a section with their texts as printed. */
const questionsOf = (section: string) =>
  jsonOf(`content/exercises/${section}/*.json`).flatMap(({ data }) =>
    exerciseSetSchema.parse(data).questions.map(fillQuestion),
  );
const spaced = (text: string) => text.replaceAll(/\s+/g, ' ').trim();

test.each(sections)(
  '%s: the class sheet asks every question and answers none, the answer sheet answers all',
  async (section) => {
    const asked = await open(`/trainers/exercises/${section}/`, { script: false });
    const answered = await open(`/trainers/exercises/${section}/answers/`, { script: false });
    const sheet = spaced((await asked.textContent('main')) ?? '');
    const answers = spaced((await answered.textContent('main')) ?? '');
    const questions = questionsOf(section);
    const text = (pieces: Parameters<typeof plainText>[0]) => spaced(plainText(pieces));
    expect(
      questions.filter(({ question }) => !sheet.includes(text(question)) || !answers.includes(text(question))),
    ).toEqual([]);
    expect(questions.filter(({ answer }) => !answer.every((part) => answers.includes(text(part))))).toEqual([]);
    expect(questions.filter(({ answer }) => answer.some((part) => sheet.includes(text(part))))).toEqual([]);
  },
);

test('a filled calculator opens with the readings of the worked visit', async () => {
  const list = await open('/trainers/addresses/');
  const address = await list.locator('a[href*="/calculators/bridge/#case="]').first().getAttribute('href');
  const page = await open(String(address));
  await page.waitForSelector('[data-live]');
  await expect.poll(() => page.inputValue('#bridge-plusU')).not.toBe('');
});

test.each(sections)('%s: the handout has the steps of each article, and no form', async (section) => {
  const page = await open(`/trainers/handouts/${section}/`, { script: false });
  const articles = filesOf(`content/articles/${section}/*.mdx`);
  expect(await page.locator('.handout-article').count()).toBe(articles.length);
  expect(await page.locator('.handout-article ol > li').count()).toBeGreaterThan(articles.length * 2);
  expect(await page.locator('main :is(form, input, svg[role="img"])').count()).toBe(0);
});
