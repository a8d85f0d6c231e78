/** The share of a query that a name in it must cover; a shorter one is often not what the query is about. */
const leastShare = 0.6;

/**
 * A term, title or other word for a page as one word of the index: `Surge tests` becomes `qzsurgetestzq`, which no
 * word that people type begins.
 */
export const nameOf = (text: string) => `qz${wordsIn(text).map(withoutPlural).join('')}zq`;

const wordsIn = (text: string) =>
  (text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).filter((word) => !isArticle(word));
const isArticle = (word: string) => word === 'a' || word === 'an' || word === 'the';
const withoutPlural = (word: string) => word.replace(/(\p{L}{3})s$/u, '$1');

/** What people write around a name. */
const frame =
  /^(?:what(?:s| is| are| does| do)?|meaning of|definition of)\s+(?:(?:an?|the)\s+)?|\s+(?:mean|means|meaning|definition)$/g;

/** The longest name in a query, if it is most of the query. */
export function namesIn(query: string, isName: (name: string) => boolean): string[] {
  const asked = query
    .toLowerCase()
    .replace(/[?!.]+\s*$/, '')
    .trim();
  if (isName(nameOf(asked))) return [nameOf(asked)];
  const words = wordsIn(asked.replace(frame, ''));
  for (let length = words.length; length > 0 && length >= leastShare * words.length; length--) {
    for (let start = 0; start + length <= words.length; start++) {
      const name = nameOf(words.slice(start, start + length).join(' '));
      if (isName(name)) return [name];
    }
  }
  return [];
}
