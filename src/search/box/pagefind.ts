// Pagefind has types for the build only. These are the used parts of its documented browser interface.

export interface PagefindPage {
  url: string;
  /** The whole text; its words are counted from 0. */
  content: string;
  /**
   * `term` is the heading of a glossary entry, `row` that of a limit in the tables, with its `figure`; others have a
   * title. `words` and `also` are the words for the index only, at the beginning of the text.
   */
  meta: { title?: string; words?: string; term?: string; row?: string; also?: string; figure?: string };
  /** Elements with an id, and the number of the word at which each begins. */
  anchors: { element: string; id: string; text: string; location: number }[];
}

export interface PagefindResult {
  id: string;
  score: number;
  data(): Promise<PagefindPage>;
}

export interface Pagefind {
  options(options: { baseUrl: string; ranking: typeof ranking }): Promise<void>;
  init(): Promise<void>;
  search(words: string): Promise<{ results: PagefindResult[] }>;
  destroy(): Promise<void>;
}

/**
 * The title and the author's extra search words say most about a page; the heading of a short record weighs less, or it
 * would rank above the page that explains it. Long pages are penalised less than by default, and `pe` should hardly
 * match `person`. The figures give the most hits in tests/search/queries.json.
 */
const ranking = {
  pageLength: 0.4,
  termSimilarity: 12,
  metaWeights: { title: 3, words: 3, term: 1, row: 0.5, also: 0.5, names: 4, toolNames: 2, figure: 0.5 },
};

/** Pagefind of the built site, which searches in a worker of its own. Rejects if its script can't be fetched. */
export async function loadPagefind(siteRoot: string): Promise<Pagefind> {
  const pagefind: Pagefind = await import(/* @vite-ignore */ `${siteRoot}pagefind/pagefind.js`);
  await pagefind.options({ baseUrl: siteRoot, ranking });
  await pagefind.init();
  return pagefind;
}
