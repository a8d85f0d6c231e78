import { type Answer, answerOf } from './answer.ts';
import { type Library, type LibraryHit, loadLibrary } from './library.ts';
import { fetchStart, type SearchStart } from './library-files.ts';
import { ranked } from './rank.ts';
import { Vocabulary } from './spelling.ts';
import { wordsOf } from './words.ts';

/** Answers shown; whoever needs more asks with another word. */
const mostAnswers = 8;

/** Files of the index that are read ahead at most. */
const mostStretches = 24;

/** Letters of a word that many longer ones begin with. */
const shortWord = 5;

export interface Found {
  /** The query as it was read, where a word of it was taken for a slip of the keys. */
  readAs: string | null;
  /** Best first. */
  answers: FoundAnswer[];
}

export interface FoundAnswer {
  /** Title and address alone, which are there at once. */
  bare: Answer;
  /** Fetches the text of the page for its headings. */
  whole(): Promise<Answer>;
}

/** The search of the built site, for a worker. */
export class Engine {
  readonly #library: Library;
  readonly #vocabulary: Vocabulary;
  readonly #titles: ReadonlyMap<string, Answer>;

  private constructor(library: Library, vocabulary: Vocabulary, titles: ReadonlyMap<string, Answer>) {
    this.#library = library;
    this.#vocabulary = vocabulary;
    this.#titles = titles;
  }

  /** Rejects where library or index can't be fetched. */
  static async load(siteRoot: string): Promise<Engine> {
    const [{ words, titles }, library] = await Promise.all([fetchStart(`${siteRoot}pagefind/`), loadLibrary(siteRoot)]);
    return new Engine(library, new Vocabulary(words), titlesOf(titles, siteRoot.replace(/\/$/, '')));
  }

  /** A first search readies much of the library: better while the person is still typing than with the first word. */
  async warmUp(): Promise<void> {
    await this.search(this.#vocabulary.mostFrequent);
  }

  /**
   * Has the library read its index, which lies in one file for each stretch of the alphabet: a word that comes whole, by
   * a swipe over the keys or by voice, need not wait for its file. Then it searches for a few words, a millisecond
   * or two each, since a browser runs slowly what it runs for the first times.
   */
  async readyIndex(): Promise<void> {
    const words = this.#vocabulary.sample(mostStretches);
    await this.#library.preload(words.join(' '));
    for (const word of words) await this.search(word);
  }

  /** Pages, glossary entries and rows of the tables that answer a query; no answers where it has no word of the site. */
  async search(query: string): Promise<Found> {
    const { words: typed, extras } = wordsOf(query);
    const words = typed.map((word, place) => this.#vocabulary.corrected(word, place === typed.length - 1));
    const hits = await Promise.all(words.map((word, place) => this.#hitsOf(word, place === words.length - 1)));
    const extraHits = await Promise.all(extras.map((word) => this.#exactly(word)));
    const slipped = words.some((word, place) => word !== typed[place]);
    return {
      readAs: slipped ? words.join(' ') : null,
      answers: ranked(hits, extraHits)
        .slice(0, mostAnswers)
        .map(({ id }) => ({
          bare: this.#titles.get(id) ?? { url: '', title: '', excerpt: '', headings: [] },
          whole: () => answerOf(hits.flatMap((list) => list.filter((hit) => hit.id === id))),
        })),
    };
  }

  /** Of a short word only the whole word counts, where it stands somewhere: `pe` is not `person`, nor `10` `100`. */
  async #hitsOf(word: string, unfinished: boolean): Promise<LibraryHit[]> {
    if (!this.#vocabulary.knows(word) && !(unfinished && this.#vocabulary.begins(word))) return [];
    const { results } = await this.#library.search(word);
    if (word.length > shortWord) return results;
    const ids = new Set((await this.#exactly(word)).map(({ id }) => id));
    return ids.size === 0 ? results : results.filter(({ id }) => ids.has(id));
  }

  async #exactly(word: string): Promise<LibraryHit[]> {
    return (await this.#library.search(`"${word}"`)).results;
  }
}

const titlesOf = (titles: SearchStart['titles'], base: string) =>
  new Map(
    titles.map(([id, path, title]): [string, Answer] => [id, { url: base + path, title, excerpt: '', headings: [] }]),
  );
