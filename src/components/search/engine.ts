/** What the search library answers for one heading of a page. */
export interface HeadingHit {
  title: string;
  url: string;
  /** HTML made by the library from the text of our own pages: escaped, with <mark> around the words. */
  excerpt: string;
  /** Where the words stand below this heading, and what each place counts for. */
  weighted_locations: { balanced_score: number }[];
}

export interface PageHit {
  url: string;
  meta: { title?: string };
  excerpt: string;
  sub_results: HeadingHit[];
}

interface Pagefind {
  options(options: { baseUrl: string }): Promise<void>;
  search(words: string): Promise<{ results: { data(): Promise<PageHit> }[] }>;
}

/** Pages shown; whoever needs more asks with another word. */
const mostPages = 8;

let library: Promise<Pagefind> | undefined;

async function load(siteRoot: string): Promise<Pagefind> {
  const pagefind: Pagefind = await import(/* @vite-ignore */ `${siteRoot}pagefind/pagefind.js`);
  await pagefind.options({ baseUrl: siteRoot });
  return pagefind;
}

/**
 * Pages that hold the words, best first. The library and its index are fetched with the first search only.
 * Rejects where they can't be fetched; the next search tries again.
 */
export async function search(words: string, siteRoot: string): Promise<{ pages: PageHit[]; count: number }> {
  library ??= load(siteRoot);
  try {
    const { results } = await (await library).search(words);
    const pages = await Promise.all(results.slice(0, mostPages).map((result) => result.data()));
    return { pages, count: results.length };
  } catch (error) {
    library = undefined;
    throw error;
  }
}
