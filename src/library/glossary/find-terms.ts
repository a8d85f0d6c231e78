import type { Term } from './glossary-schema.ts';

/** A term found in a text. */
interface FoundTerm {
  id: string;
  from: number;
  to: number;
}

type TermFinder = (text: string, done: ReadonlySet<string>) => FoundTerm[];

/**
 * Finds the first use in a text of each term that is not `done` yet. The longest words win where terms overlap; only the
 * first letter may be large or small, so that OL is not found in "ol" and a sentence may begin with a term.
 */
export function termFinder(terms: Readonly<Record<string, Term>>): TermFinder {
  const idOf = new Map<string, string>();
  for (const [id, { term, alsoInText = [], linked = true }] of Object.entries(terms)) {
    if (linked) for (const words of [term, ...alsoInText]) idOf.set(withSmallStart(words), id);
  }
  if (idOf.size === 0) return () => [];
  const pattern = patternOf([...idOf.keys()]);
  return (text, done) => {
    const seen = new Set(done);
    const found: FoundTerm[] = [];
    for (const match of text.matchAll(pattern)) {
      const id = idOf.get(withSmallStart(match[0].replaceAll(/\s/g, ' ')));
      if (id === undefined || seen.has(id)) continue;
      seen.add(id);
      found.push({ id, from: match.index, to: match.index + match[0].length });
    }
    return found;
  };
}

/** Any of these words, the longest first, unless it is a part of a longer word. */
function patternOf(words: readonly string[]): RegExp {
  const longestFirst = [...words].sort((a, b) => b.length - a.length).map(asPattern);
  return new RegExp(`(?<![\\p{L}\\p{N}-])(?:${longestFirst.join('|')})(?![\\p{L}\\p{N}]|-\\p{L})`, 'gu');
}

function withSmallStart(words: string): string {
  return words.charAt(0).toLowerCase() + words.slice(1);
}

/** The first letter, which is a small one here, may be large in the text, and a space may be a line break. */
function asPattern(words: string): string {
  const [first, rest] = [words.charAt(0), words.slice(1)];
  const escaped = rest.replaceAll(/[.*+?^${}()|[\]\\/]/g, '\\$&').replaceAll(' ', '\\s');
  return `[${first}${first.toUpperCase()}]${escaped}`;
}
