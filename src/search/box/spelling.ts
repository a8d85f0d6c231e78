/** Edits between two words: letters added, dropped, replaced, or two neighbours swapped (Damerau–Levenshtein). */
export function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const here = [row];
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1];
      let least = Math.min(at(above, column) + 1, at(here, column - 1) + 1, at(above, column - 1) + (same ? 0 : 1));
      if (row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1])
        least = Math.min(least, at(before, column - 2) + 1);
      here.push(least);
    }
    before = above;
    above = here;
  }
  return at(above, b.length);
}

const at = (row: readonly number[], column: number) => row[column] ?? Number.POSITIVE_INFINITY;

/** Long words may contain two mistakes. A word with marks on its letters is of another language. */
const editsAllowed = (word: string) => (!/^[a-z]{4,}$/.test(word) ? 0 : word.length < 9 ? 1 : 2);

/** Removes common endings, so that one form of a word is enough to know all. */
const stem = (word: string) => word.replace(/(?:ings?|ed|ers?|es|e|s|ly)$/, '');

/** The words of the site. */
export class Vocabulary {
  readonly #words: readonly string[];
  readonly #frequent: readonly string[];
  readonly #stems: ReadonlySet<string>;

  /** `words`: the most frequent first. A word is corrected only to one of the first `frequent`. */
  constructor(words: readonly string[], frequent = words.length) {
    this.#words = words;
    this.#frequent = words.slice(0, frequent);
    this.#stems = new Set(words.map(stem));
  }

  /** Whether the site has the word or another form of it; words with figures and short words always count as known. */
  knows(word: string): boolean {
    return !/^\p{L}{4,}$/u.test(word) || this.has(word);
  }

  /** Whether the site has the word, of four letters or more, or another form of it. */
  has(word: string): boolean {
    return this.#stems.has(stem(word));
  }

  /** Whether a word of the site begins like this. */
  begins(word: string): boolean {
    return this.#words.some((known) => known.startsWith(word));
  }

  /**
   * The word that was most likely meant, or the word itself if none is near. `unfinished`: somebody may still be typing
   * the word, so the beginning of a known word is correct.
   */
  corrected(word: string, unfinished = false): string {
    if (this.knows(word) || (unfinished && this.begins(word))) return word;
    let best = word;
    let least = editsAllowed(word) + 1;
    for (const known of this.#frequent) {
      // Few people miss the first letter: another one means another word.
      if (known[0] !== word[0] || Math.abs(known.length - word.length) >= least) continue;
      const distance = editDistance(word, known);
      if (distance < least) [best, least] = [known, distance];
    }
    return best;
  }
}
