import { figureWords, withPlainUnits } from './unit-spellings.ts';

/** Words that say nothing about what is looked for. `on`, `off`, `up` and `down` are no such words here. */
const empty = new Set(
  (
    'a an the and or of to in at as by for from with without into it its is are be been was were this that these those ' +
    'i my me we our you your he she they their do does did done can could should would will shall may might must has ' +
    'have had what when where which who why how there here if than then some any much many get gets got need needs ' +
    'not no but so very just still same only ok mean means'
  ).split(' '),
);

/** A word that every entry of the glossary holds in the index. */
export const askedMeaning = 'definition';

/** `what is PE`, `what does OL mean`, `meaning of star point`. */
const asksForMeaning =
  /^\s*(?:whats?|what (?:is|are|does|do)) (?!the |a good |good )|\b(?:mean|means|meaning|definition)\b/;

export interface QueryWords {
  /** The words that count, in small letters. */
  words: string[];
  /** Words to be found only as they stand: figures with their unit as one word, and `definition`. */
  exact: string[];
}

/** What a query asks for: its empty words are left out, its units are written as the index has them. */
export function wordsOf(query: string): QueryWords {
  const plain = withPlainUnits(query.replaceAll(/[’']/g, ''));
  const words = plain.split(/[\s,;:!?()"“”/]+/).filter((word) => /[\p{L}\p{N}%]/u.test(word));
  const telling = words.filter((word) => !empty.has(word));
  return {
    words: [...new Set(telling.length > 0 ? telling : words)],
    exact: [...figureWords(plain), ...(asksForMeaning.test(plain) ? [askedMeaning] : [])],
  };
}
