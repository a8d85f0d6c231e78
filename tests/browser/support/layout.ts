import type { Page } from 'playwright-core';

/**
 * The elements that make the page scroll sideways; empty when it fits. What lies in a scrolling box of its own
 * (a wide table) does no harm.
 */
export function overflowing(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth <= width) return [];
    const wide = [...document.querySelectorAll('body *')].filter((e) => e.getBoundingClientRect().right > width + 0.5);
    const names = wide.map((e) => `${e.tagName.toLowerCase()}${e.className ? `.${e.getAttribute('class')}` : ''}`);
    return [`page is ${document.documentElement.scrollWidth} px wide, window ${width} px`, ...names.slice(0, 10)];
  });
}
