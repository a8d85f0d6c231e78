import type { Page } from 'playwright-core';
import type { Bench, Measured } from './measured.ts';
import { TouchWalk } from './touch-walk.ts';
import { withSite } from './with-site.ts';

/** The caps of the keys for each reading, in the order of the form. Invented. */
const stories: Record<string, { readings: string[][]; verdict: string }> = {
  'a sound output stage': {
    readings: [
      ['4', '5', '0', 'kΩ'],
      ['4', '6', '0'],
      ['4', '5', '5'],
      ['4', '4', '0', 'kΩ'],
      ['4', '5', '0'],
      ['4', '4', '5'],
    ],
    verdict: 'go',
  },
  'a short of one switch': {
    readings: [
      ['4', '5', '0', 'kΩ'],
      ['4', '6', '0'],
      ['4', '5', '5'],
      ['4', '4', '0', 'kΩ'],
      ['0', '.', '3', 'Ω'],
      ['4', '4', '5', 'kΩ'],
    ],
    verdict: 'no-go',
  },
};

const isFigure = (cap: string) => /^[\d.,]$/.test(cap);

interface Walked {
  taps: number;
  /** Up to the first field, that is. */
  swipesBefore: number;
  swipesInForm: number;
}

/** From the home page to the bridge: by its own link, or by the list of calculators. */
async function toTheForm(page: Page, walk: TouchWalk): Promise<void> {
  const link = (path: string) => page.locator(`main a[href$="${path}"]:visible`).first();
  if ((await link('calculators/bridge/').count()) === 0) await walk.tap(link('calculators/'));
  await walk.tap(link('calculators/bridge/'));
  await page.waitForSelector('[data-live]');
}

async function toTheVerdict(
  page: Page,
  site: string,
  { readings, verdict }: (typeof stories)[string],
): Promise<Walked> {
  const walk = new TouchWalk(page);
  await page.goto(site);
  await toTheForm(page, walk);
  await walk.tap(page.locator('#bridge-busVoltage'));
  const swipesBefore = walk.swipes;
  await walk.keys('0', 'Next');
  await walk.tap(page.locator('input[name="motorLeads"][value="off"]'));
  for (const [index, caps] of readings.entries()) {
    await page.waitForFunction(
      (label) => document.querySelector('.keypad')?.getAttribute('aria-label')?.includes(label),
      `${index < 3 ? 'DC+' : 'DC−'} to ${'UVW'[index % 3]}`,
    );
    await walk.keys(...caps);
    if (index < 5) await walk.key('Next');
    // The second reading of U is not asked for.
    if (index === 2) await walk.key('Next');
  }
  await page.waitForSelector(`.verdict[data-verdict="${verdict}"]`);
  return { taps: walk.taps, swipesBefore, swipesInForm: walk.swipes - swipesBefore };
}

export const bench: Bench = {
  name: 'Taps from the home page to the verdict of a bridge, by thumb on a phone of 360 by 740',
  run: () =>
    withSite(async (browser, site) => {
      const lines: Measured[] = [];
      for (const [name, story] of Object.entries(stories)) {
        const page = await browser.newPage({
          viewport: { width: 360, height: 740 },
          hasTouch: true,
          isMobile: true,
          serviceWorkers: 'block',
        });
        const { taps, swipesBefore, swipesInForm } = await toTheVerdict(page, site, story);
        await page.close();
        const figures = story.readings.map((caps) => caps.filter(isFigure).length);
        const budget = 5 + figures.reduce((sum, digits) => sum + digits + 2, 0);
        lines.push({ what: `${name}: taps`, value: taps, unit: '', budget });
        lines.push({ what: `${name}: swipes to the first field`, value: swipesBefore, unit: '', budget: 0 });
        lines.push({ what: `${name}: swipes within the form`, value: swipesInForm, unit: '', budget: 0 });
      }
      return lines;
    }),
};
