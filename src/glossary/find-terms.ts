import type { Term } from '../schemas/glossary.ts';

/** A term where it stands in a text. */
export interface Found {
  id: string;
  from: number;
  to: number;
}

export type TermFinder = (text: string, done: ReadonlySet<string>) => Found[];

/**
 * Finds the first use in a text of each term that is not `done` yet. The longest words win where terms overlap; only the
 * first letter may be large or small, so that OL is not found in "ol" and a sentence may begin with a term.
 */
export function termFinder(terms: Readonly<Record<string, Term>>): TermFinder {
  const idOf = new Map<string, string>();
  for (const [id, { term, alsoInText = [], linked = true }] of Object.entries(terms)) {
    if (linked) for (const words of [term, ...alsoInText]) idOf.set(withSmallStart(words), id);
  }
  const longestFirst = [...idOf.keys()].sort((a, b) => b.length - a.length);
  const pattern = new RegExp(
    `(?<![\\p{L}\\p{N}-])(?:${longestFirst.map(asPattern).join('|')})(?![\\p{L}\\p{N}]|-\\p{L})`,
    'gu',
  );
  return (text, done) => {
    const seen = new Set(done);
    return [...text.matchAll(pattern)].flatMap((match) => {
      const id = idOf.get(withSmallStart(match[0].replaceAll(/\s/g, ' ')));
      if (id === undefined || seen.has(id)) return [];
      seen.add(id);
      return [{ id, from: match.index, to: match.index + match[0].length }];
    });
  };
}

function withSmallStart(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}

function asPattern(words: string): string {
  const [first = '', ...rest] = [...words];
  const body = rest
    .join('')
    .replaceAll(/[.*+?^${}()|[\]\\/]/g, '\\$&')
    .replaceAll(' ', '\\s');
  return `[${first}${first.toUpperCase()}]${body}`;
}
