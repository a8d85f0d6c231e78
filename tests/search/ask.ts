import type { Page } from 'playwright-core';
import queries from './queries.json' with { type: 'json' };

/** Rank of the first wanted answer of each query in queries.json: 0 is the top of the list, -1 if the list has none. */
export async function placesFound(page: Page, base: string): Promise<number[]> {
  const found = await answersToAll(
    page,
    queries.map(({ words }) => words),
  );
  return queries.map(({ answers }, query) =>
    (found[query] ?? []).findIndex((links) => links.some((link) => answers.includes(link.replace(base, '/')))),
  );
}

/**
 * Types one query after the other into the search box of an open page, from within the page. Returns for each the shown
 * answers, best first: the address of each, then those of the headings below it.
 */
function answersToAll(page: Page, words: readonly string[]): Promise<string[][][]> {
  return page.evaluate(async (all) => {
    const input = document.querySelector('#search-words') as HTMLInputElement;
    const panel = document.querySelector('#search-panel') as HTMLElement;
    const answered = (query: string) =>
      new Promise<void>((done) => {
        const look = () => {
          if (panel.dataset.answers !== query) return;
          observer.disconnect();
          done();
        };
        const observer = new MutationObserver(look);
        observer.observe(panel, { attributes: true });
        look();
      });
    const shown = () => {
      const answers: string[][] = [];
      for (const { className, pathname, hash } of panel.querySelectorAll('a')) {
        if (className === 'search-page') answers.push([]);
        answers[answers.length - 1]?.push(pathname + hash);
      }
      return answers;
    };
    const found: string[][][] = [];
    input.focus();
    for (const query of all) {
      input.value = query;
      input.dispatchEvent(new Event('input'));
      await answered(query);
      found.push(shown());
    }
    return found;
  }, words);
}
