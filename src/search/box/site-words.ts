/** The content of `search-words.json`, written by the build, since Pagefind does not list the words of its index. */
export interface SiteWords {
  /** All words of the searchable pages with four letters or more, in lower case, the most frequent first. */
  words: string[];
  /** How many of them occur three times or more: a rare word is not taken for what somebody meant. */
  frequent: number;
  /** Titles, terms and other words for them: offered by similar spelling if a search finds nothing. */
  terms: string[];
}
