// Pagefind has types for the build only. These are the used parts of its documented browser interface.

/** A place on a page that contains words of the query; a higher score means that they matter more there. */
interface Section {
  title: string;
  url: string;
  /** HTML made by Pagefind from the text of our own pages: escaped, with `<mark>` around the words. */
  excerpt: string;
  weighted_locations: { balanced_score: number }[];
}

export interface PagefindPage {
  url: string;
  /** `term` is the heading of a glossary entry, `row` that of a limit in the tables; others have a title. */
  meta: { title?: string; term?: string; row?: string };
  excerpt: string;
  sub_results: Section[];
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
  metaWeights: { title: 3, words: 3, term: 1, row: 0.5, also: 0.5 },
};

/** Pagefind of the built site, which searches in a worker of its own. Rejects if its script can't be fetched. */
export async function loadPagefind(siteRoot: string): Promise<Pagefind> {
  const pagefind: Pagefind = await import(/* @vite-ignore */ `${siteRoot}pagefind/pagefind.js`);
  await pagefind.options({ baseUrl: siteRoot, ranking });
  await pagefind.init();
  return pagefind;
}
