/** What the build writes into `search-words.json`, since Pagefind tells nobody which words its index holds. */
export interface SiteWords {
  /** All words of the searchable pages with four letters or more, in small letters, the most frequent first. */
  words: string[];
  /** Titles, terms and other words for them: offered by their spelling if a search finds nothing. */
  terms: string[];
}
