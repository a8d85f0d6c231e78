/** What the search library answers for one heading of a page. */
interface LibraryHeading {
  title: string;
  url: string;
  /** HTML made by the library from the text of our own pages: escaped, with <mark> around the words. */
  excerpt: string;
  /** Where the words stand below this heading, and what each place counts for. */
  weighted_locations: { balanced_score: number }[];
}

export interface LibraryPage {
  url: string;
  /** `term` is the heading of a glossary entry, `row` that of a limit in the tables. */
  meta: { title?: string; term?: string; row?: string };
  excerpt: string;
  sub_results: LibraryHeading[];
}

export interface LibraryHit {
  id: string;
  score: number;
  data(): Promise<LibraryPage>;
}

export interface Library {
  options(options: object): Promise<void>;
  init(): Promise<void>;
  search(words: string): Promise<{ results: LibraryHit[] }>;
  /** Fetches and reads those files of the index that the words need. */
  preload(words: string): Promise<void>;
}

/**
 * How the library scores. A title and the other words that its author gave a page tell most of what it is about; the
 * heading of a short record weighs less, or it would stand above the page that explains it. Long pages are not held
 * against their words as much as usual. The figures are those with the most hits in tests/search/queries.json.
 */
const ranking = { pageLength: 0.4, metaWeights: { title: 3, words: 3, term: 1, row: 0.5, also: 0.5 } };

declare const self: WorkerGlobalScope & { pagefind: Library; importScripts(address: string): void };

/**
 * The library of the built site, ready to search. The build makes a classic script of it (src/build/search-index.ts): a
 * worker that is five years old can't load modules.
 */
export async function loadLibrary(siteRoot: string): Promise<Library> {
  const folder = `${siteRoot}pagefind/`;
  self.importScripts(`${folder}pagefind.js`);
  const library = self.pagefind;
  await library.options({ basePath: folder, baseUrl: siteRoot, ranking });
  await library.init();
  return library;
}
