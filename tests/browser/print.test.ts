import { extractText, getDocumentProxy } from 'unpdf';
import { describe, expect, test } from 'vitest';
import { open } from './support/open.ts';

type Format = 'A4' | 'Letter';

/** Prints a page from a dark screen and reads it back: the text that is on the paper, and the number of sheets. */
async function printed(path: string, format: Format = 'A4') {
  const page = await open(path, { scheme: 'dark' });
  await page.locator('main').waitFor();
  if (path.includes('#case=')) await page.locator('.verdict:not([data-verdict="empty"])').waitFor();
  const pdf = await getDocumentProxy(new Uint8Array(await page.pdf({ format })));
  const { totalPages, text } = await extractText(pdf, { mergePages: true });
  return { page, sheets: totalPages, text: text.replaceAll(/\s+/g, ' ') };
}

/** One page of each kind, and words that a reader needs from it. */
const kinds: Record<string, string[]> = {
  '/': ['A servo drive tripped on overcurrent'],
  '/articles/measuring/insulation-testing/': [
    'What can hurt you here',
    'Before the first step',
    'Why, and why so strict',
  ],
  '/calculators/bridge/': ['What can hurt you here', 'DC-bus voltage just before', 'Allowed difference'],
  '/tables/': ['Largest difference', 'Where it comes from'],
  '/tables/conversions/': ['Winding resistance'],
  '/glossary/': ['absorption current'],
  '/cases/marrow-bay-lift/': ['invented', 'What was decided, and why'],
  '/sources/': ['IEC 61557-2'],
  '/trainers/': ['Handouts to print'],
  '/practice/codes/': ['Codes of practice cases'],
};

const navigation = ['Skip to the content', 'On this page', 'Search', 'Fill in the worked visit', 'Clear the form'];

describe('on paper stands what the page says, and nothing that only works on a screen', () => {
  test.each(Object.entries(kinds))('%s', async (path, words) => {
    const { text } = await printed(path);
    expect(words.filter((word) => !text.includes(word))).toEqual([]);
    expect(navigation.filter((word) => text.includes(word))).toEqual([]);
  });
});

// An article of 2,500 words fills five sheets with text alone; figures, hazards and a form may take four more.
test.each([
  ['/articles/measuring/insulation-testing/', 'A4'],
  ['/articles/safety/safe-measurement/', 'Letter'],
  ['/articles/trip/when-it-trips/', 'A4'],
] as [string, Format][])('%s takes no more than nine sheets of %s', async (path, format) => {
  expect((await printed(path, format)).sheets).toBeLessThanOrEqual(9);
});

test.each([
  ['/cards/second-person/', 'A4'],
  ['/cards/second-person/', 'Letter'],
  ['/cards/bag-and-time/', 'A4'],
  ['/cards/bag-and-time/', 'Letter'],
] as [string, Format][])('%s is one sheet of %s', async (path, format) => {
  expect((await printed(path, format)).sheets).toBe(1);
});

test('links tell where they lead; questions keep their answers', async () => {
  const { page, text } = await printed('/articles/measuring/insulation-testing/');
  expect(text).toMatch(/\(\/articles\/measuring\/[a-z-]+\/\)/);
  // Every figure of a limit is a link into the same page, which would drown the sentence.
  expect(text).not.toContain('/tables/#');
  const answer = await page.locator('.answer p').first().textContent();
  expect(text).not.toContain(answer?.trim().slice(0, 60));
  expect(text).toContain('Questions');
});

test('a calculator prints as a filled form: entries, chosen answers, verdict and limits', async () => {
  const { page, text } = await printed('/calculators/bridge/#case=marrow-bay-lift');
  // Entries of fields are drawn, not laid out as text, by some readers: the verdict's sentences rest on them.
  expect(text).toContain('No-go');
  expect(text).toMatch(/Limits/);
  await page.emulateMedia({ media: 'print' });
  const field = page.locator('#bridge-plusU');
  expect(await field.evaluate((input) => getComputedStyle(input).borderBottomStyle)).toBe('solid');
  expect(await field.evaluate((input) => getComputedStyle(input).color)).toBe('rgb(0, 0, 0)');
  expect(await page.locator('.calculator input:checked').first().isVisible()).toBe(true);
  expect(await page.locator('.calculator button:visible').count()).toBe(0);
});
