import { nearestTerms } from './nearest-terms.ts';
import { loadPagefind, type Pagefind, type PagefindPage, type PagefindResult } from './pagefind.ts';
import { ranked } from './rank.ts';
import type { SiteWords } from './site-words.ts';
import { Vocabulary } from './spelling.ts';
import { wordsOf } from './words.ts';

/** Answers shown. */
const mostAnswers = 8;

/** Headings shown for one page. */
const mostHeadings = 4;

export interface Answer {
  url: string;
  title: string;
  excerpt: string;
  /** The headings above the found words, the best match first. */
  headings: { title: string; url: string; excerpt: string }[];
}

export interface SearchResult {
  /** The corrected query, if a word looked mistyped. */
  readAs: string | null;
  /** Best first. */
  answers: Answer[];
  /** Terms of the site with the most similar spelling, if nothing was found. */
  nearest: string[];
}

/** The search of the built site. */
export class Engine {
  readonly #pagefind: Pagefind;
  readonly #vocabulary: Vocabulary;
  readonly #terms: readonly string[];

  private constructor(pagefind: Pagefind, { words, terms }: SiteWords) {
    this.#pagefind = pagefind;
    this.#vocabulary = new Vocabulary(words);
    this.#terms = terms;
  }

  /** Rejects if a file can't be fetched. */
  static async load(siteRoot: string): Promise<Engine> {
    const words = fetch(`${siteRoot}search-words.json`).then((response) => response.json() as Promise<SiteWords>);
    const [pagefind, siteWords] = await Promise.all([loadPagefind(siteRoot), words]);
    return new Engine(pagefind, siteWords);
  }

  /** The pages, glossary entries and table rows for a query. Rejects if the browser can't run Pagefind. */
  async search(query: string): Promise<SearchResult> {
    const { words: typed, exact } = wordsOf(query);
    const words = typed.map((word, place) => this.#vocabulary.corrected(word, place === typed.length - 1));
    const [together, ...hits] = await Promise.all([
      words.length > 1 ? this.#find(words.join(' ')) : [],
      ...words.map((word, place) => (this.#isKnown(word, place === words.length - 1) ? this.#find(word) : [])),
      ...exact.map((word) => this.#find(`"${word}"`)),
    ]);
    const best = ranked(hits).slice(0, mostAnswers);
    // The result for all words together marks each of them; for a page without all words, the result of its best word
    // is used.
    const results = best.map((hit) => together.find(({ id }) => id === hit.id) ?? hit);
    const answers = await Promise.all(results.map(async (result) => answerOf(await result.data())));
    return {
      readAs: words.some((word, place) => word !== typed[place]) ? words.join(' ') : null,
      answers,
      nearest: answers.length === 0 ? nearestTerms(query, this.#terms) : [],
    };
  }

  /** Stops the worker, so that another engine can start afresh. */
  async close(): Promise<void> {
    await this.#pagefind.destroy();
  }

  /** Pagefind answers any word, however different, so unknown words are not sent to it. */
  #isKnown(word: string, unfinished: boolean): boolean {
    return this.#vocabulary.knows(word) || (unfinished && this.#vocabulary.begins(word));
  }

  async #find(words: string): Promise<PagefindResult[]> {
    return (await this.#pagefind.search(words)).results;
  }
}

function answerOf({ url, meta, excerpt, sub_results }: PagefindPage): Answer {
  const headings = sub_results
    .filter((section) => section.url !== url)
    .map(({ title, url, excerpt, weighted_locations }) => ({
      heading: { title, url, excerpt },
      score: weighted_locations.reduce((sum, { balanced_score }) => sum + balanced_score, 0),
    }))
    .sort((a, b) => b.score - a.score)
    .map(({ heading }) => heading);
  const title = meta.title ?? meta.term ?? meta.row ?? url;
  return { url, title, excerpt, headings: headings.slice(0, mostHeadings) };
}
