import type { Page } from 'playwright-core';

/**
 * What is to be pressed and is lower than 48 px, as a gloved finger needs. Links within running text are left out, as
 * WCAG 2.2 leaves them out (2.5.8, inline), and what nobody sees.
 */
export function smallTargets(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    document.documentElement.style.fontSize = '';
    const inText = (element: Element) => {
      if (element.tagName !== 'A') return false;
      const block = element.closest('p, li, dd, dt, td, th, caption, figcaption, summary, h1, h2, h3, h4, h5, legend');
      const own = (element.textContent ?? '').trim().length;
      return (
        block !== null &&
        getComputedStyle(element).display === 'inline' &&
        (block.textContent ?? '').trim().length > own
      );
    };
    const pressed = (element: Element) => element.closest('label') ?? element;
    return [...document.querySelectorAll('a[href], button, input, select, textarea, summary, [role="tab"]')]
      .filter((element) => element.checkVisibility({ visibilityProperty: true, opacityProperty: true }))
      .filter((element) => !element.closest('.visually-hidden, .skip-link') && !inText(element))
      .map((element) => ({ element, box: pressed(element).getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0 && box.height < 47.5)
      .map(({ element, box }) => {
        const name = `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''}`;
        return `${name} “${(element.textContent ?? '').trim().slice(0, 40)}” ${Math.round(box.height)} px`;
      });
  });
}
