import { nearestTerms } from './nearest-terms.ts';
import { loadPagefind, type Pagefind, type PagefindPage, type PagefindResult } from './pagefind.ts';
import { ranked } from './rank.ts';
import type { SiteWords } from './site-words.ts';
import { Vocabulary } from './spelling.ts';
import { wordsOf } from './words.ts';

/** Answers shown; whoever needs more asks with another word. */
const mostAnswers = 8;

/** Headings shown for one page. */
const mostHeadings = 4;

export interface Answer {
  url: string;
  title: string;
  excerpt: string;
  /** The headings under which the words stand, the one that answers best first. */
  headings: { title: string; url: string; excerpt: string }[];
}

export interface SearchResult {
  /** The query as it was read, if a word of it was taken for a slip of the keys. */
  readAs: string | null;
  /** Best first. */
  answers: Answer[];
  /** Terms of the site that are spelt most like the query, if nothing answers it. */
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

  /** Pages, glossary entries and rows of the tables that answer a query. Rejects if the browser can't run Pagefind. */
  async search(query: string): Promise<SearchResult> {
    const { words: typed, exact } = wordsOf(query);
    const words = typed.map((word, place) => this.#vocabulary.corrected(word, place === typed.length - 1));
    const [together, ...hits] = await Promise.all([
      words.length > 1 ? this.#find(words.join(' ')) : [],
      ...words.map((word, place) => (this.#isKnown(word, place === words.length - 1) ? this.#find(word) : [])),
      ...exact.map((word) => this.#find(`"${word}"`)),
    ]);
    const best = ranked(hits).slice(0, mostAnswers);
    // The result of all words together marks each of them; a page that lacks one has a result of its best word alone.
    const results = best.map((hit) => together.find(({ id }) => id === hit.id) ?? hit);
    const answers = await Promise.all(results.map(async (result) => answerOf(await result.data())));
    return {
      readAs: words.some((word, place) => word !== typed[place]) ? words.join(' ') : null,
      answers,
      nearest: answers.length === 0 ? nearestTerms(query, this.#terms) : [],
    };
  }

  /** Frees the worker, so that another engine can start from the beginning. */
  async close(): Promise<void> {
    await this.#pagefind.destroy();
  }

  /** Pagefind has an answer to each word, however far from it. */
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
