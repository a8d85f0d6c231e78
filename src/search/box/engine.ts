import { bestSentence, type Part } from './best-sentence.ts';
import { inEnglish } from './in-english.ts';
import { nearestTerms } from './nearest-terms.ts';
import { loadPagefind, type Pagefind, type PagefindPage, type PagefindResult } from './pagefind.ts';
import { ranked } from './rank.ts';
import type { SiteWords } from './site-words.ts';
import { Vocabulary } from './spelling.ts';
import { nameOf, namesIn } from './whole-names.ts';
import { wordsOf } from './words.ts';

/** Answers shown. */
const mostAnswers = 8;

export interface Answer {
  url: string;
  title: string;
  /** The figure of a limit. */
  figure?: string;
  sentence: Part[];
  /** The heading above the sentence. */
  heading?: { title: string; url: string };
}

export interface SearchResult {
  /** The query in English, or with its mistyped words corrected, if it was read so. */
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
  readonly #names: ReadonlySet<string>;

  private constructor(pagefind: Pagefind, { words, frequent, terms }: SiteWords) {
    this.#pagefind = pagefind;
    this.#vocabulary = new Vocabulary(words, frequent);
    this.#terms = terms;
    this.#names = new Set(terms.map(nameOf));
  }

  /** Rejects if a file can't be fetched. */
  static async load(siteRoot: string): Promise<Engine> {
    const words = fetch(`${siteRoot}search-words.json`).then((response) => response.json() as Promise<SiteWords>);
    const [pagefind, siteWords] = await Promise.all([loadPagefind(siteRoot), words]);
    return new Engine(pagefind, siteWords);
  }

  /** The pages, glossary entries and table rows for a query. Rejects if the browser can't run Pagefind. */
  async search(query: string): Promise<SearchResult> {
    const english = inEnglish(query, this.#vocabulary);
    const { text, words: typed, exact, names: meant } = wordsOf(english ?? query);
    // Beside a word of another language, an unknown word is not a mistyped English one.
    const words = english
      ? typed
      : typed.map((word, place) => this.#vocabulary.corrected(word, place === typed.length - 1));
    const corrected = typed.reduce((line, word, place) => line.replace(word, words[place] ?? word), text);
    const names = namesIn(corrected, (name) => this.#names.has(name));
    // What the query means for safety comes first, however many of its words another page has.
    const first = (await Promise.all(meant.map((name) => this.#find(name)))).flat();
    const hits = await Promise.all([
      ...words.map((word, place) => (this.#isKnown(word, place === words.length - 1) ? this.#find(word) : [])),
      ...exact.map((word) => this.#find(`"${word}"`)),
      // In metadata only, which quotes don't reach.
      ...names.map((name) => this.#find(name)),
    ]);
    const others = ranked(hits).filter(({ id }) => first.every((hit) => hit.id !== id));
    const best = [...first, ...others].slice(0, mostAnswers);
    const answers = await Promise.all(best.map(async (result) => answerOf(await result.data(), words)));
    const changed = words.some((word, place) => word !== typed[place]) ? words.join(' ') : null;
    return {
      readAs: english ?? changed,
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

function answerOf(page: PagefindPage, words: readonly string[]): Answer {
  const { url, meta } = page;
  const title = meta.title ?? meta.term ?? meta.row ?? url;
  return { url, title, ...(meta.figure && { figure: meta.figure }), ...bestSentence(page, words) };
}
