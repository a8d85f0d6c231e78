import { foreignSmallWords, foreignWords } from './foreign-words.ts';

/** Letters of Chinese writing, which has no spaces between words. */
const chinese = /\p{Script=Han}/u;

/** A term as it may be typed, in parts, and the English words for it. */
interface Term {
  parts: readonly string[];
  english: string;
}

const small = new Set(foreignSmallWords.split(' '));

/** Latin terms by their first part, and Chinese ones by their first sign; the longest first. */
const latin: Term[] = [];
const signs: Term[] = [];

for (const row of foreignWords.trim().split('\n').slice(1)) {
  const [english = '', ...languages] = row.split(' | ');
  for (const word of languages.flatMap((list) => list.split(', '))) {
    if (chinese.test(word)) signs.push({ parts: [...plain(word)], english });
    else for (const spelling of spellings(word)) latin.push({ parts: partsOf(spelling), english });
  }
}
const letters = ({ parts }: Term) => parts.join('').length;
for (const terms of [latin, signs]) {
  terms.sort((a, b) => b.parts.length - a.parts.length || letters(b) - letters(a));
}

/** Lower case, without marks on letters. */
function plain(text: string): string {
  return text
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replaceAll('ß', 'ss')
    .replaceAll('ł', 'l')
    .replaceAll('ı', 'i');
}

/** `Prüfspannung` is typed as prufspannung or pruefspannung. */
function spellings(word: string): string[] {
  const long = word.replace(/[äöüÄÖÜ]/g, (letter) => `${letter}e`);
  return [...new Set([plain(word), plain(long)])];
}

function partsOf(text: string): string[] {
  return text.split(/[^\p{L}\p{N}]+/u).filter((part) => part !== '');
}

/** Which words the fieldbook has, and which beginnings of words. */
interface English {
  has(word: string): boolean;
  begins(word: string): boolean;
}

/**
 * A query with its German, Spanish, French, Polish, Turkish and Chinese trade terms in English, without the small words
 * beside them; null if it has no such term. A word that the fieldbook has is not translated alone. The last word may be
 * the beginning of a term.
 */
export function inEnglish(query: string, english: English): string | null {
  // Figures keep their decimal marks and units.
  const tokens = query.match(/\p{Script=Han}+|[^\s\p{Script=Han}]+/gu) ?? [];
  const words = tokens.flatMap((token) => (chinese.test(token) || /\d/.test(token) ? [token] : wordsIn(token)));
  const read: string[] = [];
  let found = false;
  for (let place = 0; place < words.length; ) {
    const word = words[place] ?? '';
    if (chinese.test(word)) {
      const terms = chineseTerms(word);
      found ||= terms.length > 0;
      read.push(...terms);
      place += 1;
      continue;
    }
    const last = place === words.length - 1;
    const term =
      latin.find(({ parts }) => matches(parts, words, place, english)) ??
      (last ? begun(plain(word), english) : undefined);
    if (term) {
      found = true;
      read.push(term.english);
    } else read.push(word);
    place += term?.parts.length ?? 1;
  }
  if (!found) return null;
  return [...new Set(read.filter((word) => !small.has(plain(word))))].join(' ');
}

const wordsIn = (token: string) => token.split(/[^\p{L}\p{N}]+/u).filter((part) => part !== '');

function matches(parts: readonly string[], words: readonly string[], place: number, english: English): boolean {
  const typed = words.slice(place, place + parts.length).map(plain);
  if (typed.length < parts.length) return false;
  // `isolation` and the like mean something else in English.
  if (parts.length === 1 && english.has(typed[0] ?? '')) return false;
  return parts.every((part, index) => isFormOf(typed[index] ?? '', part));
}

/** The only term of one word that begins like this. */
function begun(word: string, english: English): Term | undefined {
  if (word.length < longEnough || english.begins(word)) return undefined;
  const terms = latin.filter(({ parts }) => parts.length === 1 && parts[0]?.startsWith(word));
  return new Set(terms.map(({ english: meant }) => meant)).size === 1 ? terms[0] : undefined;
}

/** Letters that an ending may add to a word of at least `longEnough` letters. */
const ending = 3;
const longEnough = 5;

const isFormOf = (typed: string, part: string) =>
  typed === part || (part.length >= longEnough && typed.startsWith(part) && typed.length <= part.length + ending);

/** The English words for the terms in a run of Chinese signs; other signs are left out. */
function chineseTerms(run: string): string[] {
  const english: string[] = [];
  for (let rest = run; rest !== ''; ) {
    const term = signs.find(({ parts }) => rest.startsWith(parts.join('')));
    if (term) english.push(term.english);
    rest = rest.slice(term?.parts.length ?? 1);
  }
  return english;
}
