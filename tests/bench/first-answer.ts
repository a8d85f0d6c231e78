import type { Browser, Page } from 'playwright-core';

/**
 * How the words get into the box: pasted so many milliseconds after the touch that turns to it, or key by key as a quick
 * typist does, with so many milliseconds between.
 */
export type Typing = { pastedAfter: number } | { pause: number };

/**
 * What the window has of the search: nothing at a first visit that the service worker has not served yet, or all files on
 * the device, as on every later page.
 */
export type Start = 'first visit' | 'stored';

/** For a page of the store to fetch its search unasked. */
const fetched = 1500;

/** Far beyond the budget: whatever takes longer has failed. */
const longest = 2500;

/**
 * Milliseconds from the last input to the first frame with an answer, on a phone that is four times slower than this
 * machine. 0 where an answer stood there before the last key.
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
    // The store would be fetched at the same time.
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
    // Asked only when it is over: a question to the page would itself hold up its thread by a frame or more.
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
