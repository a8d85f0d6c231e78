import { askedBesides } from './questions.ts';
import { figureWords, withPlainUnits } from './unit-spellings.ts';

/** Words that say nothing about the subject. `on`, `off`, `up` and `down` do say something here. */
const empty = new Set(
  (
    'a an the and or of to in at as by for from with without into it its is are be been was were this that these those ' +
    'i my me we our you your he she they their do does did done can could should would will shall may might must has ' +
    'have had what when where which who why how there here if than then some any much many get gets got need needs ' +
    'not no but so very just still same only ok mean means'
  ).split(' '),
);

/** A word in the index entry of every glossary term. */
export const askedMeaning = 'definition';

/** `what is PE`, `what does OL mean`, `meaning of star point`. */
const asksForMeaning =
  /^\s*(?:whats?|what (?:is|are|does|do)) (?!the |a good |good )|\b(?:mean|means|meaning|definition)\b/;

interface QueryWords {
  /** The query in lower case, with units spelt as in the index. */
  text: string;
  /** The words that count, in lower case. */
  words: string[];
  /** Words to be matched exactly: figures with their unit as one word, and `definition`. */
  exact: string[];
  /** Whole names that the query means without naming them; their answers come first. */
  names: string[];
}

/** The words of a query without empty words, with units spelt as in the index. */
export function wordsOf(query: string): QueryWords {
  const text = withPlainUnits(query.replaceAll(/[’']/g, ''));
  const words = text.split(/[\s,;:!?()"“”/]+/).filter((word) => /[\p{L}\p{N}%]/u.test(word));
  const asked = askedBesides(text);
  const telling = words.filter((word) => !empty.has(word) && !(asked.words.length > 0 && /\d/.test(word)));
  return {
    text,
    words: [...new Set(telling.length + asked.words.length > 0 ? [...telling, ...asked.words] : words)],
    exact: [...figureWords(text), ...(asksForMeaning.test(text) ? [askedMeaning] : [])],
    names: asked.names,
  };
}
