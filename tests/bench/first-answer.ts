import type { Browser, Page } from 'playwright-core';

/**
 * How the words get into the box: pasted some milliseconds after the touch of the box, or key by key like a quick
 * typist, with some milliseconds between keys.
 */
export type Typing = { pastedAfter: number } | { pause: number };

/**
 * What the window has of the search: nothing (first visit, not yet served by the service worker), or all files on the
 * device, as on every later page.
 */
export type Start = 'first visit' | 'stored';

/** Time for a stored page to load its search. */
const fetched = 1500;

/** Far beyond the budget; anything slower counts as failed. */
const longest = 2500;

/**
 * Milliseconds from the last input to the first frame with an answer, on a phone that is four times slower than this
 * machine. 0 if an answer was already shown before the last key.
 */
export async function firstAnswer(
  browser: Browser,
  address: string,
  words: string,
  typing: Typing,
  start: Start,
): Promise<number> {
  const context = await browser.newContext({
    viewport: { width: 412, height: 823 },
    isMobile: true,
    hasTouch: true,
    // The files for offline use would be fetched at the same time.
    serviceWorkers: start === 'stored' ? 'allow' : 'block',
  });
  try {
    const page = await context.newPage();
    await page.goto(address, { waitUntil: 'networkidle' });
    if (start === 'stored') {
      await page.evaluate(() => navigator.serviceWorker.ready);
      await page.reload({ waitUntil: 'networkidle' });
      await page.waitForTimeout(fetched);
    }
    const session = await context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    await watch(page);
    await page.locator('#search-words').click();
    if ('pastedAfter' in typing) {
      await page.waitForTimeout(typing.pastedAfter);
      await page.keyboard.insertText(words);
    } else await page.keyboard.type(words, { delay: typing.pause });
    // Queried only at the end: a query would delay the page's thread by a frame or more.
    await page.waitForTimeout(longest);
    const marks = await page.evaluate(() => (window as Watched).searchMarks);
    if (!marks?.answer) throw new Error(`no answer to "${words}" within ${longest} ms`);
    return Math.max(0, marks.answer - marks.input);
  } finally {
    await context.close();
  }
}

interface Marks {
  input: number;
  answer: number;
}

type Watched = Window & { searchMarks?: Marks };

/** Notes the last input, and the first frame in which an answer shows. */
async function watch(page: Page): Promise<void> {
  await page.evaluate(() => {
    const marks: Marks = { input: 0, answer: 0 };
    (window as Watched).searchMarks = marks;
    addEventListener(
      'input',
      ({ timeStamp }) => {
        marks.input = timeStamp;
      },
      true,
    );
    const look = () => {
      const answer = document.querySelector('#search-panel .search-page');
      if (answer?.checkVisibility()) marks.answer = performance.now();
      else requestAnimationFrame(look);
    };
    look();
  });
}
